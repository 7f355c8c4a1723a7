using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Engine.Episodes;

/// <summary>The bottle an episode is about.</summary>
public sealed record FeaturedBottle
{
    /// <summary>The ingredient as the user named it.</summary>
    public required string Name { get; init; }

    /// <summary>The ingredient it is; empty when the house does not know it.</summary>
    public Slug Ingredient { get; init; }

    /// <summary>Millilitres in one bottle, above 0; null when it was not said.</summary>
    public double? Millilitres { get; init; }

    /// <summary>The strength on its label; null for the ingredient's own.</summary>
    public Strength? Strength { get; init; }
}
