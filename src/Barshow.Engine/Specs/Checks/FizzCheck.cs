using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Checks;

/// <summary>Fizz among the lines that are shaken, stirred, thrown, swizzled or blended.</summary>
internal static class FizzCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (drink.Method is null or MethodKind.Built or MethodKind.MuddledAndBuilt or MethodKind.Layered)
            yield break;
        foreach (var line in drink.Lines.Where(line => line.IsMixed && line.Ingredient?.Fizzy == true))
        {
            yield return drink.About(FindingCatalogue.FizzInTheTin, line,
                $"{line.Ingredient!.Name} is fizzy and stands among the lines of {drink.Spec.Name} that are {drink.Spec.Method!.Name}; it is counted as topped.",
                "Write it as a top-up: \"top with 60 ml\". Shaken, it goes flat and may burst the tin.");
        }
    }
}
