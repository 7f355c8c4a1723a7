using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Shooting;

/// <summary>What of a drink matters to the palate and to the count of what is tasted.</summary>
/// <param name="StrengthPercent">Strength as served, in whole percent.</param>
/// <param name="SugarPer100">Sugar as served, in whole grams to 100 ml.</param>
/// <param name="Lingers">Whether salt, chilli or smoke in it dulls what is tasted after it.</param>
/// <param name="EthanolMillilitres">Pure alcohol in the whole drink.</param>
/// <param name="ServedMillilitres">The whole drink as served, without ice.</param>
internal sealed record DrinkTraits(int StrengthPercent, int SugarPer100, bool Lingers, double EthanolMillilitres, double ServedMillilitres)
{
    /// <summary>What may hold alcohol and of which no strength is known.</summary>
    public IReadOnlyList<string> Unknown { get; init; } = [];

    public static DrinkTraits Of(Spec spec, Bar bar, Convention convention)
    {
        var analysis = DrinkAnalyser.Analyse(spec, new(bar.Ingredients, bar.Kit) { Convention = convention, Sizes = bar.House.BarSizes });
        var lingers = spec.Tags.Any(tag => tag is "smoky" or "smoke" or "spicy" or "salty")
            || spec.Lines.Any(line => bar.Ingredients[line.Ingredient] is { } ingredient
                && ((ingredient.Kind is IngredientKind.Salt && line.Use is LineUse.Rimmed) || ingredient.Hazards.Contains(Hazard.Chilli)));
        return new(
            (int)Math.Round(100 * analysis.ServedStrength.Middle),
            (int)Math.Round(analysis.SugarGramsPer100Millilitres.Middle),
            lingers,
            analysis.EthanolMillilitres,
            analysis.ServedMillilitres.Middle)
        {
            Unknown = [.. spec.Lines.Where(line => line.Planned is { HasAmount: true } && MayHoldAlcohol(bar.Ingredients[line.Ingredient])).Select(line => line.Name).Distinct()],
        };
    }

    private static bool MayHoldAlcohol(Ingredient? ingredient) => ingredient is null
        || (ingredient is { Composition.Strength: null, Kind: IngredientKind.Spirit or IngredientKind.Liqueur or IngredientKind.FortifiedWine or IngredientKind.Wine or IngredientKind.Beer or IngredientKind.Bitters });
}
