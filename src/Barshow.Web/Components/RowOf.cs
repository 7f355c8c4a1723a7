namespace Barshow.Web.Components;

/// <summary>One row of a list that is edited in place.</summary>
/// <param name="Value">The thing as it stands.</param>
/// <param name="Change">Changes it and saves the list once it is whole.</param>
public sealed record RowOf<T>(T Value, Func<Func<T, T>, Task> Change);
