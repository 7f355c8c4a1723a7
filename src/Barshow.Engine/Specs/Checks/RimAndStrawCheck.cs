using Barshow.Engine.Findings;
using Barshow.Engine.Specs.Reading;

namespace Barshow.Engine.Specs.Checks;

/// <summary>A rim that nobody tastes, since the drink is drunk through a straw.</summary>
internal static class RimAndStrawCheck
{
    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (!drink.Spec.Serve.Straw || !HasRim(drink))
            yield break;
        yield return drink.About(FindingCatalogue.StrawWithRim,
            $"{drink.Spec.Name} has a rim and a straw, so nobody tastes the rim.",
            "Leave out the straw or the rim.");
    }

    private static bool HasRim(CheckedSpec drink) =>
        drink.Lines.Any(line => line.Line.Use is LineUse.Rimmed)
        || (drink.Spec.Garnish is { } garnish && garnish.Beside.Prepend(garnish).Any(piece => GarnishReader.IsRim(piece.Text)));
}
