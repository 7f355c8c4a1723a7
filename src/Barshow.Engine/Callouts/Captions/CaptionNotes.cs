using System.Globalization;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Callouts.Captions;

/// <summary>How a caption file departs from its format.</summary>
internal enum Departure
{
    MissingSignature,
    Encoding16,
    EncodingLegacy,
    Comma,
    FullStop,
    ShortHours,
    ShortMinutes,
    ShortFraction,
    MissingFraction,
    EndNotAfterStart,
    OutOfOrder,
    Overlap,
    NumberMissing,
    BlankLineInText,
    RolledLines,
    NoTimes,
}

/// <summary>Collects what a caption file departs from; each departure is told once.</summary>
internal sealed class CaptionNotes
{
    private readonly SortedDictionary<Departure, (int Count, int FirstLine)> _departures = [];
    private readonly List<(int Line, string Text)> _unreadable = [];
    private int _unreadableCount;
    private bool _tooLarge;
    private bool _empty;

    public void Tolerate(Departure departure, int line) =>
        _departures[departure] = _departures.TryGetValue(departure, out var known) ? (known.Count + 1, Math.Min(known.FirstLine, line)) : (1, line);

    public void Unreadable(int line, string text)
    {
        _unreadableCount++;
        if (_unreadable.Count < 10)
            _unreadable.Add((line, text.Length > 80 ? text[..80] : text));
    }

    public void TooLarge() => _tooLarge = true;

    public void Empty() => _empty = true;

    public IReadOnlyList<Finding> Findings(CaptionFormat format)
    {
        var findings = new List<Finding>();
        if (_tooLarge)
            findings.Add(new(FindingCatalogue.CaptionsTooLarge, "captions", "The caption file is larger than 10 MB; what comes after is not read.", "Cut the file into parts of one film each."));
        if (_empty)
            findings.Add(new(FindingCatalogue.CaptionsEmpty, "captions", "The caption file holds no speech.", "Give the captions of the film as WebVTT, SubRip or plain text."));
        foreach (var (line, text) in _unreadable)
            findings.Add(new(FindingCatalogue.CueUnreadable, "captions", $"The times \"{text}\" cannot be read, so the words under them are not checked.", "Write both times as 00:01:05.250.") { Line = line, Said = text });
        if (_unreadableCount > _unreadable.Count)
            findings.Add(new(FindingCatalogue.CueUnreadable, "captions", $"{Count(_unreadableCount - _unreadable.Count)} more cues have times that cannot be read.", "Write both times as 00:01:05.250."));
        foreach (var (departure, (count, firstLine)) in _departures)
            findings.Add(new(FindingCatalogue.CaptionsTolerated, "captions", Sentence(departure, count, firstLine, format), "Nothing need be done; captions saved anew by an editor will not show this again.") { Line = firstLine });
        return findings;
    }

    private static string Sentence(Departure departure, int count, int line, CaptionFormat format) => departure switch
    {
        Departure.MissingSignature => "The first line does not say WEBVTT; the file was read as WebVTT all the same.",
        Departure.Encoding16 => "The file is UTF-16, where captions are UTF-8.",
        Departure.EncodingLegacy => "The file is not UTF-8; it was read as Windows-1252.",
        Departure.Comma => $"{Times(count)} a comma where the format has a full stop, first on line {Count(line)}.",
        Departure.FullStop => $"{Times(count)} a full stop where the format has a comma, first on line {Count(line)}.",
        Departure.ShortHours => $"{Times(count)} hours of one figure, first on line {Count(line)}.",
        Departure.ShortMinutes => $"{Times(count)} minutes or seconds of one figure, first on line {Count(line)}.",
        Departure.ShortFraction => $"{Times(count)} a fraction of a second that has not three figures, first on line {Count(line)}.",
        Departure.MissingFraction => $"{Times(count)} no fraction of a second, first on line {Count(line)}.",
        Departure.EndNotAfterStart => $"{Cues(count)} not end after the start, first on line {Count(line)}.",
        Departure.OutOfOrder => $"The cues are not in the order of their times, first on line {Count(line)}; they were put in order.",
        Departure.Overlap => $"{Cues(count)} not wait for the end of the cue before, first on line {Count(line)}.",
        Departure.NumberMissing => $"{Cues(count)} not stand under a number, first on line {Count(line)}.",
        Departure.BlankLineInText => $"{Cues(count)} not end at a blank line, first on line {Count(line)}; the text after it was kept.",
        Departure.RolledLines => $"{Count(count)} lines repeat the cue before, as automatic captions do, first on line {Count(line)}; each was read once.",
        Departure.NoTimes => "The transcript has no times, so findings have none.",
        _ => $"The file departs from {format}.",
    };

    private static string Times(int count) => count == 1 ? "One line of times has" : $"{Count(count)} lines of times have";

    private static string Cues(int count) => count == 1 ? "One cue does" : $"{Count(count)} cues do";

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
