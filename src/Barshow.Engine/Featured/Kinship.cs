namespace Barshow.Engine.Featured;

/// <summary>How near two drinks are.</summary>
public enum Kinship
{
    /// <summary>Built otherwise.</summary>
    New,

    /// <summary>Built alike with something swapped, added or left out.</summary>
    CloseRelative,

    /// <summary>The same drink, if perhaps under another name or with amounts a little changed.</summary>
    SameDrink,
}

/// <summary>A drink beside one that was featured.</summary>
/// <param name="Kinship">How near they are.</param>
/// <param name="Feature">The feature it was compared with.</param>
/// <param name="Distance">Share of the liquid that would have to be exchanged, ingredient for ingredient, to make one into the other: 0 for the same, 1 for nothing in common; null when one has no amounts.</param>
/// <param name="Reasons">What parts them or joins them, in words.</param>
public sealed record FeatureMatch(Kinship Kinship, Feature Feature, double? Distance, IReadOnlyList<string> Reasons);
