using System.Globalization;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Ingredients.Alcohol;
using CsCheck;
using UnitsNet;

namespace Barshow.Engine.Tests.Ingredients;

public class EthanolAndWaterTests
{
    // OIML R 22; Council Directive 76/766/EEC, Annex: coefficient A1, and pure ethanol as published, rounded.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(0, 998.20123, 0.0000001)]
    [InlineData(1, 789.24, 0.005)]
    public void Water_and_pure_ethanol_weigh_what_the_directive_says(double massShare, double kilograms, double tolerance) =>
        Assert.Equal(kilograms, EthanolWater.DensityAt(massShare, Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter, tolerance);

    // Osborne, McKelvy and Bearce, NBS Bulletin 9 (1913), 327: densities by mass percent, reprinted in a handbook. Its millilitre is the one of 1901 and its
    // thermometers are of its time; the table and R 22 part by up to 0.0001 g/ml.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(45, 10, 0.93226)]
    [InlineData(45, 20, 0.92472)]
    [InlineData(45, 40, 0.90884)]
    [InlineData(50, 10, 0.92162)]
    [InlineData(50, 20, 0.91384)]
    [InlineData(50, 40, 0.89750)]
    [InlineData(60, 10, 0.89927)]
    [InlineData(60, 20, 0.89113)]
    [InlineData(60, 40, 0.87417)]
    [InlineData(70, 10, 0.87602)]
    [InlineData(70, 20, 0.86766)]
    [InlineData(70, 40, 0.85025)]
    [InlineData(80, 10, 0.85197)]
    [InlineData(80, 20, 0.84344)]
    [InlineData(80, 40, 0.82578)]
    public void Densities_by_mass_agree_with_the_bureau_of_standards_table_of_1913(double massPercent, double celsius, double gramsPerMillilitre) =>
        Assert.Equal(gramsPerMillilitre, EthanolWater.DensityAt(massPercent / 100, Temperature.FromDegreesCelsius(celsius)).GramsPerMilliliter, 0.0001);

    // USP 29, alcoholometric table at 15.56 °C, from NBS Bulletin 9, 424.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(5, 4.00)]
    [InlineData(10, 8.05)]
    [InlineData(15, 12.14)]
    [InlineData(20, 16.27)]
    [InlineData(25, 20.44)]
    [InlineData(30, 24.67)]
    public void Percent_by_mass_agrees_with_the_pharmacopoeias_table_at_60_degrees_fahrenheit(double percentByVolume, double percentByMass) =>
        Assert.Equal(percentByMass, EthanolWater.MassShareOf(percentByVolume / 100, (60d - 32) * 5 / 9) * 100, 0.01);

    // US Gauging Manual, 27 CFR 30.66 (before: 186.66), Table 6, worked example.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(191, 5.59)]
    [InlineData(188, 7.36)]
    [InlineData(112, 47.75)]
    [InlineData(100, 53.73)]
    public void Parts_of_water_agree_with_the_gauging_manual(double proof, double parts) =>
        Assert.Equal(parts, Proofing.WaterPartsIn100(Strength.FromPercent(proof / 2)), 0.01);

    // 27 CFR 30.66, worked example: 100 gallons of 112 proof down to 100 proof.
    [Fact]
    [Trait("Evidence", "read")]
    public void Water_to_add_by_volume_agrees_with_the_gauging_manual() =>
        Assert.Equal(12.42, Proofing.WaterToAdd(Volume.FromUsGallons(100), Strength.FromPercent(56), Strength.FromPercent(50)).UsGallons, 0.02);

    // 27 CFR 30.66, worked example: 100 gallons of 191 proof down to 188 proof; the manual cuts the quotient of the strengths to 1.01, so it is cut here.
    [Fact]
    [Trait("Evidence", "read")]
    public void Water_to_add_agrees_with_the_manuals_rounded_example() =>
        Assert.Equal(1.84, Math.Floor(191d / 188 * 100) / 100 * Proofing.WaterPartsIn100(Strength.FromPercent(94)) - Proofing.WaterPartsIn100(Strength.FromPercent(95.5)), 0.01);

    // 27 CFR 30.64, worked example: 1000 lb of 200 proof down to 190 proof, by table figures of five digits, which leave 0.04 lb in doubt.
    [Fact]
    [Trait("Evidence", "read")]
    public void Water_to_add_by_weight_agrees_with_the_gauging_manual() =>
        Assert.Equal(82.03, Proofing.WaterToAdd(Mass.FromPounds(1000), Strength.FromPercent(100), Strength.FromPercent(95)).Pounds, 0.04);

    // Computed elsewhere from the same coefficients: these rows guard against a slip in ours.
    [Theory]
    [InlineData(0, 998.20, 0.000)]
    [InlineData(1, 996.70, 0.792)]
    [InlineData(2, 995.23, 1.586)]
    [InlineData(4, 992.41, 3.181)]
    [InlineData(5, 991.06, 3.982)]
    [InlineData(8, 987.16, 6.396)]
    [InlineData(10, 984.71, 8.015)]
    [InlineData(11, 983.52, 8.827)]
    [InlineData(12, 982.35, 9.641)]
    [InlineData(14, 980.08, 11.274)]
    [InlineData(15, 978.97, 12.093)]
    [InlineData(16, 977.87, 12.914)]
    [InlineData(17, 976.79, 13.736)]
    [InlineData(18, 975.71, 14.560)]
    [InlineData(20, 973.56, 16.214)]
    [InlineData(22, 971.40, 17.874)]
    [InlineData(23, 970.31, 18.708)]
    [InlineData(24, 969.21, 19.543)]
    [InlineData(25, 968.10, 20.381)]
    [InlineData(28, 964.64, 22.909)]
    [InlineData(30, 962.21, 24.607)]
    [InlineData(33, 958.34, 27.177)]
    [InlineData(35, 955.59, 28.907)]
    [InlineData(36, 954.15, 29.778)]
    [InlineData(37.5, 951.94, 31.091)]
    [InlineData(38, 951.18, 31.530)]
    [InlineData(40, 948.05, 33.300)]
    [InlineData(41, 946.42, 34.191)]
    [InlineData(42, 944.76, 35.086)]
    [InlineData(43, 943.06, 35.986)]
    [InlineData(44, 941.32, 36.891)]
    [InlineData(45, 939.54, 37.801)]
    [InlineData(46, 937.73, 38.716)]
    [InlineData(47, 935.88, 39.636)]
    [InlineData(48, 934.00, 40.560)]
    [InlineData(50, 930.14, 42.426)]
    [InlineData(52, 926.16, 44.313)]
    [InlineData(55, 919.96, 47.185)]
    [InlineData(57, 915.70, 49.128)]
    [InlineData(57.15, 915.38, 49.275)]
    [InlineData(58, 913.53, 50.109)]
    [InlineData(60, 909.11, 52.088)]
    [InlineData(63, 902.31, 55.105)]
    [InlineData(65, 897.65, 57.150)]
    [InlineData(68, 890.48, 60.269)]
    [InlineData(70, 885.56, 62.386)]
    [InlineData(75, 872.79, 67.820)]
    [InlineData(75.5, 871.48, 68.375)]
    [InlineData(80, 859.27, 73.480)]
    [InlineData(85, 844.85, 79.405)]
    [InlineData(90, 829.18, 85.665)]
    [InlineData(94, 815.18, 91.008)]
    [InlineData(95, 811.38, 92.408)]
    [InlineData(96, 807.42, 93.838)]
    [InlineData(98, 798.90, 96.815)]
    [InlineData(100, 789.24, 100.000)]
    public void Density_and_mass_of_a_strength_stay_as_they_were_computed(double percent, double kilograms, double percentByMass)
    {
        var strength = Strength.FromPercent(percent);

        Assert.Equal(kilograms, EthanolWater.GramsPerMillilitre(strength) * 1000, 0.02);
        Assert.Equal(percentByMass, EthanolWater.MassShareOf(strength) * 100, 0.003);
    }

    [Theory]
    [InlineData(-10, 966.41)]
    [InlineData(-5, 963.56)]
    [InlineData(0, 960.63)]
    [InlineData(5, 957.62)]
    [InlineData(10, 954.52)]
    [InlineData(15, 951.33)]
    [InlineData(20, 948.05)]
    [InlineData(25, 944.67)]
    public void A_spirit_of_40_percent_shrinks_in_the_cold_as_it_was_computed(double celsius, double kilograms) =>
        Assert.Equal(kilograms, EthanolWater.DensityAt(EthanolWater.MassShareOf(Strength.FromPercent(40)), Temperature.FromDegreesCelsius(celsius)).KilogramsPerCubicMeter, 0.05);

    [Theory]
    [InlineData("50 mL at 100 % + 50 mL at 0 %", 96.46, 51.834)]
    [InlineData("100 mL at 40 % + 50 mL at 0 %", 149.78, 26.705)]
    [InlineData("100 mL at 40 % + 100 mL at 0 %", 199.91, 20.009)]
    [InlineData("60 mL at 40 % + 30 mL at 0 %", 89.87, 26.705)]
    [InlineData("60 mL at 50 % + 30 mL at 16 %", 89.63, 38.824)]
    [InlineData("45 mL at 40 % + 15 mL at 24 % + 20 mL at 0 %", 79.90, 27.034)]
    [InlineData("500 mL at 96 % + 500 mL at 0 %", 969.61, 49.505)]
    [InlineData("60 mL at 57 % + 40 mL at 0 %", 99.20, 34.475)]
    public void Poured_together_alcohol_and_water_shrink_as_it_was_computed(string poured, double millilitres, double percent)
    {
        var parts = poured.Split(" + ").Select(part => part.Split([" mL at ", " %"], StringSplitOptions.None))
            .Select(part => (Volume.FromMilliliters(Number(part[0])), Strength.FromPercent(Number(part[1])))).ToArray();

        var (volume, strength) = EthanolWater.Mixed(parts);

        Assert.Equal(millilitres, volume.Milliliters, 0.05);
        Assert.Equal(percent, strength.Percent, 0.01);

        static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Strength_by_volume_and_by_mass_turn_into_one_another() =>
        Gen.Double[0, 100].Sample(percent =>
            Assert.Equal(percent, EthanolWater.StrengthOf(EthanolWater.MassShareOf(Strength.FromPercent(percent))).Percent, 1e-6));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.0001)]
    [InlineData(1.0001)]
    public void A_share_by_mass_outside_0_to_1_is_refused(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EthanolWater.StrengthOf(share));

    [Theory]
    [InlineData(-20.01)]
    [InlineData(40.01)]
    public void A_temperature_outside_the_formula_is_refused(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EthanolWater.DensityAt(0.4, Temperature.FromDegreesCelsius(celsius)));

    [Fact]
    public void Proof_is_twice_the_strength_by_volume() => Assert.Equal(80, Strength.FromPercent(40).UsProof());

    [Fact]
    public void Water_never_makes_a_spirit_stronger() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Proofing.WaterToAdd(Volume.FromLiters(1), Strength.FromPercent(40), Strength.FromPercent(41)));
}
