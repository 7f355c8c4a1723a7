namespace Barshow.Engine.Ingredients;

/// <summary>How long something keeps after it is made, chilled, in a clean closed vessel.</summary>
/// <param name="Ready">How long it must rest before it may be used; nought when it may be used at once.</param>
/// <param name="Best">How long it looks and tastes right for film.</param>
/// <param name="Keep">The longest it is kept at all; not shorter than <paramref name="Best"/>.</param>
/// <param name="Source">Where the figures come from; "common practice, no source" where none is published.</param>
public sealed record FreshWindow(TimeSpan Ready, TimeSpan Best, TimeSpan Keep, string Source);
