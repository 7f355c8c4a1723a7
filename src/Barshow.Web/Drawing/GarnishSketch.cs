using Barshow.Engine.Names;

namespace Barshow.Web.Drawing;

/// <summary>Where a garnish stands: the middle of the rim, its height and radius, the height of the liquid, and drawing units to the millimetre.</summary>
internal readonly record struct RimPlace(double Middle, double Rim, double Radius, double Level, double Scale);

/// <summary>Draws a garnish from the words it is printed with; words it does not know draw nothing.</summary>
internal static class GarnishSketch
{
    private sealed record Citrus(string Rind, string Flesh, string Peel);

    private static readonly Citrus Lime = new("#7FA63B", "#DCE9A9", "#7FA63B");
    private static readonly Citrus Lemon = new("#D9B92F", "#F5EBB0", "#E2C44A");
    private static readonly Citrus Orange = new("#DB8A33", "#F7D9A8", "#E08A4A");
    private static readonly Citrus Grapefruit = new("#DC9468", "#F3BDA4", "#E08A4A");

    public static void Draw(Svg svg, string garnish, RimPlace place)
    {
        var words = NameFolding.Fold(garnish);
        var citrus = Has("lime") ? Lime : Has("lemon") ? Lemon : Has("grapefruit") ? Grapefruit : Has("orange") ? Orange : null;
        if (Has("mint") || Has("sprig") || Has("basil") || Has("leaf") || Has("rosemary") || Has("dill"))
            Sprig(svg, place);
        else if (Has("cucumber"))
            Ribbon(svg, place);
        else if (Has("celery"))
            Stick(svg, place, "#9DB96A");
        else if (Has("cherry") || Has("cherries"))
            Berry(svg, place, "#8E2233");
        else if (Has("olive"))
            Berry(svg, place, "#8A9A3E");
        else if (Has("onion"))
            Berry(svg, place, "#EDE6D2");
        else if (Has("raspberr") || Has("blackberr") || Has("strawberr"))
            Berry(svg, place, Has("blackberr") ? "#3C2A4A" : "#B8323F");
        else if (Has("pineapple"))
            Wedge(svg, place, new("#B98A2E", "#F0DB8A", "#E0C050"));
        else if (Has("apple"))
            Wedge(svg, place, new("#A8B84A", "#F1EBC8", "#A8B84A"));
        else if (citrus is not null && (Has("twist") || Has("peel") || Has("zest") || Has("coin")))
            Twist(svg, place, citrus);
        else if (citrus is not null && (Has("wedge") || Has("quarter")))
            Wedge(svg, place, citrus);
        else if (citrus is not null)
            Wheel(svg, place, citrus);
        else if (Has("drop") || Has("bitters"))
            Dots(svg, place, "#A6452F");
        else if (Has("nutmeg") || Has("cinnamon") || Has("cocoa") || Has("bean"))
            Dots(svg, place, "#6B4426");

        bool Has(string word) => words.Contains(word, StringComparison.Ordinal);
    }

    private static void Wheel(Svg svg, RimPlace place, Citrus citrus)
    {
        var (x, y, k) = (place.Middle + place.Radius - 8 * place.Scale, place.Rim - 3 * place.Scale, place.Scale);
        svg.Add($"<g transform=\"translate({x} {y})\"><circle r=\"{11 * k}\" fill=\"{citrus.Rind}\" class=\"rind\"/><circle r=\"{8.4 * k}\" fill=\"{citrus.Flesh}\"/>");
        foreach (var turn in new[] { 0, 60, 120 })
            svg.Add($"<path d=\"M{-8.4 * k} 0H{8.4 * k}\" transform=\"rotate({turn})\" stroke=\"{citrus.Rind}\" class=\"flesh-line\"/>");
        svg.Raw("</g>");
    }

    private static void Wedge(Svg svg, RimPlace place, Citrus citrus)
    {
        var (x, y, k) = (place.Middle + place.Radius - 8 * place.Scale, place.Rim, place.Scale);
        svg.Add($"<path d=\"M{x - 11 * k} {y - 4 * k} A{11 * k} {11 * k} 0 0 0 {x + 11 * k} {y - 7 * k} Z\" fill=\"{citrus.Flesh}\" stroke=\"{citrus.Rind}\" stroke-width=\"{2.4 * k}\" stroke-linejoin=\"round\" transform=\"rotate(-12 {x} {y})\"/>");
    }

    private static void Twist(Svg svg, RimPlace place, Citrus citrus)
    {
        var (x, y, k) = (place.Middle + place.Radius - 8 * place.Scale, place.Rim, place.Scale);
        svg.Add($"<path d=\"M{x + 6 * k} {y - 6 * k} q{-10 * k} {6 * k} {-2 * k} {14 * k} q{8 * k} {8 * k} {-2 * k} {14 * k}\" stroke=\"{citrus.Peel}\" class=\"twist\"/>");
    }

    private static void Sprig(Svg svg, RimPlace place)
    {
        var k = place.Scale;
        foreach (var (turn, length) in new[] { (-52, 13), (-18, 17), (16, 16), (48, 12) })
            svg.Add($"<path d=\"M0 0 Q{6 * k} {-length * .55 * k} 0 {-length * 1.25 * k} Q{-6 * k} {-length * .55 * k} 0 0Z\" transform=\"translate({place.Middle + 9 * k} {place.Rim + k}) rotate({turn})\" class=\"leaf\"/>");
    }

    private static void Ribbon(Svg svg, RimPlace place)
    {
        var (x, y, k) = (place.Middle, place.Rim, place.Scale);
        svg.Add($"<path d=\"M{x - 4 * k} {y + 34 * k} Q{x + 24 * k} {y + 6 * k} {x + 2 * k} {y - 12 * k}\" class=\"ribbon\"/>");
    }

    private static void Stick(Svg svg, RimPlace place, string colour)
    {
        var (x, y, k) = (place.Middle, place.Rim, place.Scale);
        svg.Add($"<path d=\"M{x - 6 * k} {y + 48 * k} L{x + 14 * k} {y - 14 * k}\" stroke=\"{colour}\" stroke-width=\"{6 * k}\" stroke-linecap=\"round\"/>");
    }

    private static void Berry(Svg svg, RimPlace place, string colour)
    {
        var (x, y, k) = (place.Middle + place.Radius * .5, place.Rim + 2 * place.Scale, place.Scale);
        svg.Add($"<path d=\"M{x - 16 * k} {y + 13 * k} L{x + 15 * k} {y - 12 * k}\" class=\"stick\"/><circle cx=\"{x}\" cy=\"{y}\" r=\"{6 * k}\" fill=\"{colour}\"/>");
    }

    private static void Dots(Svg svg, RimPlace place, string colour)
    {
        foreach (var at in new[] { -.36, 0, .34 })
            svg.Add($"<ellipse cx=\"{place.Middle + at * place.Radius}\" cy=\"{place.Level + 1.5 * place.Scale}\" rx=\"{2.6 * place.Scale}\" ry=\"{1.5 * place.Scale}\" fill=\"{colour}\"/>");
    }
}
