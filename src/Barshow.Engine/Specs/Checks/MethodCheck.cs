using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Checks;

/// <summary>A drink that does not say how it is made.</summary>
internal static class MethodCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (drink.Spec.Method is not null || drink.Lines.Count == 0)
            yield break;
        yield return drink.About(FindingCatalogue.FinishMissing,
            $"{drink.Spec.Name} does not say how it is made.",
            "Say it in its last line: built, stirred, shaken, thrown, muddled, swizzled, blended or layered.");
    }
}
