namespace Barshow.Engine.Callouts.Captions;

/// <summary>Reads WebVTT by the W3C's parser ("WebVTT parser algorithm", "collect a WebVTT block"), and kindly where that drops a cue.</summary>
internal static class WebVttReader
{
    private const string Signature = "WEBVTT";

    /// <summary>Whether a first line opens a WebVTT file: the six letters, then nothing, a space or a tab.</summary>
    public static bool HasSignature(string line) =>
        line.StartsWith(Signature, StringComparison.Ordinal) && (line.Length == Signature.Length || line[Signature.Length] is ' ' or '\t');

    public static List<RawCue> Read(string[] lines, CaptionNotes notes)
    {
        var cues = new List<RawCue>();
        var at = 0;
        if (HasSignature(lines[0]))
        {
            at = 1;
            while (at < lines.Length && lines[at].Length > 0 && !lines[at].Contains(CueTiming.Arrow, StringComparison.Ordinal))
                at++;
        }
        else
        {
            notes.Tolerate(Departure.MissingSignature, 1);
        }

        while (at < lines.Length)
        {
            if (lines[at].Length == 0)
                at++;
            else
                at = Block(lines, at, cues, notes);
        }

        return cues;
    }

    // A line with an arrow opens a cue when it is the block's first line, or its second with no arrow before; any later one begins the next block.
    private static int Block(string[] lines, int from, List<RawCue> cues, CaptionNotes notes)
    {
        CueTiming? timing = null;
        var seenArrow = false;
        var text = new List<string>();
        var firstText = from;
        var at = from;
        for (; at < lines.Length && lines[at].Length > 0; at++)
        {
            if (!lines[at].Contains(CueTiming.Arrow, StringComparison.Ordinal))
            {
                if (text.Count == 0)
                    firstText = at;
                text.Add(lines[at]);
                continue;
            }

            if (seenArrow || at > from + 1)
                break;
            seenArrow = true;
            timing = Timing(lines[at], at + 1, notes);
            text.Clear();
        }

        if (timing is { } known && text.Count > 0)
            cues.Add(new(known.Start / 1000d, known.End / 1000d, CueText.Plain(text, isWebVtt: true), firstText + 1));
        return at;
    }

    private static CueTiming? Timing(string line, int number, CaptionNotes notes)
    {
        if (!CueTiming.TryRead(line, out var timing))
        {
            if (!CueTiming.TryReadKindly(line, out timing, out var departures))
            {
                notes.Unreadable(number, line);
                return null;
            }

            Tell(departures, number, notes);
        }

        if (timing.End <= timing.Start)
            notes.Tolerate(Departure.EndNotAfterStart, number);
        return timing;
    }

    private static void Tell(TimingDeparture departures, int line, CaptionNotes notes)
    {
        if (departures.HasFlag(TimingDeparture.Comma))
            notes.Tolerate(Departure.Comma, line);
        if (departures.HasFlag(TimingDeparture.ShortMinutes))
            notes.Tolerate(Departure.ShortMinutes, line);
        if (departures.HasFlag(TimingDeparture.ShortFraction))
            notes.Tolerate(Departure.ShortFraction, line);
        if (departures.HasFlag(TimingDeparture.MissingFraction))
            notes.Tolerate(Departure.MissingFraction, line);
    }
}
