using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.CallSheet;

/// <summary>The call sheet as an HTML page that prints on one sheet of A4 or Letter; no scripts, nothing fetched.</summary>
public static class CallSheetPage
{
    private const string Style = """
        @page { margin: 10mm }
        * { box-sizing: border-box }
        body { font: 10.5pt/1.35 "Atkinson Hyperlegible Next", "Segoe UI", Helvetica, Arial, sans-serif; color: #000; background: #fff; max-width: 190mm; margin: 8mm auto; padding: 0 4mm; font-variant-numeric: tabular-nums; overflow-wrap: anywhere }
        h1 { font-size: 17pt; line-height: 1.15; margin: 0 }
        h2 { font-size: 11pt; margin: 0 0 1mm; break-after: avoid }
        p { margin: 0 }
        .facts { display: flex; flex-wrap: wrap; gap: 0 7mm; margin: 2mm 0 3mm; padding: 1.5mm 0; border-block: 0.4mm solid #000 }
        .facts dt, .facts dd { display: inline; margin: 0 }
        .facts dd { font-weight: 700 }
        table { border-collapse: collapse; width: 100%; margin: 0 0 3mm }
        th, td { text-align: left; vertical-align: top; padding: 0.5mm 2mm 0.5mm 0; border-bottom: 0.15mm solid #767676 }
        th { font-weight: 400 }
        tr { break-inside: avoid }
        td.h { white-space: nowrap; width: 1% }
        tr.main td.w { font-weight: 700 }
        .cols { display: grid; grid-template-columns: 1fr 1fr; gap: 3mm 7mm; font-size: 9.5pt; line-height: 1.3 }
        .cols section { break-inside: avoid }
        ul { margin: 0; padding: 0 0 0 4mm }
        footer { margin-top: 3mm; font-size: 8.5pt }
        @media print { body { margin: 0; padding: 0; max-width: none; font-size: 9.5pt } .cols { font-size: 8.5pt } }
        @media (max-width: 600px) { .cols { grid-template-columns: 1fr } }
        """;

    /// <summary>The page.</summary>
    public static string Write(CallSheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var html = new HtmlBuilder();
        html.Add("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<meta name=\"robots\" content=\"noindex\">\n");
        html.Add($"<title>Call sheet: {sheet.Title}</title>\n");
        html.Add("<style>\n").Add(Style).Add("\n</style>\n</head>\n<body>\n<main>\n");
        html.Add($"<p>Call sheet · {sheet.House}</p>\n<h1>{sheet.Title}</h1>\n");
        html.Add("<dl class=\"facts\">\n");
        foreach (var (name, value) in sheet.Facts)
            html.Add($"<div><dt>{name}</dt> <dd>{value}</dd></div>\n");
        html.Add("</dl>\n");
        AddDay(html, sheet);
        html.Add("<div class=\"cols\">\n");
        AddList(html, "Sponsor and gifts", sheet.Sponsor, "");
        AddList(html, "Preparation", sheet.Mise, "No mise list was made.");
        AddList(html, "Allergens", sheet.Allergens, "");
        AddList(html, "Safety and tasting", sheet.Safety, "");
        html.Add("</div>\n<footer>Private: do not publish this sheet.</footer>\n</main>\n</body>\n</html>\n");
        return html.ToString();
    }

    private static void AddDay(HtmlBuilder html, CallSheetContent sheet)
    {
        html.Add("<section>\n<h2>The day</h2>\n");
        if (sheet.Day.Count == 0)
        {
            html.Add("<p>No running order was made.</p>\n</section>\n");
            return;
        }

        html.Add("<table>\n<thead><tr><th scope=\"col\">From</th><th scope=\"col\">To</th><th scope=\"col\">What</th><th scope=\"col\">With</th></tr></thead>\n<tbody>\n");
        foreach (var row in sheet.Day)
        {
            html.Add($"<tr class=\"{(row.Main ? "main" : "side")}\"><td class=\"h\">{row.Start}</td><td class=\"h\">{row.End}</td><td class=\"w\">{row.What}</td><td>{row.With}</td></tr>\n");
        }

        html.Add("</tbody>\n</table>\n</section>\n");
    }

    private static void AddList(HtmlBuilder html, string heading, IReadOnlyList<string> lines, string whenEmpty)
    {
        html.Add($"<section>\n<h2>{heading}</h2>\n");
        if (lines.Count == 0)
        {
            html.Add($"<p>{whenEmpty}</p>\n</section>\n");
            return;
        }

        html.Add("<ul>\n");
        foreach (var line in lines)
            html.Add($"<li>{line}</li>\n");
        html.Add("</ul>\n</section>\n");
    }
}
