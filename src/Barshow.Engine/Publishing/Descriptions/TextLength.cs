using System.Globalization;
using System.Text;

namespace Barshow.Engine.Publishing.Descriptions;

/// <summary>How long a text is. Pages disagree whether they count characters or UTF-8 bytes, so both are shown and the limit is held in bytes.</summary>
public static class TextLength
{
    /// <summary>Characters as people count them (grapheme clusters, Unicode Standard Annex 29).</summary>
    public static int Characters(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var rest = text.AsSpan();
        var count = 0;
        while (rest.Length > 0)
        {
            rest = rest[StringInfo.GetNextTextElementLength(rest)..];
            count++;
        }

        return count;
    }

    /// <summary>UTF-8 bytes.</summary>
    public static int Bytes(string text) => Encoding.UTF8.GetByteCount(text);
}
