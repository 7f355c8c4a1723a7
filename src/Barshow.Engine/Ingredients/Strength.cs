namespace Barshow.Engine.Ingredients;

/// <summary>Alcohol by volume: millilitres of ethanol in one millilitre of liquid at 20 °C, from 0 to 1.</summary>
/// <remarks><c>default</c> is no alcohol.</remarks>
public readonly record struct Strength
{
    private Strength(double share) => Share = share;

    /// <summary>The share, from 0 to 1.</summary>
    public double Share { get; }

    /// <summary>As a label prints it, from 0 to 100.</summary>
    public double Percent => Share * 100;

    /// <summary>The strength printed on a label, in percent.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="percent"/> is not a number from 0 to 100.</exception>
    public static Strength FromPercent(double percent) =>
        percent is >= 0 and <= 100
            ? new(percent / 100)
            : throw new ArgumentOutOfRangeException(nameof(percent), percent, "A strength is 0 to 100 percent.");
}
