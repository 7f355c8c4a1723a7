using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Checks;

/// <summary>A drink without a line.</summary>
internal static class EmptyDrinkCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (drink.Lines.Count > 0)
            yield break;
        yield return drink.About(FindingCatalogue.DrinkWithoutLines,
            $"{drink.Spec.Name} has no ingredients.",
            "Write one line for each ingredient, or take the drink out.");
    }
}
