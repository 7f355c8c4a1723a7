using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing;
using Barshow.Web.Drawing;

namespace Barshow.Web.Desk;

/// <summary>Something that needs doing next.</summary>
/// <param name="Day">By when; null when no day is fixed.</param>
/// <param name="Time">At what hour of that day; null for any.</param>
/// <param name="What">What, as one would say it.</param>
/// <param name="Why">The sentence beneath.</param>
/// <param name="Severity">For a finding how much it matters; null for a date.</param>
/// <param name="Where">Which episode and stage.</param>
/// <param name="Href">Where it is done.</param>
public sealed record NextThing(DateOnly? Day, TimeOnly? Time, string What, string Why, Severity? Severity, string Where, string Href)
{
    private const int MostFindings = 3;

    /// <summary>What needs doing in one episode: its stops and fixes today, then its dates that are still to come.</summary>
    public static IEnumerable<NextThing> Of(EpisodeWork work, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(work);
        var episode = work.Episode;
        var name = episode.Number is { } number ? $"Episode {number}" : episode.Title;
        var open = Enum.GetValues<Stage>().SelectMany(stage => work.At(stage).Select(finding => (stage, finding))).Where(each => each.finding.Severity >= Engine.Findings.Severity.Fix).OrderByDescending(each => each.finding.Severity).Take(MostFindings);
        foreach (var (stage, finding) in open)
            yield return new(today, null, finding.Message, finding.Remedy, finding.Severity, $"{name}, {stage}", HrefOf(episode, stage));
        if (episode.Lineup.Count == 0)
            yield return new(today, null, "Choose the drinks", "The lineup is empty.", null, $"{name}, {Stage.Plan}", HrefOf(episode, Stage.Plan));
        if (episode.ShootDate is { } shoot && shoot >= today)
        {
            var drinks = Figures.Count(episode.Lineup.Count, "drink");
            if (shoot.AddDays(-3) >= today)
                yield return new(shoot.AddDays(-3), null, "Order for the set", $"{Figures.Count(work.ShootBasket.Items.Count, "thing")} to buy for {Figures.Count(episode.Lineup.Sum(episode.TakesOf), "take")}.", null, $"{name}, {Stage.Stock}", HrefOf(episode, Stage.Stock));
            if (shoot.AddDays(-1) >= today)
                yield return new(shoot.AddDays(-1), null, "Prepare what keeps", "Syrups, glasses and ice stand on the mise list with their hours.", null, $"{name}, {Stage.Prep}", HrefOf(episode, Stage.Prep));
            yield return new(shoot, episode.CallTime, $"Shoot {drinks}", episode.Title + ".", null, $"{name}, {Stage.Shoot}", HrefOf(episode, Stage.Shoot));
        }

        if (episode.PublishDate is { } publish && publish >= today)
            yield return new(publish, null, "Publish", work.Chapters.FitForDescription ? "The chapters are ready." : "Film times are still to come.", null, $"{name}, {Stage.Publish}", HrefOf(episode, Stage.Publish));
    }

    private static string HrefOf(Episode episode, Stage stage) => $"episodes/{episode.Slug}/{stage.ToString().ToLowerInvariant()}";
}
