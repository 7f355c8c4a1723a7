namespace Barshow.Engine.Callouts.Captions;

/// <summary>Reads captions: WebVTT as the W3C's parser does and more kindly, SubRip, and plain transcripts with or without times.</summary>
/// <remarks>Never throws; the work grows in step with the length of the file. Whatever is tolerated or left out is said in a finding.</remarks>
public static class CaptionReader
{
    /// <summary>The longest file that is read whole, in bytes.</summary>
    public const int MostBytes = 10 * 1024 * 1024;

    /// <summary>Reads the bytes of a caption file, in whatever encoding.</summary>
    public static ReadCaptions Read(ReadOnlySpan<byte> bytes)
    {
        var notes = new CaptionNotes();
        if (bytes.Length > MostBytes)
        {
            bytes = bytes[..MostBytes];
            notes.TooLarge();
        }

        return Read(CaptionEncoding.Decode(bytes, notes), notes);
    }

    /// <summary>Reads captions that are text already, such as pasted ones.</summary>
    public static ReadCaptions Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var notes = new CaptionNotes();
        if (text.Length > MostBytes)
        {
            text = text[..MostBytes];
            notes.TooLarge();
        }

        return Read(text, notes);
    }

    /// <summary>The bytes of a caption file as text, to be kept; no finding tells of the encoding.</summary>
    public static string Text(ReadOnlySpan<byte> bytes) =>
        CaptionEncoding.Decode(bytes[..Math.Min(bytes.Length, MostBytes)], new CaptionNotes()).TrimStart('\uFEFF');

    /// <summary>The lines of a written text as cues without times; a time at the head of a line stays part of it.</summary>
    internal static IReadOnlyList<CaptionCue> ReadText(string text) =>
        [.. Lines(text.Length > MostBytes ? text[..MostBytes] : text).Select((line, i) => new CaptionCue(null, null, line.Trim(), i + 1))];

    private static ReadCaptions Read(string text, CaptionNotes notes)
    {
        var lines = Lines(text);
        var format = FormatOf(lines);
        var raw = format switch
        {
            CaptionFormat.WebVtt => WebVttReader.Read(lines, notes),
            CaptionFormat.SubRip => SubRipReader.Read(lines, notes),
            _ => TranscriptReader.Read(lines, notes, out format),
        };
        InOrder(raw, notes);
        var cues = RollingLines.Unroll(raw, notes);
        if (cues.Count == 0)
            notes.Empty();
        return new(format, cues, notes.Findings(format));
    }

    // Line ends as the WebVTT parser has them: CRLF and CR become LF; nought becomes the replacement character.
    private static string[] Lines(string text)
    {
        if (text.StartsWith('\uFEFF'))
            text = text[1..];
        if (text.Contains('\0', StringComparison.Ordinal))
            text = text.Replace('\0', '\uFFFD');
        if (text.Contains('\r', StringComparison.Ordinal))
            text = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        return text.Split('\n');
    }

    private static CaptionFormat FormatOf(string[] lines)
    {
        if (WebVttReader.HasSignature(lines[0]))
            return CaptionFormat.WebVtt;
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].Contains(CueTiming.Arrow, StringComparison.Ordinal) || !CueTiming.TryReadKindly(lines[i], out _, out var departures))
                continue;
            return departures.HasFlag(TimingDeparture.Comma) || (i > 0 && SubRipReader.IsIndex(lines[i - 1])) ? CaptionFormat.SubRip : CaptionFormat.WebVtt;
        }

        return CaptionFormat.Transcript;
    }

    private static void InOrder(List<RawCue> cues, CaptionNotes notes)
    {
        for (var i = 1; i < cues.Count; i++)
        {
            if (!(cues[i].Start < cues[i - 1].Start))
                continue;
            notes.Tolerate(Departure.OutOfOrder, cues[i].Line);
            var ordered = cues.OrderBy(cue => cue.Start ?? 0).ToList();
            cues.Clear();
            cues.AddRange(ordered);
            return;
        }
    }
}
