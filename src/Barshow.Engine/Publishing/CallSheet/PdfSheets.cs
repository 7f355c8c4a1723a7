using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Rendering;
using Barshow.Engine.Shooting.Mise;

namespace Barshow.Engine.Publishing.CallSheet;

/// <summary>The call sheet and the mise list as PDF, on the paper of the audience's region: Letter in North America, A4 elsewhere.</summary>
public static class PdfSheets
{
    /// <summary>The call sheet.</summary>
    public static byte[] CallSheet(CallSheetContent sheet, House house)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        using var pdf = new PdfSheet($"Call sheet: {sheet.Title}", IsLetter(house), 8.5);
        pdf.Paragraph($"Call sheet · {sheet.House}");
        pdf.Heading(sheet.Title, 17);
        pdf.Paragraph(string.Join("   ·   ", sheet.Facts.Select(fact => $"{fact.Name} {fact.Value}")), bold: true);
        pdf.Heading("The day", 11);
        if (sheet.Day.Count == 0)
            pdf.Paragraph("No running order was made.");
        else
            pdf.Table(["From", "To", "What", "With"], [0.09, 0.09, 0.34, 0.48], sheet.Day.Select(row => ((IReadOnlyList<string>)[row.Start, row.End, row.What, row.With], row.Main)));
        List(pdf, "Sponsor and gifts", sheet.Sponsor);
        List(pdf, "Preparation", sheet.Mise);
        List(pdf, "Allergens", sheet.Allergens);
        List(pdf, "Safety and tasting", sheet.Safety);
        pdf.Paragraph("Private: do not publish this sheet.");
        return pdf.ToBytes();
    }

    /// <summary>The mise list, a box to tick before each task.</summary>
    public static byte[] Mise(MiseList mise, EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(mise);
        ArgumentNullException.ThrowIfNull(results);
        using var pdf = new PdfSheet($"Mise list: {results.Episode.Title}", IsLetter(results.Bar.House), 9);
        pdf.Paragraph($"Mise list · {results.Bar.House.Name}");
        pdf.Heading(results.Episode.Title, 17);
        foreach (var session in mise.Tasks.GroupBy(task => task.Session).OrderBy(session => session.Key))
        {
            pdf.Heading(Casing.AtStart(MiseWords.NameOf(session.Key)), 12);
            pdf.Table(["", "From", "To", "Where", "What", "Amount"], [0.045, 0.095, 0.095, 0.13, 0.425, 0.21], session.Select(task => ((IReadOnlyList<string>)
            [
                results.Episode.Ticked.Contains(task.Key) ? "[x]" : "[  ]",
                ClockOnly(mise, task.Start),
                ClockOnly(mise, task.End),
                task.Station,
                string.Join(' ', task.Steps.Prepend(task.Text)),
                task.Amount,
            ], false)));
        }

        if (mise.Tasks.Count == 0)
            pdf.Paragraph("Nothing needs preparing.");
        pdf.Paragraph("Keep what must be cold at 5 °C or below. Follow local rules and licensed practice.");
        return pdf.ToBytes();
    }

    // The session's heading says which day it is.
    private static string ClockOnly(MiseList mise, TimeSpan time) => mise.Clock.Say(time).Replace(" the day before", "", StringComparison.Ordinal);

    private static void List(PdfSheet pdf, string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
            return;
        pdf.Heading(heading, 10.5);
        foreach (var line in lines)
            pdf.Bullet(line);
    }

    private static bool IsLetter(House house) => house.AudienceRegion is "US" or "CA";
}
