using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Ice;
using Barshow.Engine.Specs;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

/// <summary>Ice and water, leftovers, and what another garnish would change.</summary>
public sealed class StockTests
{
    [Fact]
    public void Ice_is_counted_for_the_tin_and_the_glass_with_half_as_much_again_for_melt()
    {
        var bar = Of() with { Kit = new BarKit { Glasses = [new() { Slug = S("rocks"), Name = "Rocks", BrimfulMillilitres = 300, UsualWashLine = 0.8 }] } };
        var episode = Episode(Sour with { Serve = new() { Glass = S("rocks"), Ice = IceKind.Large } }) with { Takes = 2 };

        var ice = IcePlanner.Plan(episode, bar, DemandFor.Shoot);

        // A shake 225 g; one large piece of 50 mm, 114.6 g; two takes; half as much again.
        Assert.Equal([(IceKind.Cubed, 675), (IceKind.Large, 344)], ice.Kinds.Select(kind => (kind.Kind, (int)Math.Round(kind.Grams))));
        Assert.Equal(1.019, ice.Grams / 1000, 3);
    }

    [Fact]
    public void A_drink_served_up_and_built_without_ice_takes_none() =>
        Assert.Empty(IcePlanner.Plan(Episode(Sour with { Method = new(MethodKind.Built) }), Of(), DemandFor.Viewer).Kinds);

    // 20 ml of a syrup of 200 ml of water to 320 ml: 12.5 ml.
    [Fact]
    public void Water_is_what_drinks_and_preps_take() => Assert.Equal(12.5, IcePlanner.Plan(Episode(Sour), Of(), DemandFor.Viewer).WaterMillilitres, 9);

    [Fact]
    public void What_is_over_names_the_drinks_that_could_use_it_up()
    {
        Spec[] library = [Sour, Drink("Mint fizz", ("6 leaf", "mint"), ("60 ml", "white-rum")), Drink("Old way", ("60 ml", "white-rum"), ("2 dash", "aromatic-bitters")), Drink("Rum and soda", ("60 ml", "white-rum"), ("90 ml", "soda-water"))];
        var episode = Episode(Drink("Long rum", ("45 ml", "white-rum"), ("120 ml", "soda-water")));

        var uses = LeftoverUse.Of(BasketPlanner.Plan(episode, Of(), DemandFor.Shoot), library, [S("long-rum")], Of());

        Assert.Equal("White rum 655 ml: Rum and soda, Mint fizz (Mint), Old way (Aromatic bitters)",
            string.Join("; ", uses.Where(use => use.Item.Name == "White rum").Select(use => $"{use.Item.Name} {use.Item.Left}: {string.Join(", ", use.Drinks.Select(drink => drink.Name + (drink.Missing.Count > 0 ? $" ({string.Join(", ", drink.Missing)})" : "")))}")));
    }

    [Fact]
    public void A_spent_shell_saves_the_fruit_that_a_wheel_takes()
    {
        var wheel = new Garnish("lime wheel") { Ingredient = S("lime"), Measure = M("1 wheel"), Instead = [new Garnish("spent lime shell") { Ingredient = S("lime"), Measure = M("1 piece"), FromLeftovers = true }] };
        var episode = Episode(Sour with { Lines = [Line("60 ml", "white-rum"), Line("28 ml", "lime-juice")], Garnish = wheel }) with { Takes = 2 };

        var choice = GarnishChoice.Of(episode, Of(), BasketPlanner.Plan(episode, Of(), DemandFor.Shoot)).Single();

        Assert.Equal("Lime: 2 in place of 3", Assert.Single(choice.Changes));
        Assert.Equal(0.5m, choice.Saves);
    }
}
