namespace Barshow.Web.Drawing;

/// <summary>Draws a strength on a ticked rule from 0 to 40 %, or further where a drink is stronger.</summary>
public static class StrengthSketch
{
    /// <summary>Width of the drawing.</summary>
    public const double Width = 476;

    /// <summary>Height of the drawing.</summary>
    public const double Height = 84;

    /// <summary>The inside of an SVG element of <see cref="Width"/> × <see cref="Height"/>; every figure in percent by volume.</summary>
    public static string Draw(double low, double high, double before)
    {
        var top = Math.Max(40, (int)Math.Ceiling(Math.Max(before, high) / 10) * 10);
        var svg = new Svg();
        for (var percent = 0; percent <= top; percent++)
        {
            svg.Add($"<path d=\"M{X(percent)} 44v{(percent % 10 == 0 ? 15 : percent % 5 == 0 ? 10 : 6)}\" class=\"tick\"/>");
            if (percent % 10 == 0)
                svg.Add($"<text x=\"{X(percent)}\" y=\"77\" text-anchor=\"middle\" class=\"soft\">{percent} %</text>");
        }

        var middle = (low + high) / 2;
        var served = $"{Figures.Range(low, high)} % served";
        svg.Add($"<path d=\"M{X(0)} 44H{X(top)}\" class=\"tick\"/><rect x=\"{X(low)}\" y=\"32\" width=\"{Math.Max(2, X(high) - X(low))}\" height=\"12\" class=\"range\"/><path d=\"M{X(middle)} 22V44\" class=\"mark\"/>");
        svg.Add($"<text x=\"{Math.Clamp(X(middle), 56, Width - 60)}\" y=\"15\" text-anchor=\"middle\" class=\"strong\">{served}</text>");
        svg.Add($"<path d=\"M{X(before)} 30V44\" class=\"before\"/>");
        var left = X(before) > Width - 130;
        svg.Add($"<text x=\"{X(before) + (left ? -8 : 8)}\" y=\"38\" text-anchor=\"{(left ? "end" : "start")}\" class=\"soft\">{Figures.One(before)} % before ice</text>");
        return svg.ToString();

        double X(double percent) => 14 + percent * 440 / top;
    }
}
