using Barshow.Engine.Ingredients;
using Barshow.Engine.Ingredients.Alcohol;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>The melt that cooling alone demands, of what is in the tin, from 20 °C and with ice at 0 °C.</summary>
/// <remarks>A lower bound on dilution: it leaves out water already on the ice, the warmth of the vessel and of the room.</remarks>
/// <param name="ToZeroMillilitres">Millilitres of melt that bring the drink to 0 °C.</param>
/// <param name="AtEquilibriumMillilitres">Millilitres of melt when the drink has become as cold as ice can make it.</param>
/// <param name="EquilibriumCelsius">How cold that is, in degrees Celsius.</param>
public sealed record HeatBalance(Interval ToZeroMillilitres, Interval AtEquilibriumMillilitres, Interval EquilibriumCelsius)
{
    /// <summary>The temperature of the ingredients, in degrees Celsius: a room.</summary>
    public const double StartCelsius = 20;

    // Latent heat of fusion of ice, J/g at 0 °C (CRC Handbook; 334 in a food-chemistry appendix, 80 kcal/kg in FAO Technical Paper 331).
    private const double Fusion = 333.55;

    // Specific heats, J/(g K): water at 20 °C (property table), ethanol at 25 °C (CRC Handbook).
    private const double WaterHeat = 4.18;
    private const double EthanolHeat = 2.44;

    // A 40 % spirit holds more heat than the mean of its parts; 4.3 J/(g K) is the upper estimate for every mixture.
    private const double MixtureHeat = 4.3;

    // Freezing points of ethanol and water by volume percent, °C (Engineering ToolBox, ethanol freeze protected water solutions; rounded there).
    private static readonly double[] FreezingByTenPercent = [0, -4, -9, -15, -23, -32];

    /// <summary>The heat balance of an amount.</summary>
    /// <param name="millilitres">Millilitres before ice, 0 or more.</param>
    /// <param name="strength">Alcohol by volume before ice, 0 to 1.</param>
    public static HeatBalance Of(double millilitres, double strength)
    {
        var heat = HeatOf(strength);
        var coldest = EquilibriumCelsiusOf(strength, heat.Low);
        var warmest = EquilibriumCelsiusOf(strength, heat.High);
        return new(
            new(millilitres * Melt(heat.Low, 0), millilitres * Melt(heat.High, 0)),
            new(millilitres * Melt(heat.Low, coldest), millilitres * Melt(heat.High, warmest)),
            new(Math.Min(coldest, warmest), Math.Max(coldest, warmest)));
    }

    /// <summary>Grams of melt for one millilitre of drink cooled from 20 °C: with the mean specific heat of its parts, and with the upper estimate.</summary>
    /// <param name="strength">Alcohol by volume before ice, 0 to 1.</param>
    /// <param name="toCelsius">The temperature reached, −30 to 20 °C.</param>
    public static Interval MeltPerMillilitre(double strength, double toCelsius)
    {
        var heat = HeatOf(strength);
        return new(Melt(heat.Low, toCelsius), Melt(heat.High, toCelsius));
    }

    /// <summary>Where a mixture of ethanol and water begins to freeze, in degrees Celsius, to about 1 °C: between the rounded points of a table up to 50 %.</summary>
    /// <param name="strength">Alcohol by volume, 0 to 1; above 0.5 the value for 0.5 is given, which is not cold enough.</param>
    public static double FreezingCelsius(double strength)
    {
        var steps = Math.Clamp(strength, 0, 0.5) * 10;
        var below = Math.Min((int)steps, FreezingByTenPercent.Length - 2);
        return FreezingByTenPercent[below] + (steps - below) * (FreezingByTenPercent[below + 1] - FreezingByTenPercent[below]);
    }

    // Joules that warm one millilitre by one degree.
    private static Interval HeatOf(double strength)
    {
        if (strength <= 0)
            return Interval.At(WaterHeat * EthanolWater.GramsPerMillilitre(default));
        var byVolume = Strength.FromPercent(strength * 100);
        var (share, grams) = (EthanolWater.MassShareOf(byVolume), EthanolWater.GramsPerMillilitre(byVolume));
        var mean = share * EthanolHeat + (1 - share) * WaterHeat;
        return new(grams * mean, grams * MixtureHeat);
    }

    // The melt is cooled below 0 °C with the drink.
    private static double Melt(double heat, double toCelsius) => heat * (StartCelsius - toCelsius) / (Fusion + WaterHeat * Math.Min(toCelsius, 0));

    private static double EquilibriumCelsiusOf(double strength, double heat)
    {
        // The colder the drink, the more melt, the weaker, the sooner it freezes: one crossing, halved down to.
        double cold = FreezingCelsius(strength), warm = 0;
        for (var i = 0; i < 50; i++)
        {
            var middle = (cold + warm) / 2;
            if (FreezingCelsius(strength / (1 + Melt(heat, middle))) < middle)
                warm = middle;
            else
                cold = middle;
        }

        return (cold + warm) / 2;
    }
}
