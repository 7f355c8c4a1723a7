using UnitsNet;

namespace Barshow.Engine.Ingredients.Solutions;

/// <summary>A syrup by its sugar, at 20 °C. All sugars are reckoned as sucrose.</summary>
public readonly record struct SugarSolution
{
    private SugarSolution(double massShare) => MassShare = massShare;

    /// <summary>Loose granulated sugar, grams to the millilitre: 200 g to the US cup of 236.588 ml (USDA National Nutrient Database SR 26, record 19335).</summary>
    public const double GranulatedGramsPerMillilitre = 200 / 236.5882365;

    /// <summary>Honey by solids, °Bx: 100 less 17.10 g of water in 100 g (USDA SR 26, record 19296).</summary>
    public const double HoneyBrix = 82.9;

    /// <summary>One part of sugar and one of water by weight.</summary>
    public static SugarSolution OneToOneByWeight { get; } = ByWeight(1);

    /// <summary>Two parts of sugar and one of water by weight: rich syrup.</summary>
    public static SugarSolution TwoToOneByWeight { get; } = ByWeight(2);

    /// <summary>One part of loose sugar and one of water by volume: weaker than by weight, as loose sugar holds air.</summary>
    public static SugarSolution OneToOneByVolume { get; } = ByVolume(1);

    /// <summary>Two parts of loose sugar and one of water by volume.</summary>
    public static SugarSolution TwoToOneByVolume { get; } = ByVolume(2);

    /// <summary>Grams of sugar in one gram of syrup, 0 to 0.85.</summary>
    public double MassShare { get; }

    /// <summary>Degrees Brix: grams of sugar in 100 g, not in 100 ml.</summary>
    public double Brix => MassShare * 100;

    /// <summary>Grams in one millilitre.</summary>
    public double GramsPerMillilitre => Sucrose.KilogramsPerCubicMetre(MassShare, 20) / 1000;

    /// <summary>Grams of sugar in 100 ml.</summary>
    public double SugarGramsPer100Millilitres => MassShare * GramsPerMillilitre * 100;

    /// <summary>A syrup of so many degrees Brix.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="brix"/> is not a number from 0 to 85.</exception>
    public static SugarSolution FromBrix(double brix) =>
        brix is >= 0 and <= 85 ? new(brix / 100) : throw new ArgumentOutOfRangeException(nameof(brix), brix, "Syrups are reckoned from 0 to 85 °Bx.");

    /// <summary>So many parts of sugar to one part of water, by weight.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sugarToWater"/> is not a number from 0 to 5.6.</exception>
    public static SugarSolution ByWeight(double sugarToWater) =>
        sugarToWater is >= 0 and <= 5.6
            ? FromBrix(100 * sugarToWater / (1 + sugarToWater))
            : throw new ArgumentOutOfRangeException(nameof(sugarToWater), sugarToWater, "A syrup has 0 to 5.6 parts of sugar to one of water.");

    /// <summary>So many parts of loose granulated sugar to one part of water, by volume.</summary>
    /// <exception cref="ArgumentOutOfRangeException">More than 85 °Bx would come of it.</exception>
    public static SugarSolution ByVolume(double sugarToWater) => ByWeight(sugarToWater * GranulatedGramsPerMillilitre / (Water.KilogramsPerCubicMetre(20) / 1000));

    /// <summary>So many parts of honey to one part of water, by weight; its solids taken as sucrose, which is right within about 1 %.</summary>
    public static SugarSolution HoneyByWeight(double honeyToWater) => FromBrix(HoneyBrix * honeyToWater / (1 + honeyToWater));

    /// <summary>The volume that sugar and water give together.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is more sugar than 85 °Bx.</exception>
    public static Volume YieldOf(Mass sugar, Mass water)
    {
        var grams = sugar.Grams + water.Grams;
        return grams <= 0 ? Volume.Zero : Volume.FromMilliliters(grams / FromBrix(100 * sugar.Grams / grams).GramsPerMillilitre);
    }
}
