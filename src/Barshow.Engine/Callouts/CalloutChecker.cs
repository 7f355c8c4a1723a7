using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Callouts.Checks;
using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Callouts;

/// <summary>Compares what was said on film, or stands in a script, with the spec and the brief.</summary>
public static class CalloutChecker
{
    /// <summary>Checks captions.</summary>
    public static CalloutReport Check(ReadCaptions captions, FilmSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(captions);
        ArgumentNullException.ThrowIfNull(sheet);
        return Check(captions.Cues, captions.Findings, sheet, isFilm: true) with { Format = captions.Format, LastSeconds = captions.Cues.Count > 0 ? captions.Cues[^1].EndSeconds : null };
    }

    /// <summary>Checks a written script or description as if it were said.</summary>
    public static CalloutReport CheckText(string text, FilmSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(sheet);
        return Check(CaptionReader.ReadText(text), [], sheet, isFilm: false);
    }

    private static CalloutReport Check(IReadOnlyList<CaptionCue> cues, IReadOnlyList<Finding> reading, FilmSheet sheet, bool isFilm)
    {
        var film = TaughtFilm.Of(SpeechText.Of(cues), sheet);
        var notMade = new List<CheckNotMade>();
        var findings = new List<Finding>();
        findings.AddRange(LineChecks.Findings(film));
        findings.AddRange(TitleCheck.Findings(film, notMade));
        findings.AddRange(PromiseCheck.Findings(film, notMade));
        findings.AddRange(SponsorCheck.Findings(film, isFilm, notMade));
        findings.AddRange(CautionCheck.Findings(film));
        if (film.Speech.Tokens.Count > 0 && film.Sheet.Drinks.Count == 0)
            notMade.Add(new(FindingCatalogue.DiffersFromSpec.Name, "The lineup has no drink to compare with."));
        if (film.IsCut)
            notMade.Add(new(FindingCatalogue.DiffersFromSpec.Name, "Only the first 2,000 amounts were compared."));
        return new(film.Callouts(), film.Segments(), [.. reading, .. findings.OrderBy(finding => finding.TimeSeconds ?? double.MaxValue)], notMade);
    }
}
