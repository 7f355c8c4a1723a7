namespace Barshow.Engine.Callouts.Captions;

/// <summary>Reads SubRip: numbered blocks of a line of times and text. There is no standard; what is tolerated is common practice, no source.</summary>
internal static class SubRipReader
{
    /// <summary>Whether a line is a cue's number. Only the next line tells whether it is one or a spoken figure.</summary>
    public static bool IsIndex(string line)
    {
        var text = line.AsSpan().Trim();
        return text.Length is > 0 and < 10 && !text.ContainsAnyExceptInRange('0', '9');
    }

    public static List<RawCue> Read(string[] lines, CaptionNotes notes)
    {
        var cues = new List<RawCue>();
        var at = 0;
        while (at < lines.Length && !IsTiming(lines[at]))
            at++;
        while (at < lines.Length)
        {
            var from = at + 1;
            var next = from;
            while (next < lines.Length && !IsTiming(lines[next]))
                next++;
            var to = next < lines.Length && next > from && IsIndex(lines[next - 1]) ? next - 1 : next;
            if (next < lines.Length && to == next)
                notes.Tolerate(Departure.NumberMissing, next + 1);
            Add(lines, at, from, to, cues, notes);
            at = next;
        }

        return cues;
    }

    private static bool IsTiming(string line) => line.Contains(CueTiming.Arrow, StringComparison.Ordinal);

    private static void Add(string[] lines, int timingLine, int from, int to, List<RawCue> cues, CaptionNotes notes)
    {
        if (!CueTiming.TryReadKindly(lines[timingLine], out var timing, out var departures))
        {
            notes.Unreadable(timingLine + 1, lines[timingLine]);
            return;
        }

        if (!departures.HasFlag(TimingDeparture.Comma) && !departures.HasFlag(TimingDeparture.MissingFraction))
            notes.Tolerate(Departure.FullStop, timingLine + 1);
        if (departures.HasFlag(TimingDeparture.ShortHours))
            notes.Tolerate(Departure.ShortHours, timingLine + 1);
        if (departures.HasFlag(TimingDeparture.ShortMinutes))
            notes.Tolerate(Departure.ShortMinutes, timingLine + 1);
        if (departures.HasFlag(TimingDeparture.ShortFraction))
            notes.Tolerate(Departure.ShortFraction, timingLine + 1);
        if (departures.HasFlag(TimingDeparture.MissingFraction))
            notes.Tolerate(Departure.MissingFraction, timingLine + 1);
        if (timing.End <= timing.Start)
            notes.Tolerate(Departure.EndNotAfterStart, timingLine + 1);

        while (to > from && string.IsNullOrWhiteSpace(lines[to - 1]))
            to--;
        var text = new List<string>();
        for (var i = from; i < to; i++)
        {
            if (!string.IsNullOrWhiteSpace(lines[i]))
                text.Add(lines[i]);
            else if (text.Count > 0)
                notes.Tolerate(Departure.BlankLineInText, i + 1);
        }

        if (text.Count > 0)
            cues.Add(new(timing.Start / 1000d, timing.End / 1000d, CueText.Plain(text, isWebVtt: false), from + 1));
    }
}
