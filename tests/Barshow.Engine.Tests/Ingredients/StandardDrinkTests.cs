using Barshow.Engine.Ingredients.Alcohol;

namespace Barshow.Engine.Tests.Ingredients;

public class StandardDrinkTests
{
    // 231 cubic inches of 16.387064 ml to the gallon, 128 ounces to the gallon (NIST Handbook 44, Appendix C).
    private const double UsOunce = 231 * 16.387064 / 128;

    // Definitions: NIAAA, What Is a Standard Drink (14 g); Australian Government Department of Health (10 g, by 0.789 g/ml); alcohol.org.nz (10 g); NHS (10 ml);
    // HSE Ireland (10 g); Health Canada (13.45 g and 17.05 ml).
    [Fact]
    [Trait("Evidence", "read")]
    public void One_drink_in_the_united_states_is_14_grams() => Assert.Equal(1, new StandardDrinks(14 / 0.789).UnitedStates, 0.001);

    [Fact]
    [Trait("Evidence", "read")]
    public void One_drink_in_australia_is_10_grams() => Assert.Equal(1, new StandardDrinks(10 / 0.789).Australia, 9);

    [Fact]
    [Trait("Evidence", "read")]
    public void One_drink_in_new_zealand_is_10_grams() => Assert.Equal(1, new StandardDrinks(10 / 0.789).NewZealand, 9);

    [Fact]
    [Trait("Evidence", "read")]
    public void One_unit_in_the_united_kingdom_is_10_millilitres() => Assert.Equal(1, new StandardDrinks(10).UnitedKingdom);

    [Fact]
    [Trait("Evidence", "read")]
    public void One_drink_in_ireland_is_10_grams() => Assert.Equal(1, new StandardDrinks(10 / 0.789).Ireland, 9);

    [Fact]
    [Trait("Evidence", "read")]
    public void One_drink_in_canada_is_13_45_grams() => Assert.Equal(1, new StandardDrinks(13.45 / 0.789).Canada, 0.0005);

    [Fact]
    [Trait("Evidence", "read")]
    public void One_drink_in_canada_is_17_05_millilitres() => Assert.Equal(1, new StandardDrinks(17.05).Canada);

    // University of Victoria, CISUR (2022): millilitres times percent, by 17.05, by 100.
    [Fact]
    [Trait("Evidence", "read")]
    public void Drinks_in_canada_follow_the_published_formula() => Assert.Equal(750 * 13 / 17.05 / 100, Of(750, 13).Canada, 9);

    // NIAAA, What Is a Standard Drink (excerpted from NIH Publication 07-3769).
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(750, 40, 17, 0)]
    [InlineData(1.75 * 1000, 40, 39, 0)]
    [InlineData(16 * UsOunce, 40, 11, 0)]
    [InlineData(1.5 * UsOunce, 40, 1, 0)]
    [InlineData(12 * UsOunce, 5, 1, 0)]
    [InlineData(5 * UsOunce, 12, 1, 0)]
    public void United_states_worked_examples_come_out_as_published(double millilitres, double percent, double expected, int decimals) =>
        Assert.Equal(expected, Math.Round(Of(millilitres, percent).UnitedStates, decimals, MidpointRounding.AwayFromZero));

    // Australian Government Department of Health, standard drinks guide and formula page.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(700, 40, 22, 0)]
    [InlineData(375, 5, 1.5, 1)]
    [InlineData(30, 40, 1, 0)]
    [InlineData(750, 13, 7.7, 1)]
    [InlineData(150, 13, 1.5, 1)]
    [InlineData(750, 12, 7.1, 1)]
    [InlineData(60, 17.5, 0.8, 1)]
    [InlineData(285, 4.8, 1.1, 1)]
    public void Australian_worked_examples_come_out_as_published(double millilitres, double percent, double expected, int decimals) =>
        Assert.Equal(expected, Math.Round(Of(millilitres, percent).Australia, decimals, MidpointRounding.AwayFromZero));

    // New Zealand wine education page using the national formula.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(750, 14, 8.3, 1)]
    public void New_zealand_worked_examples_come_out_as_published(double millilitres, double percent, double expected, int decimals) =>
        Assert.Equal(expected, Math.Round(Of(millilitres, percent).NewZealand, decimals, MidpointRounding.AwayFromZero));

    // NHS alcohol units page (UK government web archive, 2011); UK alcohol charity units page.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(568, 5.2, 2.95, 2)]
    [InlineData(175, 13, 2.3, 1)]
    [InlineData(568, 4, 2.3, 1)]
    [InlineData(25, 40, 1, 0)]
    public void United_kingdom_worked_examples_come_out_as_published(double millilitres, double percent, double expected, int decimals) =>
        Assert.Equal(expected, Math.Round(Of(millilitres, percent).UnitedKingdom, decimals, MidpointRounding.AwayFromZero));

    // HSE Ireland standard drink pages; drugs.ie table.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(35.5, 40, 1.1, 1)]
    [InlineData(750, 40, 24, 0)]
    public void Irish_worked_examples_come_out_as_published(double millilitres, double percent, double expected, int decimals) =>
        Assert.Equal(expected, Math.Round(Of(millilitres, percent).Ireland, decimals, MidpointRounding.AwayFromZero));

    // Health Canada, Low-risk alcohol drinking guidelines.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(43, 40, 1, 0)]
    public void Canadian_worked_examples_come_out_as_published(double millilitres, double percent, double expected, int decimals) =>
        Assert.Equal(expected, Math.Round(Of(millilitres, percent).Canada, decimals, MidpointRounding.AwayFromZero));

    private static StandardDrinks Of(double millilitres, double percent) => new(millilitres * percent / 100);
}
