using System.Text;
using Barshow.Engine.Measures;
using Barshow.Engine.Publishing.Escaping;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Barshow.Engine.Publishing.Rendering;

/// <summary>Sets headings, lines and tables on pages of A4 or Letter, in black on white, with page numbers and table heads repeated on each page.</summary>
internal sealed class PdfSheet : IDisposable
{
    // 72 points to the inch, 25.4 mm to the inch.
    private const double Millimetre = 72 / 25.4;
    private const double Margin = 12 * Millimetre;
    private readonly PdfDocument _document = new();
    private readonly bool _letter;
    private readonly double _size;
    private XGraphics _page = null!;
    private double _y;

    /// <summary>A document of one empty page.</summary>
    /// <param name="title">Its title.</param>
    /// <param name="letter">Whether it is printed on Letter; else on A4.</param>
    /// <param name="size">The size of its text in points.</param>
    public PdfSheet(string title, bool letter, double size)
    {
        EmbeddedFonts.Provide();
        (_letter, _size) = (letter, size);
        _document.Info.Title = PlainText.Line(title);
        _document.Language = "en";
        NewPage();
    }

    private double Width => (_letter ? 612 : 210 * Millimetre) - 2 * Margin;

    private double Bottom => (_letter ? 792 : 297 * Millimetre) - Margin - 12;

    public void Heading(string text, double size)
    {
        Space(size * 0.4);
        foreach (var line in Wrapped(text, Font(size, bold: true), Width))
            Put(line, size, bold: true);
        Space(size * 0.15);
    }

    public void Paragraph(string text, bool bold = false)
    {
        foreach (var line in Wrapped(text, Font(_size, bold), Width))
            Put(line, _size, bold);
    }

    public void Bullet(string text)
    {
        var lines = Wrapped(text, Font(_size, false), Width - 10);
        for (var i = 0; i < lines.Count; i++)
        {
            Room(_size * 1.3);
            if (i == 0)
                _page.DrawString("•", Font(_size, false), XBrushes.Black, Margin, _y + _size);
            _page.DrawString(lines[i], Font(_size, false), XBrushes.Black, Margin + 10, _y + _size);
            _y += _size * 1.3;
        }
    }

    /// <summary>A table whose head stands again on every page and whose rows are never cut in two.</summary>
    /// <param name="head">The names of its columns.</param>
    /// <param name="shares">How wide the columns are; they add up to 1.</param>
    /// <param name="rows">Its rows, with whether each is set bold.</param>
    public void Table(IReadOnlyList<string> head, IReadOnlyList<double> shares, IEnumerable<(IReadOnlyList<string> Cells, bool Bold)> rows)
    {
        Row(head, shares, false, again: false);
        foreach (var (cells, bold) in rows)
        {
            if (_y + HeightOf(cells, shares, bold) > Bottom && _y > Margin)
            {
                NewPage();
                Row(head, shares, false, again: true);
            }

            Row(cells, shares, bold, again: false);
        }

        Space(_size * 0.6);
    }

    public byte[] ToBytes()
    {
        _page.Dispose();
        for (var i = 0; i < _document.PageCount && _document.PageCount > 1; i++)
        {
            using var page = XGraphics.FromPdfPage(_document.Pages[i]);
            page.DrawString(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{i + 1} of {_document.PageCount}"), Font(8, false), XBrushes.Black, Margin, Bottom + 12);
        }

        using var stream = new MemoryStream();
        _document.Save(stream, closeStream: false);
        return stream.ToArray();
    }

    public void Dispose()
    {
        _page.Dispose();
        _document.Dispose();
    }

    private static XFont Font(double size, bool bold) => new(EmbeddedFonts.Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);

    private void Row(IReadOnlyList<string> cells, IReadOnlyList<double> shares, bool bold, bool again)
    {
        var height = HeightOf(cells, shares, bold);
        if (!again)
            Room(height);
        var x = Margin;
        for (var i = 0; i < cells.Count; i++)
        {
            var y = _y;
            foreach (var line in Wrapped(cells[i], Font(_size, bold), shares[i] * Width - 6))
            {
                _page.DrawString(line, Font(_size, bold), XBrushes.Black, x, y + _size);
                y += _size * 1.25;
            }

            x += shares[i] * Width;
        }

        _y += height;
        _page.DrawLine(new XPen(XColors.Gray, 0.4), Margin, _y - 2, Margin + Width, _y - 2);
    }

    private double HeightOf(IReadOnlyList<string> cells, IReadOnlyList<double> shares, bool bold) =>
        cells.Select((cell, i) => Wrapped(cell, Font(_size, bold), shares[i] * Width - 6).Count).Max() * _size * 1.25 + 5;

    private void Put(string line, double size, bool bold)
    {
        Room(size * 1.3);
        _page.DrawString(line, Font(size, bold), XBrushes.Black, Margin, _y + size);
        _y += size * 1.3;
    }

    private void Space(double height) => _y += height;

    private void Room(double height)
    {
        if (_y + height > Bottom && _y > Margin)
            NewPage();
    }

    private void NewPage()
    {
        _page?.Dispose();
        var page = _document.AddPage();
        page.Width = XUnit.FromPoint(_letter ? 612 : 210 * Millimetre);
        page.Height = XUnit.FromPoint(_letter ? 792 : 297 * Millimetre);
        _page = XGraphics.FromPdfPage(page);
        _y = Margin;
    }

    // Words go to the next line; a word wider than the line is cut.
    private List<string> Wrapped(string text, XFont font, double width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in Drawable(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var rest = word;
            if (line.Length > 0 && Measure(line + " " + rest) <= width)
            {
                line.Append(' ').Append(rest);
                continue;
            }

            if (line.Length > 0)
                lines.Add(line.ToString());
            line.Clear();
            while (rest.Length > 1 && Measure(rest) > width)
            {
                var keep = Math.Max(1, (int)(rest.Length * width / Measure(rest)));
                while (keep > 1 && Measure(rest[..keep]) > width)
                    keep--;
                lines.Add(rest[..keep]);
                rest = rest[keep..];
            }

            line.Append(rest);
        }

        if (line.Length > 0 || lines.Count == 0)
            lines.Add(line.ToString());
        return lines;

        double Measure(string words) => _page.MeasureString(words, font).Width;
    }

    // The typeface has ¼ ½ ¾; other fractions are written out with a fraction slash, arrows as "to".
    private static string Drawable(string text)
    {
        var drawable = new StringBuilder();
        foreach (var c in PlainText.Line(text))
        {
            if (c is '→')
                drawable.Append("to");
            else if (c is '½' or '¼' or '¾' || !VulgarFraction.TryValue(c, out var value))
                drawable.Append(c);
            else
                drawable.Append(drawable.Length > 0 && char.IsAsciiDigit(drawable[^1]) ? "\u00A0" : "").Append(value.Numerator).Append('⁄').Append(value.Denominator);
        }

        return drawable.ToString();
    }
}
