using Barshow.Engine.Measures;
using CsCheck;
using UnitsNet;
using UnitsNet.Units;

namespace Barshow.Engine.Tests.Measures;

/// <summary>The table of units against published figures and against an outside library.</summary>
public class UnitFactorTests
{
    // NIST Handbook 44, Appendix C: 231 cubic inches to the gallon, 128 fluid ounces to the gallon; the inch is 2.54 cm.
    private const decimal UsOunce = 231m * 2.54m * 2.54m * 2.54m / 128m;

    // UK Weights and Measures Act 1985, Schedule 1: the gallon is 4.54609 cubic decimetres; 160 fluid ounces to the gallon.
    private const decimal ImperialOunce = 4546.09m / 160m;

    public static TheoryData<string, Convention, decimal, string> Published { get; } = new()
    {
        // Derived from the definitions above.
        { "oz", Convention.UsExact, UsOunce, "NIST Handbook 44, Appendix C" },
        { "us-oz", Convention.Bar, UsOunce, "NIST Handbook 44, Appendix C" },
        { "tbsp", Convention.UsExact, UsOunce / 2m, "NIST Handbook 44, Appendix C" },
        { "cup", Convention.UsExact, UsOunce * 8m, "NIST Handbook 44, Appendix C" },
        { "pint", Convention.UsExact, UsOunce * 16m, "NIST Handbook 44, Appendix C" },
        { "quart", Convention.UsExact, UsOunce * 32m, "NIST Handbook 44, Appendix C" },
        { "gallon", Convention.UsExact, 231m * 16.387064m, "NIST Handbook 44, Appendix C" },
        { "gill", Convention.UsExact, UsOunce * 4m, "NIST Handbook 44, Appendix C" },
        { "oz", Convention.ImperialExact, ImperialOunce, "UK Weights and Measures Act 1985, Schedule 1" },
        { "imperial-oz", Convention.Bar, ImperialOunce, "UK Weights and Measures Act 1985, Schedule 1" },
        { "pint", Convention.ImperialExact, 4546.09m / 8m, "UK Weights and Measures Act 1985, Schedule 1" },
        { "gallon", Convention.ImperialExact, 4546.09m, "UK Weights and Measures Act 1985, Schedule 1" },
        { "gill", Convention.ImperialExact, 4546.09m / 32m, "UK Weights and Measures Act 1985, Schedule 1" },

        // Read in the source named.
        { "oz", Convention.Bar, 30m, "21 CFR 101.9(b)(5)(viii), labelling ounce; NSW Health conversion chart" },
        { "tsp", Convention.Bar, 5m, "21 CFR 101.9(b)(5)(viii), labelling teaspoon" },
        { "tbsp", Convention.Bar, 15m, "21 CFR 101.9(b)(5)(viii), labelling tablespoon" },
        { "cup", Convention.Bar, 240m, "21 CFR 101.9(b)(5)(viii), labelling cup" },
        { "metric-tsp", Convention.UsExact, 5m, "21 CFR 101.9(b)(5)(viii); NSW Health metric spoon table" },
        { "metric-tbsp", Convention.UsExact, 15m, "21 CFR 101.9(b)(5)(viii)" },
        { "au-tbsp", Convention.UsExact, 20m, "NSW Health metric cup and spoon table" },
        { "metric-cup", Convention.UsExact, 250m, "NSW Health metric cup and spoon table" },
        { "jigger", Convention.UsExact, UsOunce * 3m / 2m, "USDA SR26 (2013), NDB 14037: 1.5 fluid ounces" },
        { "jigger", Convention.Bar, 45m, "USDA SR26 (2013), NDB 14037, by the labelling ounce" },
        { "nip", Convention.Bar, 30m, "Australian Government standard drinks guide, spirits" },
        { "drop", Convention.Bar, 0.05m, "USP 32, chapter 1101, medicine dropper: 45 to 55 mg of water" },
    };

    [Theory]
    [MemberData(nameof(Published))]
    public void A_unit_holds_the_published_millilitres(string unit, Convention convention, decimal millilitres, string source)
    {
        Assert.NotEmpty(source);
        Assert.Equal(Rational.FromDecimal(millilitres), Unit.Named(unit).MillilitresUnder(convention));
    }

    [Theory]
    [MemberData(nameof(TeaspoonConventions))]
    public void Three_teaspoons_are_a_tablespoon_and_six_an_ounce(Convention convention)
    {
        // NIST Handbook 44, Appendix C.
        var teaspoon = Unit.Teaspoon.MillilitresUnder(convention)!.Value;

        Assert.Equal(Unit.Tablespoon.MillilitresUnder(convention), teaspoon * 3);
        Assert.Equal(Unit.Ounce.MillilitresUnder(convention), teaspoon * 6);
    }

    public static TheoryData<Convention> TeaspoonConventions { get; } = [.. Enum.GetValues<Convention>()];

    [Fact]
    public void A_pound_and_an_ounce_of_weight_hold_the_published_grams()
    {
        // International yard and pound agreement of 1959: 0.45359237 kg; 16 ounces to the pound.
        Assert.Equal(Rational.FromDecimal(453.59237m), Unit.Pound.Grams);
        Assert.Equal(Rational.FromDecimal(28.349523125m), Unit.WeightOunce.Grams);
        Assert.Null(Unit.WeightOunce.MillilitresUnder(Convention.Bar));
    }

    [Fact]
    public void Twenty_drops_are_a_millilitre() =>
        // UNC pharmacy laboratory page on the USP medicine dropper: 20 drops of water to the millilitre, give or take 2.
        Assert.Equal(1, Measure.Of(20, Unit.Drop).InMillilitres(Convention.Bar));

    [Fact]
    public void The_bar_convention_is_the_kitchen_card_of_NIST()
    {
        // NIST SP 430, Household Weights and Measures (2004): teaspoon 5 ml, tablespoon 15 ml, fluid ounce 30 ml, cup 240 ml.
        Assert.Equal([5, 15, 30, 240], new[] { Unit.Teaspoon, Unit.Tablespoon, Unit.Ounce, Unit.Cup }.Select(unit => unit.MillilitresUnder(Convention.Bar)!.Value));
    }

    [Fact]
    public void An_irish_quarter_gill_is_the_published_spirit_measure()
    {
        // HSE Ireland, standard drink page: 35.5 ml.
        var quarterGill = Measure.Of(new(1, 4), Unit.Gill).InMillilitres(Convention.ImperialExact)!.Value.ToDouble();

        Assert.Equal(35.5, quarterGill, 0.05);
    }

    [Fact]
    public void Canadian_guidance_counts_in_imperial_ounces()
    {
        // Canadian standard-drink calculator (Univ. of Victoria CISUR, 2022): 12 oz = 341 ml, 5 oz = 142 ml, 1.5 oz = 43 ml.
        Assert.Equal(341, Whole(12, 1));
        Assert.Equal(142, Whole(5, 1));
        Assert.Equal(43, Whole(3, 2));

        static long Whole(long upper, long lower) => Measure.Ounces(upper, lower).InMillilitres(Convention.ImperialExact)!.Value.RoundTo(1).Numerator;
    }

    public static TheoryData<string, Convention, VolumeUnit> Counterparts { get; } = new()
    {
        { "ml", Convention.Bar, VolumeUnit.Milliliter },
        { "cl", Convention.Bar, VolumeUnit.Centiliter },
        { "dl", Convention.Bar, VolumeUnit.Deciliter },
        { "l", Convention.Bar, VolumeUnit.Liter },
        { "oz", Convention.UsExact, VolumeUnit.UsOunce },
        { "tsp", Convention.UsExact, VolumeUnit.UsTeaspoon },
        { "tbsp", Convention.UsExact, VolumeUnit.UsTablespoon },
        { "cup", Convention.UsExact, VolumeUnit.UsCustomaryCup },
        { "cup", Convention.Bar, VolumeUnit.UsLegalCup },
        { "pint", Convention.UsExact, VolumeUnit.UsPint },
        { "quart", Convention.UsExact, VolumeUnit.UsQuart },
        { "gallon", Convention.UsExact, VolumeUnit.UsGallon },
        { "oz", Convention.ImperialExact, VolumeUnit.ImperialOunce },
        { "pint", Convention.ImperialExact, VolumeUnit.ImperialPint },
        { "gallon", Convention.ImperialExact, VolumeUnit.ImperialGallon },
        { "metric-tsp", Convention.Bar, VolumeUnit.MetricTeaspoon },
        { "metric-cup", Convention.Bar, VolumeUnit.MetricCup },
        { "au-tbsp", Convention.Bar, VolumeUnit.AuTablespoon },
    };

    [Theory]
    [MemberData(nameof(Counterparts))]
    public void Random_amounts_convert_as_UnitsNet_converts_them(string unit, Convention convention, VolumeUnit counterpart) =>
        MeasureGenerators.Amount.Sample(amount =>
        {
            var ours = Measure.Of(amount, Unit.Named(unit)).InMillilitres(convention)!.Value.ToDouble();
            var theirs = new Volume(amount.ToDouble(), counterpart).Milliliters;

            // UnitsNet computes in doubles and its ounces stray in the twelfth figure.
            Assert.Equal(theirs, ours, theirs * 5e-12);
        });

    [Theory]
    [MemberData(nameof(TeaspoonConventions))]
    public void Converting_there_and_back_gives_the_same_amount(Convention convention) =>
        Gen.Select(MeasureGenerators.Amount, Gen.OneOf([.. Unit.All.Where(unit => unit.MillilitresUnder(convention) is not null)])).Sample((amount, unit) =>
        {
            var millilitres = Measure.Of(amount, unit).InMillilitres(convention)!.Value;

            Assert.Equal(amount, millilitres / unit.MillilitresUnder(convention)!.Value);
        });
}
