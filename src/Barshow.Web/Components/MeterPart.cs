namespace Barshow.Web.Components;

/// <summary>One part of a text on the length meter.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Where it begins.</param>
/// <param name="Length">How long it is.</param>
public sealed record MeterPart(string Name, int From, int Length);
