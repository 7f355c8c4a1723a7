using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Checks;

/// <summary>A drink without a glass, or in one the bar does not have.</summary>
internal static class GlassCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (drink.Lines.Count == 0)
            yield break;
        if (drink.Spec.Serve.Glass.IsEmpty)
        {
            yield return drink.About(FindingCatalogue.GlassMissing,
                $"{drink.Spec.Name} names no glass.",
                "Name the glass after the method: \"shaken 12 seconds, coupe, lime wheel\".");
            yield break;
        }

        foreach (var glass in drink.Spec.Serve.GlassesInstead.Prepend(drink.Spec.Serve.Glass).Distinct())
        {
            if (!drink.Setting.Kit.TryGetGlass(glass, out _))
                yield return Unknown(drink, glass);
        }
    }

    private static Finding Unknown(CheckedSpec drink, Slug glass)
    {
        var name = glass.Text.Replace('-', ' ');
        return drink.About(FindingCatalogue.GlassUnknown,
            $"{drink.Spec.Name} is served in a {name}, which the bar kit does not hold.",
            "Add the glass to the bar kit with its brimful volume, or name one that stands there.");
    }
}
