namespace Barshow.Engine.Measures;

/// <summary>A range of a computed quantity, both ends included; the quantity's unit is said where it stands.</summary>
public readonly record struct Interval
{
    /// <summary>From <paramref name="low"/> to <paramref name="high"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">An end is no number, or the upper end lies below the lower.</exception>
    public Interval(double low, double high)
    {
        if (!(low <= high) || !double.IsFinite(low) || !double.IsFinite(high))
            throw new ArgumentOutOfRangeException(nameof(high), high, $"The upper end is a number not below the lower end, {low}.");
        Low = low;
        High = high;
    }

    /// <summary>The lower end.</summary>
    public double Low { get; }

    /// <summary>The upper end.</summary>
    public double High { get; }

    /// <summary>Half way between the ends.</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>Both ends at one value.</summary>
    public static Interval At(double value) => new(value, value);
}
