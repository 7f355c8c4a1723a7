using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;

namespace Barshow.Engine.Specs.Checks;

/// <summary>Juice, cream or egg in a stirred drink: by custom what is cloudy is shaken. Common practice, no source.</summary>
internal static class CloudyStirCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (drink.Method is not MethodKind.Stirred)
            yield break;
        foreach (var line in drink.Lines.Where(line => line.IsMixed && line.Ingredient?.Kind is IngredientKind.Juice or IngredientKind.Dairy or IngredientKind.Egg))
        {
            yield return drink.About(FindingCatalogue.CloudyAndStirred, line,
                $"{drink.Spec.Name} is stirred with {line.Line.Name}; by custom drinks with juice, cream or egg are shaken.",
                "Shake it, or tell viewers why it is stirred.");
        }
    }
}
