namespace Barshow.Engine.Ingredients;

/// <summary>What is in a liquid, by volume at 20 °C.</summary>
public sealed record Composition
{
    /// <summary>Alcohol by volume; null when it is not known.</summary>
    public Strength? Strength { get; init; }

    /// <summary>Grams of sugar in 100 ml, 0 to 150; null when it is not known.</summary>
    public double? SugarGramsPer100Millilitres { get; init; }

    /// <summary>Grams of acid (as citric) in 100 ml, 0 to 100; null when it is not known.</summary>
    public double? AcidGramsPer100Millilitres { get; init; }

    /// <summary>Grams in one millilitre; null when it is not known.</summary>
    public double? DensityGramsPerMillilitre { get; init; }

    /// <summary>Where the figures come from; "common practice, no source" where none is published.</summary>
    public string Source { get; init; } = "";
}
