using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Pool;
using CsCheck;
using static Barshow.Engine.Tests.Planning.PlanningBar;
using Spec = Barshow.Engine.Specs.Spec;

namespace Barshow.Engine.Tests.Planning;

public sealed class BasketLadderTests
{
    private static readonly Spec Long = Drink("Long rum", ("45 ml", "white-rum"), ("120 ml", "soda-water"));
    private static readonly Spec Minty = Drink("Mint sour", ("45 ml", "white-rum"), ("30 ml", "lime-juice"), ("6 leaf", "mint"));
    private static readonly Spec Bittered = Drink("Bitters and soda", ("6 dash", "aromatic-bitters"), ("150 ml", "soda-water"));

    private static string Ladder(params Spec[] drinks)
    {
        var basket = BasketPlanner.Plan(Episode(drinks), Of(), DemandFor.Viewer);
        return string.Join("; ", BasketLadder.Of(basket, [.. drinks.Select(drink => drink.Slug)]).Steps
            .Select(step => $"{step.Things}: {string.Join(" + ", step.Buy.Select(item => item.Name))} → {string.Join(", ", step.Drinks)}"));
    }

    [Fact]
    public void Each_step_buys_what_makes_most_drinks() => Assert.Equal(
        "2: Soda water + Aromatic bitters → bitters-and-soda; 3: White rum + Lime + Soda water → rum-sour, long-rum; 4: White rum + Lime + Soda water + Mint → rum-sour, long-rum, mint-sour; "
        + "5: White rum + Lime + Soda water + Mint + Aromatic bitters → rum-sour, long-rum, mint-sour, bitters-and-soda",
        Ladder(Sour, Long, Minty, Bittered));

    [Fact]
    public void Of_two_choices_the_cheaper_is_bought() => Assert.StartsWith("2: Aromatic bitters + Soda water → bitters-and-soda;", Ladder(Minty, Bittered), StringComparison.Ordinal);

    [Fact]
    public void A_garnish_keeps_nobody_from_making_a_drink() =>
        Assert.Equal("2: White rum + Lime → rum-sour", Ladder(Sour with { Garnish = new("mint sprig") }));

    [Fact]
    public void An_empty_lineup_has_no_steps() => Assert.Equal("", Ladder());

    [Fact]
    public void Looking_at_every_set_and_the_solver_agree() =>
        Gen.Int[0, 63].Array[1, 7].Sample(masks =>
        {
            (string Measure, string Slug)[] all = [("45 ml", "white-rum"), ("30 ml", "lime-juice"), ("6 leaf", "mint"), ("120 ml", "soda-water"), ("2 dash", "aromatic-bitters"), ("10 ml", "agave")];
            Spec[] drinks = [.. masks.Select((mask, number) => Drink($"Drink {number}", [.. all.Where((_, index) => (mask >> index & 1) == 1)]))];
            Slug[] slugs = [.. drinks.Select(drink => drink.Slug)];
            var basket = BasketPlanner.Plan(Episode(drinks), Of(), DemandFor.Viewer);
            var needs = slugs.Select(slug => new ThingSet(basket.Items.Count, basket.Items.Index().Where(item => item.Item.Drinks.Contains(slug)).Select(item => item.Index))).ToList();

            Assert.Equal(
                LadderBySolver.Climb(basket, slugs, needs).Select(step => (step.Things, step.Drinks.Count, step.Cost)),
                LadderByEverySet.Climb(basket, slugs, needs).Select(step => (step.Things, step.Drinks.Count, step.Cost)));
        }, iter: 40);

    [Fact]
    public void The_pool_shows_shared_ingredients_first_and_what_dropping_a_single_use_saves()
    {
        var episode = Episode(Sour, Long, Minty);
        var bar = Of();
        var grid = PoolGrid.Of(episode, bar, BasketPlanner.Plan(episode, bar, DemandFor.Viewer));

        Assert.Equal(["White rum 3", "Lime juice 2", "Sugar syrup 1", "Soda water 1 saves 0.6", "Mint 1 saves 2"],
            grid.Columns.Select(column => FormattableString.Invariant($"{column.Name} {column.Drinks}{(column.Saves is { } saves ? $" saves {saves}" : "")}")));
        Assert.Equal(["60 ml", "30 ml", "20 ml", "", ""], grid.Rows[0].Cells.Select(cell => string.Join(" + ", cell.Amounts)));
    }
}
