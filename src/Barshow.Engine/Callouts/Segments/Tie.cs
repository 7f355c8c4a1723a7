namespace Barshow.Engine.Callouts.Segments;

/// <summary>An amount tied to a line of a drink.</summary>
/// <param name="Drink">The drink, by its place in the lineup.</param>
/// <param name="Line">The line, by its place in the drink.</param>
internal readonly record struct Tie(int Drink, int Line);
