using Barshow.Engine.Findings;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>What the reading of a brief left to mend and nobody has mended since.</summary>
public static class StandingFindings
{
    /// <summary>The brief's findings on lines that are as they were read, on drinks still without lines or method, and on a bottle still without a size.</summary>
    /// <remarks>What was left out of the episode, such as an unknown key or a second drink of the same name, is told when the brief is read and not again.</remarks>
    public static IReadOnlyList<Finding> Of(Episode episode, Bar bar)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        if (episode.Brief.Length == 0)
            return [];
        var untouched = episode.Lineup
            .SelectMany(drink => drink.Spec.Lines)
            .Where(line => line.BriefLine is not null && line.Amounts.All(amount => amount.Layer < AmountLayer.Episode))
            .Select(line => line.BriefLine!.Value)
            .ToHashSet();
        return [.. BriefReader.Read(episode.Brief, bar).Findings.Where(finding => Stands(finding, episode, untouched))];
    }

    private static bool Stands(Finding finding, Episode episode, HashSet<int> untouched)
    {
        if (finding.Kind == FindingCatalogue.BottleSizeMissing || finding.Kind == FindingCatalogue.BottleSizeImpossible)
            return episode.Bottle is { Millilitres: null };
        var drink = episode.Lineup.FirstOrDefault(drink => drink.Name == finding.Drink);
        if (finding.Kind == FindingCatalogue.DrinkWithoutLines)
            return drink is { Spec.Lines.Count: 0 };
        if (finding.Kind == FindingCatalogue.FinishMissing)
            return drink is { Spec.Method: null };
        return drink is not null && finding.Line is { } line && untouched.Contains(line);
    }
}
