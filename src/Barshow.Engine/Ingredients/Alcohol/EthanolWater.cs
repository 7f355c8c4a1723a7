using UnitsNet;

namespace Barshow.Engine.Ingredients.Alcohol;

/// <summary>Mixtures of ethanol and water by the general formula of OIML R 22 (1975; Council Directive 76/766/EEC, Annex).</summary>
/// <remarks>A mass share is grams of ethanol in one gram of mixture, from 0 to 1. Alcohol by volume holds at 20 °C unless a temperature is given.</remarks>
public static partial class EthanolWater
{
    private const double ReferenceCelsius = 20;

    /// <summary>The density of a mixture.</summary>
    /// <param name="massShare">Ethanol by mass, 0 to 1.</param>
    /// <param name="temperature">−20 to 40 °C, and not below where the mixture freezes.</param>
    /// <exception cref="ArgumentOutOfRangeException">Either lies outside.</exception>
    public static Density DensityAt(double massShare, Temperature temperature)
    {
        CheckShare(massShare, nameof(massShare));
        if (temperature.DegreesCelsius is not (>= -20 and <= 40))
            throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "The formula holds from -20 to 40 °C.");
        return Density.FromKilogramsPerCubicMeter(KilogramsPerCubicMetre(massShare, temperature.DegreesCelsius));
    }

    /// <summary>The density of a mixture of that strength at 20 °C, in grams to the millilitre.</summary>
    public static double GramsPerMillilitre(Strength strength) => KilogramsPerCubicMetre(MassShareOf(strength), ReferenceCelsius) / 1000;

    /// <summary>Ethanol by mass of a mixture that holds this much by volume at 20 °C.</summary>
    public static double MassShareOf(Strength strength) => MassShareOf(strength.Share, ReferenceCelsius);

    /// <summary>Alcohol by volume at 20 °C of a mixture that holds this much by mass.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="massShare"/> is not a number from 0 to 1.</exception>
    public static Strength StrengthOf(double massShare)
    {
        CheckShare(massShare, nameof(massShare));
        return Strength.FromPercent(Math.Clamp(VolumeShareOf(massShare, ReferenceCelsius), 0, 1) * 100);
    }

    /// <summary>What mixtures poured together at 20 °C really fill and how strong they are: alcohol and water shrink as they meet.</summary>
    /// <param name="poured">Volume and strength of each.</param>
    public static (Volume Volume, Strength Strength) Mixed(params IReadOnlyList<(Volume Volume, Strength Strength)> poured)
    {
        ArgumentNullException.ThrowIfNull(poured);
        double grams = 0, ethanolGrams = 0;
        foreach (var (volume, strength) in poured)
        {
            var millilitres = volume.Milliliters;
            grams += millilitres * GramsPerMillilitre(strength);
            ethanolGrams += millilitres * strength.Share * PureGramsPerMillilitre;
        }

        if (grams <= 0)
            return (Volume.Zero, default);
        var massShare = Math.Min(1, ethanolGrams / grams);
        return (Volume.FromMilliliters(grams / KilogramsPerCubicMetre(massShare, ReferenceCelsius) * 1000), StrengthOf(massShare));
    }

    private static double PureGramsPerMillilitre => KilogramsPerCubicMetre(1, ReferenceCelsius) / 1000;

    internal static double KilogramsPerCubicMetre(double massShare, double celsius)
    {
        var degrees = celsius - ReferenceCelsius;
        var density = Polynomial(A, massShare);
        if (degrees == 0)
            return density;
        density += degrees * Polynomial(B, degrees);
        var power = 1.0;
        foreach (var row in C)
        {
            power *= degrees;
            density += power * massShare * Polynomial(row, massShare);
        }

        return density;
    }

    internal static double VolumeShareOf(double massShare, double celsius) =>
        massShare * KilogramsPerCubicMetre(massShare, celsius) / KilogramsPerCubicMetre(1, celsius);

    // The share by volume rises with the share by mass all the way, so halving finds it; the mass share never exceeds the volume share.
    internal static double MassShareOf(double volumeShare, double celsius)
    {
        double low = 0, high = volumeShare;
        if (volumeShare is 0 or 1)
            return volumeShare;
        for (var i = 0; i < 60 && high - low > 1e-15; i++)
        {
            var middle = (low + high) / 2;
            if (VolumeShareOf(middle, celsius) < volumeShare)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    private static double Polynomial(double[] coefficients, double x)
    {
        var value = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--)
            value = value * x + coefficients[i];
        return value;
    }

    private static void CheckShare(double massShare, string name)
    {
        if (massShare is not (>= 0 and <= 1))
            throw new ArgumentOutOfRangeException(name, massShare, "A share by mass is from 0 to 1.");
    }
}
