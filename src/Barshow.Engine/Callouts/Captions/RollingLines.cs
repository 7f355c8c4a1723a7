namespace Barshow.Engine.Callouts.Captions;

/// <summary>Reads each line once where automatic captions roll: the last lines of one cue stand again as the first of the next, or the line grows word by word.</summary>
internal static class RollingLines
{
    // A cue that repeats the one before it follows it at once.
    private const double LongestGapSeconds = 0.25;
    private const int MostLines = 4;

    public static List<CaptionCue> Unroll(List<RawCue> cues, CaptionNotes notes)
    {
        var unrolled = new List<CaptionCue>(cues.Count);
        RawCue? before = null;
        foreach (var cue in cues)
        {
            if (before is { End: { } end } && cue.Start < end - 0.01)
                notes.Tolerate(Departure.Overlap, cue.Line);
            var fresh = cue.Text;
            if (before is { } last && cue.Start is { } start && last.Start is { } lastStart && start - (last.End ?? lastStart) <= LongestGapSeconds)
                fresh = Fresh(last.Text, cue, notes);
            if (fresh.Count > 0)
                unrolled.Add(new(cue.Start, cue.End, string.Join('\n', fresh), cue.Line));
            else if (cue.Start is null && unrolled.Count > 0)
                unrolled.Add(new(null, null, "", cue.Line));
            if (cue.Text.Count > 0)
                before = cue;
        }

        return unrolled;
    }

    private static List<string> Fresh(List<string> before, RawCue cue, CaptionNotes notes)
    {
        for (var shared = Math.Min(MostLines, Math.Min(before.Count, cue.Text.Count)); shared > 0; shared--)
        {
            if (!SameTail(before, cue.Text, shared))
                continue;
            for (var i = 0; i < shared; i++)
                notes.Tolerate(Departure.RolledLines, cue.Line);
            return cue.Text[shared..];
        }

        // The last line is said again with more words behind it.
        if (before.Count > 0 && cue.Text.Count > 0 && cue.Text[0].Length > before[^1].Length && cue.Text[0].StartsWith(before[^1], StringComparison.OrdinalIgnoreCase)
            && cue.Text[0][before[^1].Length] == ' ' && before[^1].Contains(' ', StringComparison.Ordinal))
        {
            notes.Tolerate(Departure.RolledLines, cue.Line);
            return [cue.Text[0][(before[^1].Length + 1)..], .. cue.Text[1..]];
        }

        return cue.Text;
    }

    private static bool SameTail(List<string> before, List<string> text, int shared)
    {
        for (var i = 0; i < shared; i++)
        {
            if (!before[before.Count - shared + i].Equals(text[i], StringComparison.OrdinalIgnoreCase))
                return false;
        }

        return true;
    }
}
