using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing;

namespace Barshow.Web.Verbs;

/// <summary>What the <c>package</c> verb says on one screen.</summary>
internal static class PackageSummary
{
    private const int MostFindings = 8, MostDrinks = 12;

    /// <summary>Writes the summary.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="work">What was computed; null when the brief held no episode.</param>
    /// <param name="findings">Every finding.</param>
    /// <param name="folder">Where the files lie.</param>
    public static void Write(TextWriter to, EpisodeWork? work, IReadOnlyList<Finding> findings, string folder)
    {
        if (work is not null)
            foreach (var line in Lines(work))
                to.WriteLine(line);
        WriteFindings(to, findings);
        to.WriteLine($"Written to {folder}.");
    }

    private static IEnumerable<string> Lines(EpisodeWork work)
    {
        var episode = work.Episode;
        yield return Short(episode.Title);
        yield return Inv($"  Drinks    {episode.Lineup.Count}: {string.Join(", ", episode.Lineup.Take(MostDrinks).Select(drink => Short(drink.Name)))}{(episode.Lineup.Count > MostDrinks ? Inv($" and {episode.Lineup.Count - MostDrinks} more") : "")}");
        if (episode.Bottle is { } bottle)
            yield return Inv($"  Bottle    {bottle.Name}{(bottle.Millilitres is { } size ? $", {size:0} ml" : "")}: each drink once pours {work.Bottle.ViewerMillilitres:0} ml; the shoot pours {work.Bottle.ShootMillilitres:0} ml, order {work.Bottle.BottlesToOrder}");
        yield return Inv($"  Viewers   {Count(work.ViewerBasket.Things, "thing")} to buy");
        yield return Inv($"  Set       {Count(work.ShootBasket.Things, "thing")} to order");
        if (work.Shoot is { } shoot)
        {
            var clock = shoot.Order.Clock;
            yield return Inv($"  Mise      {Count(shoot.Mise.Tasks.Count, "task")}");
            yield return Inv($"  Day       {(shoot.Order.Blocks.Count > 0 ? $"{clock.Say(shoot.Order.Blocks[0].Start)} to {clock.Say(shoot.Order.Wrap)}, {(shoot.Order.Proven ? "proven best" : "not proven best")}" : "no order found")}");
        }

        yield return Inv($"  Text      description {work.Description.Bytes} of {work.Description.LimitBytes} bytes, {(work.Chapters.Chapters.Count == 0 ? "no chapters: film times are missing" : Count(work.Chapters.Chapters.Count, "chapter"))}");
    }

    private static void WriteFindings(TextWriter to, IReadOnlyList<Finding> findings)
    {
        var counts = findings.CountBy(finding => finding.Severity).ToDictionary();
        to.WriteLine(Inv($"  Findings  {Count(counts.GetValueOrDefault(Severity.Stop), "stop")}, {Count(counts.GetValueOrDefault(Severity.Fix), "fix")}, {Count(counts.GetValueOrDefault(Severity.Note), "note")}"));
        var worst = findings.Where(finding => finding.Severity != Severity.Note).OrderByDescending(finding => finding.Severity).ToList();
        foreach (var finding in worst.Take(MostFindings))
            to.WriteLine(Inv($"    {finding.Severity}{(finding.Line is { } line ? $", line {line}" : "")}: {Short(finding.Message, 200)}"));
        if (worst.Count > MostFindings)
            to.WriteLine(Inv($"    and {worst.Count - MostFindings} more in findings.json"));
    }

    private static string Short(string text, int most = 60) => text.Length <= most ? text : text[..(most - 1)] + "…";

    private static string Count(int count, string what) => Inv($"{count} {what}{(count == 1 ? "" : what.EndsWith('x') ? "es" : "s")}");

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
