using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Barshow.Engine.Measures;

/// <summary>An exact fraction of whole numbers, in lowest terms, with a positive denominator.</summary>
/// <remarks><c>default</c> is nought. Arithmetic that leaves the range of a 64-bit whole number throws <see cref="OverflowException"/>; nothing wraps.</remarks>
public readonly record struct Rational : IComparable<Rational>
{
    private readonly long _denominatorLessOne;

    /// <summary>The fraction <paramref name="numerator"/>/<paramref name="denominator"/>, reduced.</summary>
    /// <exception cref="DivideByZeroException"><paramref name="denominator"/> is nought.</exception>
    /// <exception cref="OverflowException">The reduced fraction does not fit.</exception>
    public Rational(long numerator, long denominator = 1)
        : this((Int128)numerator, denominator)
    {
    }

    private Rational(Int128 numerator, Int128 denominator)
    {
        if (denominator == 0)
            throw new DivideByZeroException("A fraction's denominator is not nought.");
        if (denominator == 1)
        {
            Numerator = checked((long)numerator);
            return;
        }

        var divisor = GreatestCommonDivisor(Int128.Abs(numerator), Int128.Abs(denominator));
        if (denominator < 0)
            divisor = -divisor;
        Numerator = checked((long)(numerator / divisor));
        _denominatorLessOne = checked((long)(denominator / divisor)) - 1;
    }

    /// <summary>Nought.</summary>
    public static Rational Zero => default;

    /// <summary>One.</summary>
    public static Rational One => new(1);

    /// <summary>The upper number, which carries the sign.</summary>
    public long Numerator { get; }

    /// <summary>The lower number, 1 or more.</summary>
    public long Denominator => _denominatorLessOne + 1;

    /// <summary>Whether it is a whole number.</summary>
    public bool IsWhole => _denominatorLessOne == 0;

    /// <summary>-1, 0 or 1.</summary>
    public int Sign => Math.Sign(Numerator);

    /// <summary>The greatest whole number that is not above it.</summary>
    public long Floor => Numerator >= 0 || IsWhole ? Numerator / Denominator : Numerator / Denominator - 1;

    /// <summary>The nearest binary fraction.</summary>
    public double ToDouble() => (double)Numerator / Denominator;

    /// <summary>The exact fraction a decimal number stands for.</summary>
    /// <exception cref="OverflowException">It does not fit.</exception>
    public static Rational FromDecimal(decimal value)
    {
        Int128 scale = 1;
        var digits = value;
        while (digits != decimal.Truncate(digits))
        {
            digits *= 10;
            scale *= 10;
        }

        return new((Int128)digits, scale);
    }

    /// <summary>The whole number or fraction nearest to it among the multiples of <paramref name="step"/>; a tie goes up.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="step"/> is not above nought.</exception>
    public Rational RoundTo(Rational step)
    {
        if (step.Sign <= 0)
            throw new ArgumentOutOfRangeException(nameof(step), step, "A step is above nought.");
        return new Rational((this / step + new Rational(1, 2)).Floor) * step;
    }

    /// <summary>The magnitude.</summary>
    public Rational Abs() => Sign < 0 ? -this : this;

    /// <summary>The sum.</summary>
    public static Rational operator +(Rational left, Rational right) => new(
        (Int128)left.Numerator * right.Denominator + (Int128)right.Numerator * left.Denominator,
        (Int128)left.Denominator * right.Denominator);

    /// <summary>The difference.</summary>
    public static Rational operator -(Rational left, Rational right) => left + -right;

    /// <summary>The opposite.</summary>
    public static Rational operator -(Rational value) => new(-(Int128)value.Numerator, value.Denominator);

    /// <summary>The product.</summary>
    public static Rational operator *(Rational left, Rational right) => new(
        (Int128)left.Numerator * right.Numerator,
        (Int128)left.Denominator * right.Denominator);

    /// <summary>The quotient.</summary>
    /// <exception cref="DivideByZeroException"><paramref name="right"/> is nought.</exception>
    public static Rational operator /(Rational left, Rational right) => new(
        (Int128)left.Numerator * right.Denominator,
        (Int128)left.Denominator * right.Numerator);

    /// <summary>Whether the left is less.</summary>
    public static bool operator <(Rational left, Rational right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left is more.</summary>
    public static bool operator >(Rational left, Rational right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left is not more.</summary>
    public static bool operator <=(Rational left, Rational right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left is not less.</summary>
    public static bool operator >=(Rational left, Rational right) => left.CompareTo(right) >= 0;

    /// <summary>A whole number as a fraction.</summary>
    public static implicit operator Rational(int whole) => new(whole);

    /// <inheritdoc/>
    public int CompareTo(Rational other) =>
        ((Int128)Numerator * other.Denominator).CompareTo((Int128)other.Numerator * Denominator);

    /// <summary>Reads what <see cref="ToString"/> writes: "3/2", "45", "-1/4".</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Rational value)
    {
        value = default;
        if (text is null)
            return false;
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        var upper = slash < 0 ? text : text[..slash];
        if (!long.TryParse(upper, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var numerator))
            return false;
        long denominator = 1;
        if (slash >= 0 && (!long.TryParse(text[(slash + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out denominator) || denominator == 0))
            return false;
        value = new(numerator, denominator);
        return true;
    }

    /// <summary>"3/2", or "45" for a whole number.</summary>
    public override string ToString() => IsWhole
        ? Numerator.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");

    private static Int128 GreatestCommonDivisor(Int128 a, Int128 b)
    {
        // Nearly all fractions are small, and 64 bits divide many times faster than 128.
        if (a <= long.MaxValue && b <= long.MaxValue)
            return GreatestCommonDivisor((ulong)a, (ulong)b);
        while (b != 0)
            (a, b) = (b, a % b);
        return a == 0 ? 1 : a;
    }

    private static ulong GreatestCommonDivisor(ulong a, ulong b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a == 0 ? 1 : a;
    }
}
