using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Barshow.Engine.Publishing.Escaping;

/// <summary>A table written as CSV (RFC 4180): records end in CRLF, cells with commas, quotes or line breaks are quoted.</summary>
/// <remarks>
/// A text cell that a spreadsheet would run as a formula is led by an apostrophe (OWASP, CSV injection); numbers are written as they are.
/// Cells are given as <see cref="string"/>, <see cref="int"/>, <see cref="double"/>, <see cref="decimal"/> or null.
/// </remarks>
public sealed class CsvTable
{
    // Told that records end in CRLF, the library no longer quotes a cell for a line feed alone.
    private static readonly CsvConfiguration Format = new(CultureInfo.InvariantCulture)
    {
        NewLine = "\r\n",
        ShouldQuote = cell => ConfigurationFunctions.ShouldQuote(cell) || cell.Field?.AsSpan().IndexOfAny('\r', '\n') >= 0,
    };

    private readonly string[] _columns;
    private readonly List<object?[]> _rows = [];

    /// <summary>A table with these columns.</summary>
    public CsvTable(params string[] columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        _columns = columns;
    }

    /// <summary>Adds a record.</summary>
    /// <exception cref="ArgumentException">It has another number of cells than there are columns.</exception>
    public void Add(params object?[] cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        if (cells.Length != _columns.Length)
            throw new ArgumentException($"A record has {_columns.Length} cells, not {cells.Length}.", nameof(cells));
        _rows.Add(cells);
    }

    /// <summary>The whole table, its header first.</summary>
    public string Write()
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, Format))
        {
            WriteRecord(csv, _columns);
            foreach (var row in _rows)
                WriteRecord(csv, row);
        }

        return text.ToString();
    }

    /// <summary>A text cell as a spreadsheet may safely open it.</summary>
    public static string Safe(string? text)
    {
        var lines = PlainText.Lines(text);
        return WouldRun(lines) || WouldRun(text ?? "") ? "'" + lines : lines;
    }

    private static void WriteRecord(CsvWriter csv, object?[] cells)
    {
        foreach (var cell in cells)
            csv.WriteField(cell switch
            {
                null => "",
                int whole => whole.ToString(CultureInfo.InvariantCulture),
                double number => number.ToString("0.###", CultureInfo.InvariantCulture),
                decimal amount => amount.ToString("0.00", CultureInfo.InvariantCulture),
                string text => Safe(text),
                _ => throw new ArgumentException($"A cell is no {cell.GetType().Name}.", nameof(cells)),
            });
        csv.NextRecord();
    }

    // The characters that begin a formula in one spreadsheet or another, their full-width forms among them, also behind spaces.
    private static bool WouldRun(string text)
    {
        var trimmed = text.TrimStart(' ', '\u00A0');
        return trimmed.Length > 0 && trimmed[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '＝' or '＋' or '－' or '＠';
    }
}
