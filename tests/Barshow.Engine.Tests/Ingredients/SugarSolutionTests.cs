using Barshow.Engine.Ingredients.Solutions;
using CsCheck;
using UnitsNet;

namespace Barshow.Engine.Tests.Ingredients;

public class SugarSolutionTests
{
    private const double UsCup = 231 * 16.387064 / 16;
    private static readonly Temperature Room = Temperature.FromDegreesCelsius(20);

    // Brix and pounds solids table, University of Florida CREC (C. S. Chen, 1992), from NBS Circular C440 (1942): a US gallon in air at 20 °C.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(0, 8.322)]
    [InlineData(1, 8.354)]
    [InlineData(2, 8.387)]
    [InlineData(3, 8.419)]
    [InlineData(4, 8.452)]
    [InlineData(5, 8.486)]
    public void A_gallon_weighs_what_the_bureau_of_standards_table_says(double brix, double pounds) => Assert.Equal(pounds, PoundsInAir(brix), 0.002);

    // Cornell Maple Program calculators: a US gallon of pure sucrose solution.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(66.0, 11.027)]
    [InlineData(66.5, 11.053)]
    [InlineData(66.9, 11.073)]
    public void A_gallon_of_strong_syrup_weighs_what_the_maple_program_says(double brix, double pounds) => Assert.Equal(pounds, PoundsInAir(brix), 0.005);

    // The cubic that brewers use, fitted to NBS Circular C440 up to about 40 °Bx: degrees Brix from specific gravity 20/20.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(30)]
    [InlineData(40)]
    public void Specific_gravity_agrees_with_the_brewers_cubic(double brix)
    {
        var gravity = Sucrose.DensityAt(brix / 100, Room) / Sucrose.DensityAt(0, Room);

        var byCubic = 182.4601 * Math.Pow(gravity, 3) - 775.6821 * Math.Pow(gravity, 2) + 1262.7794 * gravity - 669.5622;

        Assert.Equal(brix, byCubic, 0.05);
    }

    // USP 32 NF 27, Syrup: 850 g of sucrose made up to 1000 ml has a specific gravity of 1.30 or more.
    [Fact]
    [Trait("Evidence", "read")]
    public void Official_syrup_has_the_gravity_of_its_monograph()
    {
        var (sugar, water) = (Mass.FromGrams(850), Mass.FromGrams(464.5));

        Assert.Equal(1000, SugarSolution.YieldOf(sugar, water).Milliliters, 0.5);
        Assert.True((sugar + water).Grams / 1000 / Sucrose.DensityAt(0, Room).GramsPerMilliliter >= 1.30);
    }

    // Mohos, Confectionery and Chocolate Engineering (2010), tables A2.2 and A2.3.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(0, 64.18)]
    [InlineData(10, 65.58)]
    [InlineData(20, 67.09)]
    [InlineData(30, 68.7)]
    [InlineData(40, 70.42)]
    public void Water_holds_as_much_sucrose_as_the_handbook_says(double celsius, double percent) =>
        Assert.Equal(percent, Sucrose.SaturationAt(Temperature.FromDegreesCelsius(celsius)) * 100, 6);

    // USDA National Nutrient Database SR 26, record 19335: a US teaspoon of granulated sugar, rounded to 0.1 g.
    [Fact]
    [Trait("Evidence", "read")]
    public void A_teaspoon_of_loose_sugar_weighs_what_the_nutrient_database_says() =>
        Assert.Equal(4.2, SugarSolution.GranulatedGramsPerMillilitre * UsCup / 48, 0.05);

    // USDA SR 26, record 19353: maple syrup holds 32.39 g of water in 100 g, and a US cup of it weighs 315 g.
    [Fact]
    [Trait("Evidence", "read")]
    public void Maple_syrup_weighs_what_its_water_says() => Assert.Equal(315, SugarSolution.FromBrix(100 - 32.39).GramsPerMillilitre * UsCup, 1.2);

    // USDA SR 26, record 19296: honey holds 17.10 g of water in 100 g.
    [Fact]
    [Trait("Evidence", "read")]
    public void Honey_holds_the_solids_its_water_leaves() => Assert.Equal(100 - 17.10, SugarSolution.HoneyBrix, 6);

    [Theory]
    [InlineData(0, 998.20)]
    [InlineData(5, 1017.81)]
    [InlineData(10, 1038.12)]
    [InlineData(15, 1059.16)]
    [InlineData(20, 1080.98)]
    [InlineData(25, 1103.59)]
    [InlineData(30, 1127.03)]
    [InlineData(35, 1151.33)]
    [InlineData(40, 1176.52)]
    [InlineData(45, 1202.62)]
    [InlineData(50, 1229.65)]
    [InlineData(55, 1257.65)]
    [InlineData(60, 1286.61)]
    [InlineData(65, 1316.56)]
    [InlineData(70, 1347.48)]
    [InlineData(75, 1379.37)]
    [InlineData(66, 1322.66)]
    [InlineData(66.67, 1326.77)]
    [InlineData(67, 1328.81)]
    [InlineData(67.5, 1331.89)]
    [InlineData(68.9, 1340.59)]
    public void Density_stays_as_it_was_computed(double brix, double kilograms) =>
        Assert.Equal(kilograms, Sucrose.DensityAt(brix / 100, Room).KilogramsPerCubicMeter, 0.02);

    [Theory]
    [InlineData(1000, 1000, 1626.5)]
    [InlineData(1500, 1000, 1943.1)]
    [InlineData(2000, 1000, 2261.2)]
    [InlineData(200, 236.2, 361.3)]
    [InlineData(400, 236.2, 488.0)]
    public void Sugar_and_water_yield_as_much_as_was_computed(double sugar, double water, double millilitres) =>
        Assert.Equal(millilitres, SugarSolution.YieldOf(Mass.FromGrams(sugar), Mass.FromGrams(water)).Milliliters, 0.1);

    [Fact]
    public void One_to_one_by_weight_is_sweeter_than_by_volume()
    {
        Assert.Equal(61.48, SugarSolution.OneToOneByWeight.SugarGramsPer100Millilitres, 0.01);
        Assert.Equal(55.35, SugarSolution.OneToOneByVolume.SugarGramsPer100Millilitres, 0.05);
        Assert.Equal(88.45, SugarSolution.TwoToOneByWeight.SugarGramsPer100Millilitres, 0.01);
        Assert.Equal(81.97, SugarSolution.TwoToOneByVolume.SugarGramsPer100Millilitres, 0.05);
    }

    [Fact]
    public void Equal_sweetness_is_said_in_one_sentence()
    {
        var sweetness = new EqualSweetness(SugarSolution.TwoToOneByWeight.SugarGramsPer100Millilitres / 10);

        Assert.Equal("10 ml of rich syrup sweeten like 14.4 ml of 1:1 syrup, 10 ml of 2:1 syrup or 8.8 g of caster sugar.", sweetness.Sentence(10, "rich syrup"));
    }

    [Fact]
    public void Rich_syrup_is_more_than_a_fridge_holds_in_solution() =>
        Assert.True(SugarSolution.TwoToOneByWeight.MassShare > Sucrose.SaturationAt(Temperature.FromDegreesCelsius(5)));

    [Fact]
    public void Yield_grows_with_the_batch() =>
        Gen.Select(Gen.Double[1, 3000], Gen.Double[1, 3000], Gen.Double[0.1, 20]).Where(each => each.Item1 / (each.Item1 + each.Item2) < 0.84).Sample((sugar, water, times) =>
            Assert.Equal(
                SugarSolution.YieldOf(Mass.FromGrams(sugar), Mass.FromGrams(water)).Milliliters * times,
                SugarSolution.YieldOf(Mass.FromGrams(sugar * times), Mass.FromGrams(water * times)).Milliliters,
                1e-6 * (sugar + water) * times));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.1)]
    [InlineData(85.1)]
    public void Degrees_outside_the_formula_are_refused(double brix) => Assert.Throws<ArgumentOutOfRangeException>(() => SugarSolution.FromBrix(brix));

    // Weighing in air of 0.0012 g/ml against brass of 8.4, as the bureau's tables were made.
    private static double PoundsInAir(double brix) =>
        231 * 16.387064 * (Sucrose.DensityAt(brix / 100, Room).GramsPerMilliliter - 0.0012) / (1 - 0.0012 / 8.4) / 453.59237;
}
