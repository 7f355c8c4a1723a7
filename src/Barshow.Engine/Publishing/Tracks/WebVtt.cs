using System.Globalization;
using System.Text;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Tracks;

/// <summary>Writes text tracks as WebVTT (W3C; media type text/vtt).</summary>
public static class WebVtt
{
    /// <summary>A whole track, lines ended by a line feed, cues numbered from 1.</summary>
    /// <param name="note">What the track is, one line; "-->" cannot stand in it.</param>
    /// <param name="cues">The cues, starts never going down, each ending after its start.</param>
    /// <exception cref="ArgumentException">A cue starts before the one before it, ends before it starts, or its text would break the file.</exception>
    public static string Write(string note, IReadOnlyList<Cue> cues)
    {
        ArgumentNullException.ThrowIfNull(cues);
        var track = new StringBuilder("WEBVTT\n\nNOTE ").Append(PlainText.Line(note).Replace("-->", "→", StringComparison.Ordinal)).Append('\n');
        var before = 0d;
        for (var i = 0; i < cues.Count; i++)
        {
            var cue = cues[i];
            if (!(cue.StartSeconds >= before))
                throw new ArgumentException($"Cue {i + 1} starts before the cue before it.", nameof(cues));
            if (Milliseconds(cue.EndSeconds) <= Milliseconds(cue.StartSeconds))
                throw new ArgumentException($"Cue {i + 1} does not end after its start.", nameof(cues));
            if (cue.Payload.Length == 0 || cue.Payload.Contains("-->", StringComparison.Ordinal) || cue.Payload.Contains('\r') || $"\n{cue.Payload}\n".Contains("\n\n", StringComparison.Ordinal))
                throw new ArgumentException($"The text of cue {i + 1} is empty or would break the file.", nameof(cues));
            before = cue.StartSeconds;
            track.Append(CultureInfo.InvariantCulture, $"\n{i + 1}\n{Time(cue.StartSeconds)} --> {Time(cue.EndSeconds)}\n{cue.Payload}\n");
        }

        return track.ToString();
    }

    /// <summary>Text of a caption or chapter cue: one line, with the three references the format asks for. Empty text becomes a dash.</summary>
    public static string Text(string? text)
    {
        var line = PlainText.Line(text);
        return line.Length == 0
            ? "–"
            : line.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
    }

    /// <summary>A time as the format writes it: "00:01:05.250", hours of two digits or more.</summary>
    public static string Time(double seconds)
    {
        var whole = Milliseconds(seconds);
        return string.Create(CultureInfo.InvariantCulture, $"{whole / 3_600_000:00}:{whole / 60_000 % 60:00}:{whole / 1000 % 60:00}.{whole % 1000:000}");
    }

    private static long Milliseconds(double seconds) => (long)Math.Round(seconds * 1000, MidpointRounding.AwayFromZero);
}
