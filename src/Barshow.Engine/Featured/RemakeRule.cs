using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Featured;

/// <summary>What the lineup repeats of what was featured.</summary>
/// <param name="Matches">For each drink of the lineup, in viewer order, its nearest match; drinks that are new are not in it.</param>
/// <param name="Findings">What that means under the house's remake rule.</param>
public sealed record FeaturedCheck(IReadOnlyList<(LineupDrink Drink, FeatureMatch Match)> Matches, IReadOnlyList<Finding> Findings);

/// <summary>The house's rule for showing a drink again: a minimum gap in months.</summary>
public static class RemakeRule
{
    /// <summary>Compares a lineup with the featured log.</summary>
    /// <param name="episode">The episode; its own features do not count against it.</param>
    /// <param name="bar">The house's gap and its ingredients.</param>
    /// <param name="log">What was featured.</param>
    /// <param name="day">The day the episode is shown: its publish date, else its shoot date, else today.</param>
    public static FeaturedCheck Check(Episode episode, Bar bar, FeaturedLog log, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        ArgumentNullException.ThrowIfNull(log);
        if (log.Features.Count == 0)
            return new([], [new(FindingCatalogue.FeaturedNotChecked, "featured log",
                "The featured log is empty, so no drink was compared with earlier episodes.",
                "Paste the descriptions of earlier episodes under Featured.")]);

        var earlier = new FeaturedLog([.. log.Features.Where(feature => feature.Date <= day)]);
        var matches = new List<(LineupDrink, FeatureMatch)>();
        var findings = new List<Finding>();
        foreach (var drink in episode.Lineup)
        {
            if (FeaturedMatcher.Match(drink.Spec, earlier, bar.Ingredients, episode.Slug) is not [var nearest, ..])
                continue;
            matches.Add((drink, nearest));
            if (Say(drink, nearest, bar.House.RemakeMonths, day) is { } finding)
                findings.Add(finding);
        }

        return new(matches, findings);
    }

    private static Finding? Say(LineupDrink drink, FeatureMatch match, int gap, DateOnly day)
    {
        var feature = match.Feature;
        var date = feature.Date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
        var months = (day.Year - feature.Date.Year) * 12 + day.Month - feature.Date.Month - (day.Day < feature.Date.Day ? 1 : 0);
        var ago = Months(months);
        var what = string.Join("; ", match.Reasons);
        var soon = months < gap;
        var shown = drink.Name == feature.Spec.Name ? $"{drink.Name} was shown" : $"{drink.Name} was shown as {feature.Spec.Name}";
        return (match.Kinship, soon) switch
        {
            (Kinship.SameDrink, true) => new(FindingCatalogue.FeaturedTooSoon, drink.Name,
                $"{shown} on {date}, {ago} before this date. The remake rule asks for {Months(gap)}.",
                $"Show it later, choose another, or say on film what changed: {what}.")
            { Drink = drink.Name },
            (Kinship.SameDrink, false) => new(FindingCatalogue.FeaturedBefore, drink.Name,
                $"{shown} on {date}, {ago} before this date. The remake rule asks for {Months(gap)}.",
                $"Say on film what changed: {what}.")
            { Drink = drink.Name },
            (Kinship.CloseRelative, true) => new(FindingCatalogue.RelativeFeatured, drink.Name,
                $"{drink.Name} is a close relative of {feature.Spec.Name}, shown on {date}, {ago} before this date.",
                $"Tell viewers what parts them: {what}.")
            { Drink = drink.Name },
            _ => null,
        };
    }

    private static string Months(int months) => months == 1 ? "1 month" : string.Create(CultureInfo.InvariantCulture, $"{months} months");
}
