using System.Text.RegularExpressions;

namespace Barshow.Engine.Callouts.Captions;

/// <summary>Reads plain text, with times before its lines ("4:31 then the lime") or on lines of their own, or without any.</summary>
internal static partial class TranscriptReader
{
    // One line that begins as a ratio or a clock time does not make a transcript timed.
    private const int FewestStamps = 2;

    public static List<RawCue> Read(string[] lines, CaptionNotes notes, out CaptionFormat format)
    {
        var stamped = 0;
        var written = 0;
        foreach (var line in lines)
        {
            if (string.IsNullOrWhiteSpace(line))
                continue;
            written++;
            if (TryStamp(line, out _, out _))
                stamped++;
        }

        var isTimed = stamped >= FewestStamps && stamped * 5 >= written || stamped == 1 && written <= 2 && stamped == written;
        format = isTimed ? CaptionFormat.TimedTranscript : CaptionFormat.Transcript;
        return isTimed ? Timed(lines) : Untimed(lines, notes);
    }

    private static List<RawCue> Timed(string[] lines)
    {
        var cues = new List<RawCue>();
        double? start = null;
        for (var i = 0; i < lines.Length; i++)
        {
            if (string.IsNullOrWhiteSpace(lines[i]) || SpelledTime().IsMatch(lines[i]))
                continue;
            var text = lines[i];
            if (TryStamp(text, out var seconds, out var rest))
            {
                start = seconds;
                text = rest;
            }

            if (!string.IsNullOrWhiteSpace(text))
                cues.Add(new(start ?? 0, null, CueText.Plain([text], isWebVtt: false), i + 1));
        }

        return cues;
    }

    private static List<RawCue> Untimed(string[] lines, CaptionNotes notes)
    {
        var cues = new List<RawCue>();
        for (var i = 0; i < lines.Length; i++)
        {
            // A blank line is kept as an empty cue: it parts what stands above from what stands below.
            var plain = CueText.Plain([lines[i]], isWebVtt: false);
            if (plain.Count > 0 || cues.Count > 0)
                cues.Add(new(null, null, plain, i + 1));
        }

        if (cues.Exists(cue => cue.Text.Count > 0))
            notes.Tolerate(Departure.NoTimes, 1);
        else
            cues.Clear();
        return cues;
    }

    private static bool TryStamp(string line, out double seconds, out string rest)
    {
        seconds = 0;
        rest = "";
        if (Stamp().Match(line) is not { Success: true } match)
            return false;
        var departures = TimingDeparture.None;
        if (!CueTiming.TryStampKindly(match.Groups["time"].ValueSpan, ref departures, out var milliseconds))
            return false;
        seconds = milliseconds / 1000d;
        rest = line[match.Length..];
        return true;
    }

    [GeneratedRegex(@"^\s*[\[(]?(?<time>\d{1,3}:\d{2}(:\d{2})?([.,]\d{1,3})?)([\])]\s*[-–—:|]?\s*|\s*[-–—|]\s*|\s+|$)", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Stamp();

    [GeneratedRegex(@"^\s*\d+ (hour|minute|second)s?(, \d+ (minute|second)s?)*\s*$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex SpelledTime();
}
