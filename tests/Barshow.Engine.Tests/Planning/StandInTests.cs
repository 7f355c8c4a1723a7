using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Planning.StandIns;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

public sealed class StandInTests
{
    private static Ingredient Sweet(string name, double sugar) => new()
    {
        Slug = Names.Slug.Of(name),
        Name = name,
        Kind = IngredientKind.Syrup,
        Composition = new() { SugarGramsPer100Millilitres = sugar, AcidGramsPer100Millilitres = 0 },
    };

    private static Ingredient Sour(string name, double sugar, double acid) => new()
    {
        Slug = Names.Slug.Of(name),
        Name = name,
        Kind = IngredientKind.Juice,
        Composition = new() { SugarGramsPer100Millilitres = sugar, AcidGramsPer100Millilitres = acid },
    };

    // Grams of sugar in 100 ml of syrup by weight, from the density of sucrose solutions: 1:1 61.5, 2:1 88.6.
    private static Bar Bar { get; } = Of(Sweet("One to one", 61.5), Sweet("Rich", 88.6), Sour("Lime juice", 1.7, 4.6), Sour("Orange juice", 8.8, 0.9), Sour("Soft lemon", 30, 2.3));

    private static Episode Lineup { get; } = Episode(
        Drink("Sour", ("60 ml", "white-rum"), ("30 ml", "lime-juice"), ("30 ml", "one-to-one")),
        Drink("Long", ("60 ml", "white-rum"), ("90 ml", "soda-water")));

    private static string Lines(RebalancedDrink drink) => string.Join(", ", drink.After.Lines.Select(line => $"{line.Planned} {line.Ingredient}"));

    [Fact]
    public void A_richer_syrup_is_poured_less_so_that_the_drink_stays_as_sweet()
    {
        var drink = StandInPlanner.Swap(Lineup, Bar, S("one-to-one"), S("rich")).Drinks.Single();

        // 30 ml x 61.5 / 88.6 = 20.8 ml, poured as 20.
        Assert.Equal("60 ml white-rum, 30 ml lime-juice, 20 ml rich", Lines(drink));
        Assert.InRange(drink.BendPercent, 3, 5);
        Assert.Equal("Rich stands in for One to one", drink.After.Lines[2].Amounts[^1].Reason);
    }

    [Fact]
    public void A_sweeter_juice_takes_sugar_out_of_the_syrup()
    {
        var drink = StandInPlanner.Swap(Lineup, Bar, S("lime-juice"), S("soft-lemon")).Drinks.Single();

        // As sour: 30 x 4.6 / 2.3 = 60 ml, which brings 18 g of sugar where lime brought 0.5: 28.4 ml of syrup less.
        Assert.Equal("60 ml white-rum, 60 ml soft-lemon, 5/2 ml one-to-one", Lines(drink));
    }

    [Fact]
    public void Only_the_drinks_that_use_it_are_touched() =>
        Assert.Equal(["Sour"], StandInPlanner.Swap(Lineup, Bar, S("lime-juice"), S("soft-lemon")).Drinks.Select(drink => drink.Name));

    [Fact]
    public void What_is_not_known_of_an_ingredient_is_said()
    {
        var swap = StandInPlanner.Swap(Lineup, Of(Sweet("One to one", 61.5), Sweet("Odd", 50) with { Composition = new() }), S("one-to-one"), S("odd"));

        Assert.Equal("The sugar or the acid of Odd is not known, so it counts as none where the drinks are balanced again.", swap.Findings.Single().Message);
    }
}
