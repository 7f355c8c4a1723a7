using Barshow.Engine.Names;

namespace Barshow.Engine.Publishing;

/// <summary>A line of a drink as it was said on film.</summary>
/// <param name="Drink">The drink's slug.</param>
/// <param name="Line">Which line of the drink, counted from 1.</param>
/// <param name="StartSeconds">When its first word is said, in seconds of film.</param>
/// <param name="EndSeconds">When its last word is said.</param>
public sealed record SaidLine(Slug Drink, int Line, double StartSeconds, double EndSeconds);
