using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Barshow.Web.Components;

/// <summary>Text whose thirds and eighths are drawn with raised and lowered figures, since the fonts hold only halves and quarters.</summary>
public sealed class FractionText : ComponentBase
{
    private static readonly Dictionary<char, (string Upper, string Lower)> Drawn = new()
    {
        ['⅓'] = ("1", "3"),
        ['⅔'] = ("2", "3"),
        ['⅛'] = ("1", "8"),
        ['⅜'] = ("3", "8"),
        ['⅝'] = ("5", "8"),
        ['⅞'] = ("7", "8"),
        ['⅙'] = ("1", "6"),
        ['⅚'] = ("5", "6"),
        ['⅕'] = ("1", "5"),
    };

    private static readonly System.Buffers.SearchValues<char> Marks = System.Buffers.SearchValues.Create([.. Drawn.Keys]);

    /// <summary>The text.</summary>
    [Parameter, EditorRequired]
    public string Text { get; set; } = "";

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        var rest = Text.AsSpan();
        while (rest.IndexOfAny(Marks) is >= 0 and var at)
        {
            builder.AddContent(0, rest[..at].ToString());
            var (upper, lower) = Drawn[rest[at]];
            // The character itself is what is copied and read aloud.
            builder.AddMarkupContent(1, $"<span class=\"fraction\" aria-hidden=\"true\"><sup>{upper}</sup><i>⁄</i><sub>{lower}</sub></span><span class=\"unseen\">{rest[at]}</span>");
            rest = rest[(at + 1)..];
        }

        builder.AddContent(2, rest.ToString());
    }
}
