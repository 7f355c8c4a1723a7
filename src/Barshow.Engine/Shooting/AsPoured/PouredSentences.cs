using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures.Writing;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting.AsPoured;

/// <summary>What the comparison of spec and as-poured log says, in one place.</summary>
internal static class PouredSentences
{
    private const string Choose = "Make it the episode's, make it the library's, or mark a pick-up.";

    public static Finding Differs(string drink, SpecLine line, PouredEntry entry) => new(FindingCatalogue.PouredDiffers, drink,
        entry.Kind is PouredKind.LeftOut ? $"{drink}: {line.Name} was left out on film{Why(entry)}."
            : $"{drink}: {Show(entry)} of {line.Name} was poured{Why(entry)}; the spec says {(line.Planned is { } planned ? MeasureWriter.Plain(planned) : "no amount")}.", Choose)
    {
        Drink = drink,
        Ingredient = line.Name,
        Said = Show(entry),
        Expected = line.Planned is { } expected ? MeasureWriter.Plain(expected) : null,
    };

    public static Finding Swapped(string drink, string line, PouredEntry entry) => new(FindingCatalogue.PouredSwapped, drink,
        $"{drink}: {entry.Name} was poured in place of {line}{Why(entry)}.", Choose)
    {
        Drink = drink,
        Ingredient = line,
        Said = entry.Name,
        Expected = line,
    };

    public static Finding Added(string drink, PouredEntry entry) => new(FindingCatalogue.PouredAdded, drink,
        $"{drink}: {(entry.Measure is null ? "" : Show(entry) + " of ")}{entry.Name} was added{Why(entry)}; the spec does not hold it.", Choose)
    {
        Drink = drink,
        Ingredient = entry.Name,
    };

    public static Finding Twice(string drink, string line, IReadOnlyList<PouredEntry> entries) => new(FindingCatalogue.PouredTwice, drink,
        $"{drink}: {string.Join(" and ", entries.Select(entry => $"{entry.Device} logged {(entry.Measure is null ? entry.Kind.ToString().ToLowerInvariant() : Show(entry))}"))} of {line} for one take; the later is used.",
        "Look at the film and log the true amount once more.")
    {
        Drink = drink,
        Ingredient = line,
    };

    public static Finding NoGoodTake(string drink, int take) => new(FindingCatalogue.NoGoodTake, drink,
        string.Create(CultureInfo.InvariantCulture, $"No take of {drink} is logged as good, so take {take} was compared."),
        "Judge the take that the film shows as good.")
    {
        Drink = drink,
    };

    private static string Show(PouredEntry entry) => entry.Measure is { } measure ? MeasureWriter.Plain(measure) : "some";

    private static string Why(PouredEntry entry) => entry.Remark.Length > 0 ? $" ({entry.Remark})" : "";
}
