using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace Barshow.Web.Drawing;

/// <summary>Writes the inside of an SVG element: numbers with one decimal in the invariant culture, text escaped.</summary>
public sealed class Svg
{
    private readonly StringBuilder _text = new();

    /// <summary>Adds markup; every interpolated number is written with a point and at most one decimal, every text escaped.</summary>
    public Svg Add([InterpolatedStringHandlerArgument("")] ref Handler markup)
    {
        _ = markup;
        return this;
    }

    /// <summary>Adds markup that is known to be sound.</summary>
    public Svg Raw(string markup)
    {
        _text.Append(markup);
        return this;
    }

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    /// <summary>A smooth line through points, as the body of a path after its <c>M</c>.</summary>
    public static string Smooth(IReadOnlyList<(double X, double Y)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var tangents = new (double X, double Y)[points.Count];
        for (var i = 0; i < points.Count; i++)
        {
            var before = points[Math.Max(0, i - 1)];
            var after = points[Math.Min(points.Count - 1, i + 1)];
            var length = Math.Sqrt(Math.Pow(after.X - before.X, 2) + Math.Pow(after.Y - before.Y, 2));
            length = length == 0 ? 1 : length;
            tangents[i] = ((after.X - before.X) / length, (after.Y - before.Y) / length);
        }

        var path = new StringBuilder();
        for (var i = 0; i < points.Count; i++)
        {
            var (x, y) = points[i];
            if (i == 0)
            {
                path.Append(CultureInfo.InvariantCulture, $"{x:0.#} {y:0.#}");
                continue;
            }

            var (u, v) = points[i - 1];
            var reach = Math.Sqrt(Math.Pow(x - u, 2) + Math.Pow(y - v, 2)) / 3;
            path.Append(CultureInfo.InvariantCulture,
                $" C{u + tangents[i - 1].X * reach:0.#} {v + tangents[i - 1].Y * reach:0.#} {x - tangents[i].X * reach:0.#} {y - tangents[i].Y * reach:0.#} {x:0.#} {y:0.#}");
        }

        return path.ToString();
    }

    /// <summary>Collects one interpolated piece of markup.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Handler
    {
        private readonly StringBuilder _text;

        /// <summary>Starts a piece; called by the compiler.</summary>
        public Handler(int literalLength, int formattedCount, Svg svg)
        {
            _ = literalLength + formattedCount;
            _text = svg._text;
        }

        /// <summary>Markup between the values.</summary>
        public void AppendLiteral(string markup) => _text.Append(markup);

        /// <summary>A number.</summary>
        public void AppendFormatted(double value) => _text.Append(CultureInfo.InvariantCulture, $"{value:0.##}");

        /// <summary>A number.</summary>
        public void AppendFormatted(int value) => _text.Append(CultureInfo.InvariantCulture, $"{value}");

        /// <summary>A text, escaped.</summary>
        public void AppendFormatted(string? value) => _text.Append(System.Net.WebUtility.HtmlEncode(value));
    }
}
