using System.Globalization;
using Barshow.Engine.Measures;
using SkiaSharp;

namespace Barshow.Engine.Publishing.Rendering;

/// <summary>A line of text set as outlines, so that it looks the same wherever it is opened.</summary>
/// <remarks>The typeface draws ¼ ½ ¾; thirds and eighths are built from raised and lowered figures about a fraction slash.</remarks>
internal sealed class SetText : IDisposable
{
    private const float FigureScale = 0.62f;
    private const float RaisedBy = 0.34f;

    private SetText(SKPath outline, float width)
    {
        Outline = outline;
        Width = width;
    }

    /// <summary>The outlines, the pen starting at nought on the baseline.</summary>
    public SKPath Outline { get; }

    /// <summary>How far the pen moves.</summary>
    public float Width { get; }

    public static SetText Of(string text, SKTypeface typeface, float size)
    {
        using var outline = new SKPathBuilder();
        var pen = 0f;
        using var full = new SKFont(typeface, size) { Subpixel = true };
        using var figures = new SKFont(typeface, size * FigureScale) { Subpixel = true };
        foreach (var run in Runs(text, full))
        {
            if (run.Fraction is { } fraction)
            {
                pen = Add(outline, figures, fraction.Numerator.ToString(CultureInfo.InvariantCulture), pen, -size * RaisedBy);
                pen = Add(outline, full, "⁄", pen, 0);
                pen = Add(outline, figures, fraction.Denominator.ToString(CultureInfo.InvariantCulture), pen, 0);
            }
            else
            {
                pen = Add(outline, full, run.Text, pen, 0);
            }
        }

        return new(outline.Detach(), pen);
    }

    /// <summary>The largest size, not above <paramref name="size"/>, at which a text is no wider than a width; a text too long even at the smallest size is cut with an ellipsis.</summary>
    public static SetText Within(string text, SKTypeface typeface, float size, float smallest, float width)
    {
        var set = Of(text, typeface, size);
        if (set.Width <= width)
            return set;
        var fitting = Math.Max(smallest, size * width / set.Width);
        set.Dispose();
        set = Of(text, typeface, fitting);
        var info = new StringInfo(text);
        for (var keep = info.LengthInTextElements; set.Width > width && keep > 1;)
        {
            keep = Math.Min(keep - 1, (int)(keep * width / set.Width) + 1);
            set.Dispose();
            set = Of(info.SubstringByTextElements(0, keep).TrimEnd() + "…", typeface, fitting);
        }

        return set;
    }

    public void Dispose() => Outline.Dispose();

    private static float Add(SKPathBuilder outline, SKFont font, string text, float pen, float rise)
    {
        using var glyphs = font.GetTextPath(text, new SKPoint(0, 0));
        outline.AddPath(glyphs, pen, rise, SKPathAddMode.Append);
        return pen + font.MeasureText(text);
    }

    private static IEnumerable<(string Text, Rational? Fraction)> Runs(string text, SKFont font)
    {
        var from = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (!VulgarFraction.TryValue(text[i], out var value) || font.ContainsGlyph(text[i]))
                continue;
            if (i > from)
                yield return (text[from..i], null);
            yield return ("", value);
            from = i + 1;
        }

        if (from < text.Length)
            yield return (text[from..], null);
    }
}
