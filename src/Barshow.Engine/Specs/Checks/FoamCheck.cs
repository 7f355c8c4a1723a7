using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Checks;

/// <summary>Egg white or what replaces it, shaken without a dry shake. Common practice, no source.</summary>
internal static class FoamCheck
{
    private static readonly Slug Aquafaba = Slug.Of("aquafaba");

    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (!drink.IsShaken || drink.Spec.Method!.DryShake)
            yield break;
        var line = drink.Lines.FirstOrDefault(line => line.IsMixed && (line.Ingredient?.Kind is IngredientKind.Egg || line.Line.Ingredient == Aquafaba));
        if (line is null)
            yield break;
        yield return drink.About(FindingCatalogue.FoamWithoutDryShake, line,
            $"{drink.Spec.Name} holds {line.Line.Name} and has no dry shake, so its foam will be thin.",
            "Write \"dry shaken, then shaken\", or leave it if a thin foam is meant.");
    }
}
