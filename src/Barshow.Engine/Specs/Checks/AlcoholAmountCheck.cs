using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Checks;

/// <summary>An alcoholic line that says no amount: nobody can tell how strong the drink is.</summary>
internal static class AlcoholAmountCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        foreach (var line in drink.Lines.Where(line => line.Ingredient?.Kind.HoldsAlcohol() == true && SaysNothing(line)))
        {
            yield return drink.About(FindingCatalogue.AlcoholAmountMissing, line,
                $"{line.Line.Name} has no amount, so the strength and the standard drinks of {drink.Spec.Name} come out too low.",
                "Give its amount in ounces or millilitres.");
        }
    }

    // An open top is filled to the wash line, a float, a splash and a rinse have their usual sizes.
    private static bool SaysNothing(CheckedLine line) => line.Line.Use is not (LineUse.Rinsed or LineUse.Topped or LineUse.Rimmed)
        && line.Measure is null or { HasAmount: false, Open: OpenMeasure.ToTaste or OpenMeasure.Crack } or { Unit.Kind: UnitKind.Part };
}
