namespace Barshow.Engine.Publishing;

/// <summary>A drink of the lineup that was shown before.</summary>
/// <param name="Drink">The drink's name in this lineup.</param>
/// <param name="EpisodeTitle">The film it was shown in.</param>
/// <param name="Date">When that was.</param>
/// <param name="Address">Where it can be seen; empty when unknown.</param>
public sealed record EarlierFeature(string Drink, string EpisodeTitle, DateOnly Date, string Address = "");
