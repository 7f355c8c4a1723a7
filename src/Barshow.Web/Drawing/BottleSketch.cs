using Barshow.Engine.Specs;

namespace Barshow.Web.Drawing;

/// <summary>The level in a bottle after one pour or a group of them.</summary>
/// <param name="Name">What was poured: "Mojito ×2".</param>
/// <param name="LeftMillilitres">What is left in the bottle after it, not below 0.</param>
public sealed record BottleMark(string Name, double LeftMillilitres);

/// <summary>Draws a bottle with its level after each drink, found from the volume; names that would collide move down and get a leader.</summary>
public static class BottleSketch
{
    private const double Scale = 1.58, LabelGap = 17.5;
    private const double FillHeight = 222;

    private static readonly ProfilePoint[] Profile =
    [
        new(0, 31.5), new(1, 33.6), new(2.6, 35.2), new(5, 36.2), new(9, 36.6), new(40, 36.6), new(100, 36.6), new(138, 36.6), new(150, 36.2), new(160, 34.8), new(169, 32),
        new(178, 28), new(187, 23.4), new(195, 19.4), new(203, 16.2), new(211, 13.9), new(219, 12.6), new(228, 12.1), new(245, 12), new(262, 12),
    ];

    /// <summary>The drawing's height for so many labels.</summary>
    public static double HeightFor(int levels) => Math.Max(Profile[^1].Height * Scale + 16, 130 + levels * LabelGap);

    /// <summary>An empty bottle with a graduated side and long marks at shares of its height, to teach with.</summary>
    public static string Outline(double width, double height, IReadOnlyList<double> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        var scale = (height - 20) / Profile[^1].Height;
        const double middle = 98;
        var floor = height - 6;
        var svg = new Svg();
        var left = Svg.Smooth([.. Profile.AsEnumerable().Reverse().Select(point => (middle - point.Radius * scale, floor - point.Height * scale))]);
        var right = Svg.Smooth([.. Profile.Select(point => (middle + point.Radius * scale, floor - point.Height * scale))]);
        svg.Add($"<path d=\"M{left} L{right} Z\" class=\"glass-body\"/>");
        var side = middle + 36.6 * scale;
        for (var y = floor - 30; y > height * .36; y -= 13.5)
            svg.Add($"<path d=\"M{side - 2} {y}h-7\" class=\"tick\"/>");
        svg.Add($"<path d=\"M{left}\" class=\"outline\" stroke-width=\"2\"/><path d=\"M{right}\" class=\"outline\" stroke-width=\"2\"/><path d=\"M{middle - 31.5 * scale} {floor}H{middle + 31.5 * scale}\" class=\"outline\" stroke-width=\"3\"/>");
        svg.Add($"<rect x=\"{middle - 13.5 * scale}\" y=\"{floor - Profile[^1].Height * scale - 4}\" width=\"{27 * scale}\" height=\"{9 * scale}\" class=\"cap\"/>");
        foreach (var mark in marks)
            svg.Add($"<path d=\"M{side - 16} {height * mark}H{width - 4}\" class=\"tick last\"/>");
        return svg.ToString();
    }

    /// <summary>The inside of an SVG element of <paramref name="width"/> × <see cref="HeightFor"/>.</summary>
    public static string Draw(double bottleMillilitres, IReadOnlyList<BottleMark> levels, double width)
    {
        ArgumentNullException.ThrowIfNull(levels);
        var vessel = Vessel.Filled(Profile, FillHeight, bottleMillilitres);
        // Every size is drawn alike: only the share of the bottle is read off.
        var wide = 36.6 / vessel.RadiusAt(100);
        var svg = new Svg();
        const double middle = 71, labels = 138;
        var floor = Profile[^1].Height * Scale + 10;
        var right = width - 2;

        svg.Add($"<path d=\"{Body(0, vessel.Height)}\" class=\"glass-body\"/>");
        var from = bottleMillilitres;
        for (var i = 0; i < levels.Count; i++)
        {
            var to = Math.Clamp(levels[i].LeftMillilitres, 0, bottleMillilitres);
            if (from > to)
                svg.Add($"<path d=\"{Body(vessel.LevelOf(to), vessel.LevelOf(from))}\" class=\"slice {(i % 2 == 0 ? "" : "odd")}\"/>");
            from = to;
        }

        if (from > 0)
            svg.Add($"<path d=\"{Body(0, vessel.LevelOf(from))}\" class=\"slice rest\"/>");
        var wall = vessel.Wall(0, vessel.Height);
        svg.Add($"<path d=\"M{Svg.Smooth([.. wall.Reverse().Select(point => (X(-point.Radius * wide), Y(point.Height)))])} L{Svg.Smooth([.. wall.Select(point => (X(point.Radius * wide), Y(point.Height)))])}\" class=\"outline\" stroke-width=\"1.8\"/>");
        svg.Add($"<path d=\"M{X(-31.5)} {floor} H{X(31.5)}\" class=\"outline\" stroke-width=\"3\"/><rect x=\"{X(-13.5)}\" y=\"{Y(vessel.Height) - 2}\" width=\"{27 * Scale}\" height=\"{9 * Scale}\" class=\"cap\"/>");

        var full = Y(vessel.LevelOf(bottleMillilitres));
        svg.Add($"<path d=\"M{X(14)} {full} H{labels - 12} L{labels - 4} {full}\" class=\"tick\"/>");
        Label(full, "full", bottleMillilitres, "");
        var last = full;
        for (var i = 0; i < levels.Count; i++)
        {
            var y = Y(vessel.LevelOf(Math.Clamp(levels[i].LeftMillilitres, 0, bottleMillilitres)));
            last = Math.Max(y, last + LabelGap);
            var style = i == levels.Count - 1 ? "last" : "";
            svg.Add($"<path d=\"M{X(36)} {y} H{labels - 12} L{labels - 4} {last}\" class=\"tick {style}\"/>");
            Label(last, levels[i].Name, levels[i].LeftMillilitres, i == levels.Count - 1 ? "strong" : "");
        }

        if (from > 0 && from < bottleMillilitres)
            svg.Add($"<path d=\"M{X(-36) - 9} {Y(vessel.LevelOf(from))} h-5 V{floor} h5\" class=\"tick last\"/>");
        return svg.ToString();

        double X(double radius) => middle + radius * Scale;
        double Y(double height) => floor - height * Scale;
        string Body(double low, double high)
        {
            var side = vessel.Wall(low, high);
            return $"M{Svg.Smooth([.. side.Reverse().Select(point => (X(-point.Radius * wide), Y(point.Height)))])} L{Svg.Smooth([.. side.Select(point => (X(point.Radius * wide), Y(point.Height)))])} Z";
        }

        void Label(double y, string name, double value, string style) =>
            svg.Add($"<text x=\"{labels}\" y=\"{y + 4.5}\" class=\"{style}\">{name}</text><text x=\"{right}\" y=\"{y + 4.5}\" text-anchor=\"end\" class=\"level {style}\">{Math.Round(value)}</text>");
    }
}
