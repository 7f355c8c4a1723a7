using System.Globalization;
using System.Text;

namespace Barshow.Engine.Publishing.Escaping;

/// <summary>Makes text safe to set among other text: no control characters, no marks that turn the reading direction, no half characters.</summary>
/// <remarks>Everything that leaves the product passes through here first; the escaping for its target comes after.</remarks>
public static class PlainText
{
    /// <summary>The text as one line: line breaks and tabs become single spaces, the ends are trimmed.</summary>
    public static string Line(string? text) => Clean(text, keepLines: false).Trim();

    /// <summary>The text with its line breaks, each written as a line feed; tabs become spaces.</summary>
    public static string Lines(string? text) => Clean(text, keepLines: true).Trim('\n');

    /// <summary>Whether a character turns the direction in which its neighbours are read (Unicode Standard Annex 9, section 2).</summary>
    public static bool TurnsDirection(int codePoint) =>
        codePoint is 0x061C or 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);

    private static string Clean(string? text, bool keepLines)
    {
        if (string.IsNullOrEmpty(text))
            return "";
        var clean = new StringBuilder(text.Length);
        foreach (var rune in text.ReplaceLineEndings("\n").EnumerateRunes())
        {
            if (rune.Value is '\n' or '\u2028' or '\u2029' or '\v' or '\f')
                clean.Append(keepLines ? '\n' : ' ');
            else if (rune.Value is '\t')
                clean.Append(' ');
            else if (!IsDropped(rune))
                clean.Append(rune.ToString());
        }

        return keepLines ? clean.ToString() : OneSpace(clean.ToString());
    }

    private static bool IsDropped(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control
        || TurnsDirection(rune.Value)
        || rune.Value is 0xFEFF or 0x200B or 0x2060
        || rune.Value is >= 0xFFF9 and <= 0xFFFB
        || (rune.Value & 0xFFFE) == 0xFFFE;

    private static string OneSpace(string text)
    {
        if (!text.Contains("  ", StringComparison.Ordinal))
            return text;
        var spaced = new StringBuilder(text.Length);
        foreach (var c in text)
            if (c != ' ' || spaced.Length == 0 || spaced[^1] != ' ')
                spaced.Append(c);
        return spaced.ToString();
    }
}
