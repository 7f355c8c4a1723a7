using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting.AsPoured;

/// <summary>One difference between a spec and what was poured.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="DrinkName">Its name.</param>
/// <param name="Line">The line of the spec, counted from 0; null for one that was added.</param>
/// <param name="LineName">The ingredient as the spec names it, or as the bench named the added one.</param>
/// <param name="Spec">What the spec says; null for an added line or one without an amount.</param>
/// <param name="Entry">What was logged.</param>
public sealed record PouredDifference(Slug Drink, string DrinkName, int? Line, string LineName, Measure? Spec, PouredEntry Entry)
{
    /// <summary>The spec with the difference taken over in a layer: the poured layer for the episode, the library's for the library.</summary>
    /// <exception cref="ArgumentException">The spec has no such line.</exception>
    public Spec Accept(Spec spec, AmountLayer layer)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var reason = Entry.Remark.Length > 0 ? Entry.Remark : "as poured on film";
        if (Line is not { } place)
        {
            SpecLine added = new() { Name = Entry.Name, Ingredient = Entry.Ingredient };
            return spec with { Lines = [.. spec.Lines, Entry.Measure is { } amount ? added.With(layer, amount, reason) : added] };
        }

        if (place >= spec.Lines.Count)
            throw new ArgumentException($"{spec.Name} has no line {place + 1}.", nameof(spec));
        if (Entry.Kind is PouredKind.LeftOut)
            return spec with { Lines = [.. spec.Lines.Where((_, index) => index != place)] };
        var line = spec.Lines[place];
        if (Entry.Kind is PouredKind.Swapped)
            line = line with { Name = Entry.Name, Ingredient = Entry.Ingredient };
        if (Entry.Measure is { } measure && measure != line.At(layer))
            line = line.With(layer, measure, reason) with { WrittenBeside = null };
        return spec with { Lines = [.. spec.Lines.Select((old, index) => index == place ? line : old)] };
    }
}

/// <summary>The specs of an episode beside what was poured.</summary>
/// <param name="Differences">In viewer order, line by line.</param>
/// <param name="Findings">The same as findings, with what two devices logged differently.</param>
public sealed record PouredComparison(IReadOnlyList<PouredDifference> Differences, IReadOnlyList<Finding> Findings)
{
    /// <summary>Compares the good take of each drink, or its last where none was judged good. Drinks without any entry are left out: nothing was logged.</summary>
    public static PouredComparison Of(Episode episode, PouredLog log, BarSizes? sizes = null)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(log);
        List<PouredDifference> differences = [];
        List<Finding> findings = [];
        foreach (var drink in episode.Lineup)
        {
            var entries = log.Entries.Where(entry => entry.Drink == drink.Spec.Slug && entry.Kind is not (PouredKind.Ticked or PouredKind.Unticked)).ToList();
            if (entries.Count == 0)
                continue;
            if (GoodTake(entries) is not { } take)
            {
                take = entries.Max(entry => entry.Take);
                findings.Add(PouredSentences.NoGoodTake(drink.Name, take));
            }

            var poured = entries.Where(entry => entry.Take == take && entry.Kind is PouredKind.Poured or PouredKind.Swapped or PouredKind.LeftOut or PouredKind.Added && entry.Take == take).ToList();
            for (var line = 0; line < drink.Spec.Lines.Count; line++)
                Compare(drink, line, [.. poured.Where(entry => entry.Line == line)], episode.Convention, sizes, differences, findings);
            foreach (var added in Latest(poured.Where(entry => entry.Kind is PouredKind.Added), entry => NameFolding.Fold(entry.Name)))
            {
                if (drink.Spec.Lines.Any(line => NameFolding.Fold(line.Name) == NameFolding.Fold(added.Name) && line.Amounts.Any(amount => amount.Layer is AmountLayer.Poured)))
                    continue;
                differences.Add(new(drink.Spec.Slug, drink.Name, null, added.Name, null, added));
                findings.Add(PouredSentences.Added(drink.Name, added));
            }
        }

        return new(differences, findings);
    }

    // A take judged good and then judged again is what it was judged last.
    private static int? GoodTake(IEnumerable<PouredEntry> entries) => entries
        .Where(entry => entry.Kind is PouredKind.Judged)
        .GroupBy(entry => entry.Take)
        .Where(take => take.Last().Verdict is TakeVerdict.Good)
        .Select(take => (int?)take.Key)
        .Max();

    private static void Compare(LineupDrink drink, int place, List<PouredEntry> entries, Convention convention, BarSizes? sizes, List<PouredDifference> differences, List<Finding> findings)
    {
        var line = drink.Spec.Lines[place];
        var byDevice = Latest(entries, entry => entry.Device);
        if (byDevice.Count == 0)
            return;
        if (byDevice.Any(entry => entry.Kind != byDevice[0].Kind || entry.Name != byDevice[0].Name || !Same(entry.Measure, byDevice[0].Measure, convention, sizes)))
            findings.Add(PouredSentences.Twice(drink.Name, line.Name, byDevice));
        var last = entries[^1];
        // What was accepted before stands in the poured layer and is settled.
        var changed = last.Kind is PouredKind.LeftOut || (last.Kind is PouredKind.Swapped && NameFolding.Fold(last.Name) != NameFolding.Fold(line.Name))
            || (last.Measure is not null && !Same(last.Measure, line.At(AmountLayer.Poured), convention, sizes));
        if (!changed)
            return;
        differences.Add(new(drink.Spec.Slug, drink.Name, place, line.Name, line.Planned, last));
        findings.Add(last.Kind is PouredKind.Swapped ? PouredSentences.Swapped(drink.Name, line.Name, last) : PouredSentences.Differs(drink.Name, line, last));
    }

    private static List<PouredEntry> Latest(IEnumerable<PouredEntry> entries, Func<PouredEntry, string> key) => [.. entries.GroupBy(key).Select(group => group.Last())];

    private static bool Same(Measure? one, Measure? other, Convention convention, BarSizes? sizes) =>
        one == other || (one is { IsRange: false } && other is { IsRange: false } && one.InMillilitres(convention, sizes) is { } left && other.InMillilitres(convention, sizes) is { } right && left == right);
}
