using System.Globalization;
using System.Text;

namespace Barshow.Engine.Names;

/// <summary>Folds names so that case, accents and punctuation do not part what people call the same.</summary>
public static class NameFolding
{
    /// <summary>The name in lower case, without accents, everything but ASCII letters and digits turned into single spaces.</summary>
    public static string Fold(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var folded = new StringBuilder(name.Length);
        var gap = false;
        foreach (var c in WithoutLoneSurrogates(name).Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.NonSpacingMark || c is '\'' or '’')
                continue;
            var plain = c switch { 'ß' => "ss", 'æ' or 'Æ' => "ae", 'ø' or 'Ø' => "o", 'ł' or 'Ł' => "l", 'œ' or 'Œ' => "oe", _ => null };
            if (plain is null && !char.IsAsciiLetterOrDigit(c))
            {
                gap = folded.Length > 0;
                continue;
            }

            if (gap)
                folded.Append(' ');
            gap = false;
            if (plain is null)
                folded.Append(char.ToLowerInvariant(c));
            else
                folded.Append(plain);
        }

        return folded.ToString();
    }

    // Normalising refuses half a surrogate pair, which pasted text can hold.
    private static string WithoutLoneSurrogates(string text) =>
        text.AsSpan().IndexOfAnyInRange('\uD800', '\uDFFF') < 0
            ? text
            : string.Concat(text.EnumerateRunes().Select(rune => rune.ToString()));
}
