using System.Globalization;

namespace Barshow.Engine.Measures.Writing;

/// <summary>Exact numbers as they are written: "1½", "1 1/2", "22.5".</summary>
internal static class WrittenNumber
{
    /// <summary>A whole number and a fraction: "1½", and in ASCII "1 1/2".</summary>
    public static string Mixed(Rational value, bool ascii)
    {
        var whole = value.Floor;
        var rest = value - new Rational(whole);
        var wholeText = whole.ToString(CultureInfo.InvariantCulture);
        if (rest == Rational.Zero)
            return wholeText;
        if (!ascii && VulgarFraction.TryGlyph(rest, out var glyph))
            return whole == 0 ? glyph.ToString() : $"{wholeText}{glyph}";
        return whole == 0 ? rest.ToString() : $"{wholeText} {rest}";
    }

    /// <summary>Whether people write it as a fraction: quarters, thirds, eighths and their like, and not hundredths.</summary>
    public static bool IsUsualFraction(Rational value) => value.Denominator is 1 or 2 or 3 or 4 or 5 or 6 or 7 or 8 or 9 or 12 or 16 or 24 or 32 or 48 or 64;

    /// <summary>A decimal number where one says it exactly ("22.5"), else a mixed number.</summary>
    public static string Decimal(Rational value, bool ascii) =>
        DecimalOf(value) is { } exact ? exact.ToString("0.############", CultureInfo.InvariantCulture) : Mixed(value, ascii);

    /// <summary>The decimal number of at most twelve places that is exactly the value; null when there is none.</summary>
    internal static decimal? DecimalOf(Rational value)
    {
        long scale = 1;
        for (var places = 0; places <= 12; places++, scale *= 10)
        {
            if (scale % value.Denominator == 0)
                return (decimal)value.Numerator / value.Denominator;
        }

        return null;
    }
}
