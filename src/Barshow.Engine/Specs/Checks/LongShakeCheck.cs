using System.Globalization;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Checks;

/// <summary>A shake longer than it takes a drink to become as cold as it will (12 to 15 seconds, measured: Cooking Issues, Cocktail Science in General, part 1, 2010).</summary>
internal static class LongShakeCheck
{
    private const int Enough = 15;

    // A few seconds more are showmanship.
    private const int TooLong = 20;

    public static IEnumerable<Finding> Of(CheckedSpec drink)
    {
        if (!drink.IsShaken || drink.Spec.Method!.Seconds is not > TooLong)
            yield break;
        yield return drink.About(FindingCatalogue.ShakenLong,
            string.Create(CultureInfo.InvariantCulture, $"{drink.Spec.Name} is shaken {drink.Spec.Method.Seconds} seconds; after {Enough} it grows hardly colder or weaker."),
            $"Shake 12 to {Enough} seconds.");
    }
}
