using System.Globalization;

namespace Barshow.Engine.Measures.Writing;

/// <summary>Writes a measure for the eye, in plain ASCII, and for the ear. The line reader reads each of them back to the same measure.</summary>
public static class MeasureWriter
{
    private const char NoBreakSpace = '\u00A0';

    /// <summary>For print and screen, with no-break spaces inside: "1½ oz", "22.5 ml", "6–8 leaves", "top with 75 ml", "to taste".</summary>
    public static string Show(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return Written(measure, ascii: false).Replace(' ', NoBreakSpace);
    }

    /// <summary>In ASCII: "1 1/2 oz", "22.5 ml", "6-8 leaves", "top with 75 ml", "to taste".</summary>
    public static string Plain(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return Written(measure, ascii: true);
    }

    /// <summary>As it is said: "one and a half ounces", "forty-five mil", "six to eight leaves".</summary>
    public static string Say(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var amount = Said(measure);
        return measure.Open is { } open ? WithOpen(open, amount) : amount!;
    }

    /// <summary>What goes before the amount of an open measure, or stands for it.</summary>
    internal static string WithOpen(OpenMeasure open, string? amount) => (open, amount) switch
    {
        (OpenMeasure.ToTaste, null) => "to taste",
        (OpenMeasure.ToTaste, _) => $"{amount} to taste",
        (OpenMeasure.Top or OpenMeasure.Fill or OpenMeasure.Rinse, not null) => $"{Measure.NameOf(open)} with {amount}",
        (_, null) => Measure.NameOf(open),
        _ => $"{Measure.NameOf(open)} {amount}",
    };

    private static string Written(Measure measure, bool ascii)
    {
        string? amount = null;
        if (measure is { Low: { } low, High: { } high })
        {
            var text = Number(low, measure.Unit, ascii);
            if (measure.IsRange)
                text += RangeMark(low, ascii) + Number(high, measure.Unit, ascii);
            amount = measure.Unit is { } unit ? $"{text} {unit.Written(high)}" : text;
        }

        return measure.Open is { } open ? WithOpen(open, amount) : amount!;
    }

    // "1-1/2" is one and a half, so a range that could be taken for a mixed number is written with "to".
    private static string RangeMark(Rational low, bool ascii) => ascii && low.IsWhole ? " to " : ascii ? "-" : "–";

    private static string Number(Rational value, Unit? unit, bool ascii) =>
        unit is { IsDecimal: true } || !WrittenNumber.IsUsualFraction(value) ? WrittenNumber.Decimal(value, ascii) : WrittenNumber.Mixed(value, ascii);

    private static string? Said(Measure measure)
    {
        if (measure is not { Low: { } low, High: { } high })
            return null;
        if (!measure.IsRange)
            return Said(low, measure.Unit);
        return $"{SaidNumber(low)} to {Said(high, measure.Unit)}";
    }

    private static string Said(Rational value, Unit? unit)
    {
        if (unit is null)
            return SaidNumber(value);
        var whole = value.Floor;
        if (whole > 0 || value == Rational.Zero || !WrittenNumber.IsUsualFraction(value))
            return $"{SaidNumber(value)} {(value == Rational.One ? unit.Spoken : unit.SpokenMany)}";
        var article = unit.TakesAn ? "an" : "a";
        return value == new Rational(1, 2)
            ? $"half {article} {unit.Spoken}"
            : $"{SpokenNumber.Fraction(value, article: true)} of {article} {unit.Spoken}";
    }

    private static string SaidNumber(Rational value)
    {
        var whole = value.Floor;
        var rest = value - new Rational(whole);
        if (rest == Rational.Zero)
            return SpokenNumber.Whole(whole);
        if (!WrittenNumber.IsUsualFraction(value) && SaidDecimal(value) is { } point)
            return point;
        if (!SpokenNumber.HasShare(rest.Denominator))
            return $"{SpokenNumber.Whole(value.Numerator)} over {SpokenNumber.Whole(value.Denominator)}";
        return whole == 0
            ? SpokenNumber.Fraction(rest, article: false)
            : $"{SpokenNumber.Whole(whole)} and {SpokenNumber.Fraction(rest, article: true)}";
    }

    private static string? SaidDecimal(Rational value)
    {
        if (WrittenNumber.DecimalOf(value) is not { } exact)
            return null;
        var parts = exact.ToString("0.############", CultureInfo.InvariantCulture).Split('.');
        return $"{SpokenNumber.Whole(value.Floor)} point {string.Join(' ', parts[1].Select(digit => SpokenNumber.Whole(digit - '0')))}";
    }
}
