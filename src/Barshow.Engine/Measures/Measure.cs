using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Barshow.Engine.Measures;

/// <summary>An exact amount or range with its unit, an open measure, or an open measure with a stated amount ("top with 75 ml").</summary>
/// <remarks>Made by the ways in below; two measures are equal when they are written alike. <see cref="ToString"/> is the canonical text that is stored.</remarks>
public sealed record Measure
{
    private Measure(Rational? low, Rational? high, Unit? unit, OpenMeasure? open)
    {
        Low = low;
        High = high;
        Unit = unit;
        Open = open;
    }

    /// <summary>The amount, or the lower end of a range; null for an open measure without an amount.</summary>
    public Rational? Low { get; }

    /// <summary>The upper end of a range; equal to <see cref="Low"/> for a single amount.</summary>
    public Rational? High { get; }

    /// <summary>The unit; null for a bare count ("1 egg") and for an open measure without an amount.</summary>
    public Unit? Unit { get; }

    /// <summary>What is left to the hand; null for a plain amount.</summary>
    public OpenMeasure? Open { get; }

    /// <summary>Whether two ends differ.</summary>
    public bool IsRange => Low != High;

    /// <summary>Whether a number stands in it.</summary>
    public bool HasAmount => Low is not null;

    /// <summary>The middle of a range, or the amount; null without an amount.</summary>
    public Rational? Middle => Low is { } low && High is { } high ? (low + high) / 2 : null;

    /// <summary>An amount of a unit; a null unit is a bare count.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The amount is below nought.</exception>
    public static Measure Of(Rational amount, Unit? unit) => Between(amount, amount, unit);

    /// <summary>A range of a unit.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An end is below nought, or the upper end is below the lower.</exception>
    public static Measure Between(Rational low, Rational high, Unit? unit)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(low, Rational.Zero);
        ArgumentOutOfRangeException.ThrowIfLessThan(high, low);
        return new(low, high, unit, null);
    }

    /// <summary>Ounces: <c>Ounces(3, 2)</c> is one and a half.</summary>
    public static Measure Ounces(long numerator, long denominator = 1) => Of(new(numerator, denominator), Unit.Ounce);

    /// <summary>Millilitres: <c>Millilitres(45, 2)</c> is 22.5.</summary>
    public static Measure Millilitres(long numerator, long denominator = 1) => Of(new(numerator, denominator), Unit.Millilitre);

    /// <summary>An amount left to the hand.</summary>
    public static Measure LeftOpen(OpenMeasure open) => new(null, null, null, open);

    /// <summary>The same amount with what the hand does to it: "top with 75 ml".</summary>
    public Measure As(OpenMeasure open) => new(Low, High, Unit, open);

    /// <summary>The same amount as a plain measure.</summary>
    /// <exception cref="InvalidOperationException">There is no amount.</exception>
    public Measure WithoutOpen() => HasAmount ? new(Low, High, Unit, null) : throw new InvalidOperationException("An open measure has no amount.");

    /// <summary>The amount (the middle of a range) in millilitres, exactly; null when it is no volume or has no amount.</summary>
    public Rational? InMillilitres(Convention convention, BarSizes? sizes = null) =>
        Unit?.MillilitresUnder(convention, sizes) is { } each && Middle is { } middle ? middle * each : null;

    /// <summary>The same in floating point, for the computations that are not exact anyway: no amount is too long for it.</summary>
    public double? MillilitresNear(Convention convention, BarSizes? sizes = null) =>
        Unit?.MillilitresUnder(convention, sizes) is { } each && Low is { } low && High is { } high ? (low.ToDouble() + high.ToDouble()) / 2 * each.ToDouble() : null;

    /// <summary>The same measure a number of times over.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="factor"/> is below nought.</exception>
    public Measure Times(Rational factor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(factor, Rational.Zero);
        return new(Low * factor, High * factor, Unit, Open);
    }

    /// <summary>The canonical text: "3/2 oz", "6..8 leaf", "2", "top", "top 75 ml".</summary>
    public override string ToString()
    {
        var amount = Low is not { } low ? null
            : IsRange ? string.Create(CultureInfo.InvariantCulture, $"{low}..{High}")
            : low.ToString();
        return string.Join(' ', new[] { Open is { } open ? NameOf(open) : null, amount, Unit?.Name }.Where(part => part is not null));
    }

    /// <summary>Reads the canonical text that <see cref="ToString"/> writes.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out Measure? measure)
    {
        measure = null;
        var parts = new Queue<string>((text ?? "").Split(' '));
        OpenMeasure? open = null;
        if (parts.TryPeek(out var first) && OpenNamed(first) is { } found)
        {
            open = found;
            parts.Dequeue();
        }

        Rational? low = null, high = null;
        Unit? unit = null;
        if (parts.TryDequeue(out var amount))
        {
            var ends = amount.Split("..");
            if (ends.Length > 2 || !Rational.TryParse(ends[0], out var lower) || !Rational.TryParse(ends[^1], out var upper) || lower.Sign < 0 || upper < lower)
                return false;
            (low, high) = (lower, upper);
        }

        if (parts.TryDequeue(out var name) && !Unit.TryNamed(name, out unit))
            return false;
        if (parts.Count > 0 || (low is null && open is null))
            return false;
        measure = new(low, high, unit, open);
        return true;
    }

    /// <summary>Reads the canonical text that <see cref="ToString"/> writes.</summary>
    /// <exception cref="FormatException">It is no measure.</exception>
    public static Measure Parse(string text) =>
        TryParse(text, out var measure) ? measure : throw new FormatException($"\"{text}\" is no measure.");

    /// <summary>The canonical name of an open measure: "top", "to-taste".</summary>
    public static string NameOf(OpenMeasure open) => open is OpenMeasure.ToTaste ? "to-taste" : open.ToString().ToLowerInvariant();

    private static OpenMeasure? OpenNamed(string name) =>
        Enum.GetValues<OpenMeasure>().Cast<OpenMeasure?>().FirstOrDefault(open => NameOf(open!.Value) == name);
}
