using Barshow.Engine.Findings;

namespace Barshow.Web.Drawing;

/// <summary>A chapter on the film strip.</summary>
/// <param name="Seconds">Where it starts.</param>
/// <param name="Label">What stands on it: the drink's number, or nothing.</param>
/// <param name="IsDrink">Whether a drink is made in it.</param>
public sealed record FilmChapter(double Seconds, string Label, bool IsDrink);

/// <summary>Something to mend at a time of the film.</summary>
/// <param name="Seconds">When.</param>
/// <param name="Severity">How much it matters.</param>
public sealed record FilmPointer(double Seconds, Severity Severity);

/// <summary>Draws a film as one ticked rule with its chapters and findings.</summary>
public static class FilmSketch
{
    /// <summary>Width of the drawing.</summary>
    public const double Width = 1180;

    /// <summary>Height of the drawing.</summary>
    public const double Height = 98;

    /// <summary>The inside of an SVG element of <see cref="Width"/> × <see cref="Height"/>.</summary>
    public static string Draw(double filmSeconds, IReadOnlyList<FilmChapter> chapters, IReadOnlyList<FilmPointer> pointers)
    {
        ArgumentNullException.ThrowIfNull(chapters);
        ArgumentNullException.ThrowIfNull(pointers);
        var length = Math.Max(1, filmSeconds);
        var svg = new Svg();
        var (step, named) = length switch { <= 600 => (5, 60), <= 3600 => (15, 300), _ => (60, 900) };
        for (var second = 0; second <= length; second += step)
        {
            svg.Add($"<path d=\"M{X(second)} 58v{(second % named == 0 ? 16 : second % (4 * step) == 0 ? 10 : 5)}\" class=\"tick\"/>");
            if (second % named == 0)
                svg.Add($"<text x=\"{Math.Max(X(second), 2)}\" y=\"92\" text-anchor=\"{(second == 0 ? "start" : "middle")}\">{Figures.FilmTime(second)}</text>");
        }

        for (var i = 0; i < chapters.Count; i++)
        {
            var from = X(chapters[i].Seconds);
            var to = i < chapters.Count - 1 ? X(chapters[i + 1].Seconds) : X(length);
            svg.Add($"<rect x=\"{from + 1}\" y=\"34\" width=\"{Math.Max(1, to - from - 2)}\" height=\"22\" class=\"chapter {(chapters[i].IsDrink ? "" : "edge")}\"/><text x=\"{from + 8}\" y=\"50\" class=\"number\">{chapters[i].Label}</text>");
        }

        foreach (var pointer in pointers)
        {
            var x = X(pointer.Seconds);
            var style = SeverityWords.Style(pointer.Severity);
            svg.Add($"<g transform=\"translate({x - 9} 2)\" class=\"{style}\"><svg width=\"18\" height=\"18\" viewBox=\"0 0 16 16\" class=\"severity-mark\">").Raw(SeverityWords.Mark(pointer.Severity)).Add($"</svg></g><path d=\"M{x} 21V58\" class=\"pointer {style}\"/>");
        }

        return svg.ToString();

        double X(double seconds) => 6 + Math.Clamp(seconds, 0, length) / length * (Width - 12);
    }
}
