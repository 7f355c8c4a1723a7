namespace Barshow.Web.Drawing;

/// <summary>One drink on the balance map.</summary>
/// <param name="Number">Its place in the lineup, counted from 1.</param>
/// <param name="Name">Its name.</param>
/// <param name="Sugar">Grams of sugar in 100 ml as served, at the middle of its range.</param>
/// <param name="Acid">Grams of acid in 100 ml as served, at the middle of its range.</param>
/// <param name="SugarLow">The lower end of the range of sugar.</param>
/// <param name="SugarHigh">The upper end of the range of sugar.</param>
/// <param name="StrengthPercent">Alcohol by volume as served, in percent; sets the area.</param>
/// <param name="Chosen">Whether it is the one looked at.</param>
public sealed record BalancePoint(int Number, string Name, double Sugar, double Acid, double SugarLow, double SugarHigh, double StrengthPercent, bool Chosen = false);

/// <summary>Draws the balance map: sugar across, acid up, strength as area, rays of equal sugar to acid.</summary>
public static class BalanceSketch
{
    /// <summary>Width of the drawing.</summary>
    public const double Width = 486;

    /// <summary>Height of the drawing.</summary>
    public const double Height = 430;

    private const double Left = 50, Floor = 376, Right = 432, Ceiling = 40;

    // Common practice, no source: most sours stand between 8 and 11 parts of sugar to one of acid.
    private const double TartRay = 8, SweetRay = 11;

    /// <summary>The inside of an SVG element of <see cref="Width"/> × <see cref="Height"/>.</summary>
    public static string Draw(IReadOnlyList<BalancePoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var sugarTop = Nice(Math.Max(10, points.Count == 0 ? 0 : points.Max(point => point.SugarHigh) * 1.08), 2);
        var acidTop = Nice(Math.Max(1.2, points.Count == 0 ? 0 : points.Max(point => point.Acid) * 1.12), .4);
        var svg = new Svg();
        Band();
        Scales();
        foreach (var ratio in new[] { 6.0, TartRay, SweetRay, 15 })
            Ray(ratio);
        svg.Add($"<text x=\"{Right}\" y=\"{Floor + 46}\" text-anchor=\"end\" class=\"axis\">sugar, g/100 ml</text><text x=\"{Left - 6}\" y=\"{Ceiling - 20}\" class=\"axis\">acid, g/100 ml</text>");
        svg.Add($"<text x=\"{Left + 36}\" y=\"{Ceiling + 34}\" class=\"zone\">tart</text><text x=\"{Right - 20}\" y=\"{Floor - 44}\" text-anchor=\"end\" class=\"zone\">sweet</text>");
        Points();
        return svg.ToString();

        double X(double sugar) => Left + (Right - Left) * sugar / sugarTop;
        double Y(double acid) => Floor - (Floor - Ceiling) * acid / acidTop;

        (double X, double Y) End(double ratio) => sugarTop / ratio > acidTop ? (X(acidTop * ratio), Y(acidTop)) : (X(sugarTop), Y(sugarTop / ratio));

        void Band()
        {
            var (ax, ay) = End(TartRay);
            var (bx, by) = End(SweetRay);
            var corner = ax < Right - .5 && bx > Right - .5 ? $"L{Right:0} {Ceiling:0}" : "";
            svg.Add($"<path d=\"M{Left} {Floor}L{ax} {ay}{corner}L{bx} {by}Z\" class=\"band\"/>");
        }

        void Ray(double ratio)
        {
            var (x, y) = End(ratio);
            var side = x > Right - .5;
            svg.Add($"<path d=\"M{Left} {Floor}L{x} {y}\" class=\"ray\"/><text x=\"{(side ? x + 5 : x)}\" y=\"{(side ? y + 5 : y - 7)}\" text-anchor=\"{(side ? "start" : "middle")}\">{(int)ratio}:1</text>");
        }

        void Scales()
        {
            var step = sugarTop > 16 ? 4 : 2;
            for (var sugar = 0.0; sugar <= sugarTop + .01; sugar += .5 * step / 2)
            {
                var labelled = sugar % step < .01;
                svg.Add($"<path d=\"M{X(sugar)} {Floor}v{(labelled ? 12 : sugar % (step / 2.0) < .01 ? 8 : 4)}\" class=\"tick\"/>");
                if (labelled)
                    svg.Add($"<text x=\"{X(sugar)}\" y=\"{Floor + 27}\" text-anchor=\"middle\">{sugar}</text>");
            }

            for (var tenth = 0; tenth <= Math.Round(acidTop * 10); tenth++)
            {
                svg.Add($"<path d=\"M{Left} {Y(tenth / 10.0)}h{(tenth % 2 == 1 ? -5 : -9)}\" class=\"tick\"/>");
                if (tenth % 4 == 0)
                    svg.Add($"<text x=\"{Left - 13}\" y=\"{Y(tenth / 10.0) + 5}\" text-anchor=\"end\">{Figures.One(tenth / 10.0)}</text>");
            }

            svg.Add($"<path d=\"M{Left} {Ceiling}V{Floor}H{Right}\" class=\"tick\"/>");
        }

        void Points()
        {
            var drawn = points.OrderBy(point => point.Chosen).Select(point => (Point: point, X: X(point.Sugar), Y: Y(point.Acid), Radius: 4 + Math.Sqrt(Math.Max(0, point.StrengthPercent)) * 2.6)).ToList();
            foreach (var (point, x, y, radius) in drawn)
            {
                if (point.SugarHigh - point.SugarLow > .05)
                    svg.Add($"<path d=\"M{X(point.SugarLow)} {y}H{X(point.SugarHigh)}\" class=\"spread\"/>");
                svg.Add($"<circle cx=\"{x}\" cy=\"{y}\" r=\"{radius}\" class=\"drink {(point.Chosen ? "chosen" : "")}\"/>");
            }

            // Numbers come after all circles, so that none is covered.
            var numbers = new List<(double X, double Y)>();
            foreach (var (point, x, y, radius) in drawn)
            {
                var at = Free(x, y, radius, numbers);
                if (Math.Abs(at.X - x) + Math.Abs(at.Y - y) > 1)
                    svg.Add($"<path d=\"M{x + (at.X - x) * .5} {y + (at.Y - y) * .5}L{x + (at.X - x) * .72} {y + (at.Y - y) * .72}\" class=\"leader\"/>");
                numbers.Add(at);
                svg.Add($"<text x=\"{at.X}\" y=\"{at.Y + 5}\" text-anchor=\"middle\" class=\"number {(point.Chosen && at == (x, y) ? "chosen" : "")}\">{point.Number}</text>");
            }
        }
    }

    // A number stands in its circle; where another number is already close, it moves beside it.
    private static (double X, double Y) Free(double x, double y, double radius, List<(double X, double Y)> taken)
    {
        var reach = radius + 10;
        (double X, double Y)[] places = [(x, y), (x + reach, y - 6), (x - reach, y), (x + reach, y + 9), (x, y - reach), (x, y + reach), (x - reach, y + 10), (x + reach * 1.6, y)];
        return places.FirstOrDefault(place => taken.All(other => Math.Abs(other.X - place.X) > 13 || Math.Abs(other.Y - place.Y) > 13), places[^1]);
    }

    private static double Nice(double value, double step) => Math.Ceiling(value / step - 1e-9) * step;
}
