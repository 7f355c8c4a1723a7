using UnitsNet;

namespace Barshow.Engine.Ingredients.Alcohol;

/// <summary>Bringing a spirit down with water, by the rules of the US Gauging Manual (27 CFR part 30): strengths and volumes hold at 60 °F.</summary>
public static class Proofing
{
    // 60 °F.
    private const double Celsius = (60d - 32) * 5 / 9;

    /// <summary>US proof: twice the alcohol by volume.</summary>
    public static double UsProof(this Strength strength) => strength.Percent * 2;

    /// <summary>Parts of water in 100 parts by volume of a spirit. With its parts of alcohol they make more than 100, since the two shrink together.</summary>
    public static double WaterPartsIn100(Strength strength)
    {
        var share = EthanolWater.MassShareOf(strength.Share, Celsius);
        return 100 * (1 - share) * EthanolWater.KilogramsPerCubicMetre(share, Celsius) / EthanolWater.KilogramsPerCubicMetre(0, Celsius);
    }

    /// <summary>Water that brings a volume of spirit down from one strength to another.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The new strength is nought or above the old.</exception>
    public static Volume WaterToAdd(Volume spirit, Strength from, Strength to)
    {
        CheckDown(from, to);
        return spirit * ((from.Share / to.Share * WaterPartsIn100(to) - WaterPartsIn100(from)) / 100);
    }

    /// <summary>Water that brings a mass of spirit down from one strength to another.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The new strength is nought or above the old.</exception>
    public static Mass WaterToAdd(Mass spirit, Strength from, Strength to)
    {
        CheckDown(from, to);
        return spirit * (EthanolWater.MassShareOf(from.Share, Celsius) / EthanolWater.MassShareOf(to.Share, Celsius) - 1);
    }

    private static void CheckDown(Strength from, Strength to)
    {
        if (to.Share <= 0 || to.Share > from.Share)
            throw new ArgumentOutOfRangeException(nameof(to), to, "Water brings a spirit down to a strength above nought and not above its own.");
    }
}
