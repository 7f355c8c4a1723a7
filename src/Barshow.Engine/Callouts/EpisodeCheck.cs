using System.Globalization;
using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;

namespace Barshow.Engine.Callouts;

/// <summary>The captions of an episode, checked, with what was settled of the findings.</summary>
/// <param name="Report">What was said and found.</param>
/// <param name="Open">Findings that are neither accepted nor dismissed.</param>
/// <param name="Settled">Findings that are, each with how.</param>
public sealed record EpisodeCheck(CalloutReport Report, IReadOnlyList<Finding> Open, IReadOnlyList<(Finding Finding, SettledFinding Settled)> Settled)
{
    /// <summary>The longest captions that an episode keeps, in characters: some thirty hours of speech.</summary>
    public const int LongestCaptions = 2_000_000;

    /// <summary>What is to be said again or laid over the film: all that is found and not dismissed.</summary>
    public IReadOnlyList<Finding> ToPickUp => [.. Open, .. Settled.Where(pair => pair.Settled.How is Settling.Accepted).Select(pair => pair.Finding)];

    /// <summary>Checks an episode's captions; null when it has none.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="shelf">The ingredients that the house knows.</param>
    /// <param name="description">The description as it is to be published; null when there is none.</param>
    public static EpisodeCheck? Of(Episode episode, IngredientShelf shelf, string? description)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(shelf);
        if (episode.Captions.Length == 0)
            return null;
        var report = CalloutChecker.Check(CaptionReader.Read(episode.Captions), EpisodeSheet.Of(episode, shelf, description));

        // The title's own promises are judged by the plan, which knows staples and baskets.
        report = report with
        {
            Findings = [.. report.Findings.Where(finding => finding.Kind != FindingCatalogue.ClaimBroken || finding.TimeSeconds is not null)],
            NotMade = [.. report.NotMade.Where(check => check.Kind != FindingCatalogue.ClaimBroken.Name && (check.Kind != FindingCatalogue.DisclosureLate.Name || episode.Sponsor.IsSponsored))],
        };
        var settled = episode.Settled.GroupBy(entry => entry.Finding).ToDictionary(group => group.Key, group => group.Last());
        return new(report,
            [.. report.Findings.Where(finding => !settled.ContainsKey(KeyOf(finding)))],
            [.. report.Findings.Where(finding => settled.ContainsKey(KeyOf(finding))).Select(finding => (finding, settled[KeyOf(finding)]))]);
    }

    /// <summary>What a finding is known by from one check to the next: its kind, time and what it is about.</summary>
    public static string KeyOf(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return string.Join('|', finding.Kind.Name, finding.TimeSeconds?.ToString("0.#", CultureInfo.InvariantCulture), finding.Drink, finding.Ingredient, finding.Said, finding.TimeSeconds is null ? finding.Subject : null);
    }

    /// <summary>The episode with each drink's film time where its first segment starts; drinks that were not found keep theirs.</summary>
    public Episode WithFilmTimes(Episode episode)
    {
        ArgumentNullException.ThrowIfNull(episode);
        return episode with
        {
            Lineup = [.. episode.Lineup.Select(drink => Report.Segments.FirstOrDefault(segment => segment.Drinks.Contains(drink.Name))?.StartSeconds is { } start ? drink with { FilmSeconds = Math.Floor(start) } : drink)],
            FilmLengthSeconds = episode.FilmLengthSeconds ?? (Report.LastSeconds is { } last ? Math.Ceiling(last) : null),
        };
    }
}
