namespace Barshow.Engine.Publishing.Tracks;

/// <summary>The callout track: what is poured, in both units, while it is said.</summary>
public static class CalloutTrack
{
    /// <summary>No callout is shown shorter than this. Common practice, no source: about what it takes to read one line.</summary>
    private const double ShortestSeconds = 2;

    /// <summary>When each card is shown, in film order: from its first word for as long as it is said, two seconds at least, and never past the next one's start.</summary>
    /// <param name="results">The episode, with the lines that were said.</param>
    public static IReadOnlyList<(SaidLine Said, double EndSeconds)> Times(EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        var said = results.Said.Where(line => line.StartSeconds >= 0 && double.IsFinite(line.EndSeconds)).OrderBy(line => line.StartSeconds).ThenBy(line => line.Line).ToList();
        return [.. said.Select((line, i) =>
        {
            var end = Math.Max(line.EndSeconds, line.StartSeconds + ShortestSeconds);
            var next = said.Skip(i + 1).Select(other => other.StartSeconds).FirstOrDefault(start => start > line.StartSeconds, double.PositiveInfinity);
            return (line, Math.Min(end, next));
        })];
    }

    /// <summary>The track as WebVTT; null when nothing that was said is tied to a line.</summary>
    public static string? Write(EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        var printer = new LinePrinter(results.Episode.Convention, results.Bar.House);
        var cues = Times(results)
            .Select(item => (item, Line: LineOf(results, item.Said)))
            .Where(item => item.Line is not null)
            .Select(item => new Cue(item.item.Said.StartSeconds, item.item.EndSeconds, WebVtt.Text(printer.Line(item.Line!))))
            .ToList();
        return cues.Count == 0 ? null : WebVtt.Write("callouts in both units", cues);
    }

    private static Specs.SpecLine? LineOf(EpisodeResults results, SaidLine said) =>
        results.Episode.Lineup.FirstOrDefault(drink => drink.Spec.Slug == said.Drink)?.Spec.Lines.ElementAtOrDefault(said.Line - 1);
}
