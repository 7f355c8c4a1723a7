namespace Barshow.Engine.Callouts.Segments;

/// <summary>A run of words that teaches some drinks, or none.</summary>
/// <param name="Drinks">The drinks, by their place in the lineup; empty for none, several when they are made side by side.</param>
/// <param name="From">The first word.</param>
/// <param name="To">The word after the last.</param>
internal sealed record Stretch(IReadOnlyList<int> Drinks, int From, int To);
