using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>What a drink is analysed by: the house's ingredients, its glasses, its small measures and the episode's convention.</summary>
/// <param name="Ingredients">The ingredients the house knows.</param>
/// <param name="Kit">The glasses.</param>
public sealed record AnalysisSetting(IngredientShelf Ingredients, BarKit Kit)
{
    /// <summary>How ounces and millilitres are matched.</summary>
    public Convention Convention { get; init; }

    /// <summary>What dash, barspoon, splash and drop hold.</summary>
    public BarSizes Sizes { get; init; } = BarSizes.Default;

    /// <summary>Which layer of the amounts is analysed.</summary>
    public AmountLayer Layer { get; init; } = AmountLayer.Episode;
}
