using System.Text.Encodings.Web;
using System.Text.Unicode;

namespace Barshow.Engine.Publishing.Escaping;

/// <summary>Text for an HTML page, between tags or inside a quoted attribute: the same escapes are safe in both.</summary>
public static class HtmlText
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>The text as one line, cleaned and escaped.</summary>
    public static string Of(string? text) => Encoder.Encode(PlainText.Line(text));
}
