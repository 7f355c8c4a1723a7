using Barshow.Engine.Ingredients;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using CsCheck;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

public sealed class BasketTests
{
    [Fact]
    public void A_viewer_buys_whole_packs_and_has_the_staples_at_home()
    {
        var basket = BasketPlanner.Plan(Episode(Sour), Of(), DemandFor.Viewer);

        Assert.Equal(["White rum: 700 ml bottle", "Lime: 2"], basket.Items.Select(item => $"{item.Name}: {item.ToBuy}"));
        Assert.Equal(["White sugar", "Water"], basket.AtHome.Select(item => item.Name));
        Assert.Equal(22m, basket.Cost);
    }

    [Fact]
    public void The_shoot_buys_for_takes_swap_outs_rehearsal_and_spill()
    {
        var bar = Of();
        bar = bar with { House = bar.House with { SpillShare = 0.1, RehearsalsPerDrink = 1 } };
        var episode = Episode(Sour);
        episode = episode with { Takes = 3, Lineup = [episode.Lineup[0] with { TastedSwapOuts = 1, UntastedSwapOuts = 5 }] };

        var basket = BasketPlanner.Plan(episode, bar, DemandFor.Shoot);

        Assert.Equal(60 * 5 * 1.1, basket.Demand[S("white-rum")]!.Millilitres, 9);
        Assert.Equal(6, basket.Items.Single(item => item.Name == "Lime").Need.Amount);
    }

    [Fact]
    public void What_is_on_hand_is_taken_off_for_the_shoot_only()
    {
        var bar = Of(Lime with { OnHand = M("1") });

        Assert.Equal("1", BasketPlanner.Plan(Episode(Sour), bar, DemandFor.Shoot).Items.Single(item => item.Name == "Lime").ToBuy);
        Assert.Equal("2", BasketPlanner.Plan(Episode(Sour), bar, DemandFor.Viewer).Items.Single(item => item.Name == "Lime").ToBuy);
    }

    [Fact]
    public void A_missing_price_is_said_and_planned_by_the_fewest_packs()
    {
        var bar = Of(Soda with { Packs = [new("200 ml can", M("200 ml"), 0.1m), new("1 litre bottle", M("1 l"))] });

        var basket = BasketPlanner.Plan(Episode(Drink("Long rum", ("45 ml", "white-rum"), ("450 ml", "soda-water"))), bar, DemandFor.Viewer);

        Assert.Equal("1 litre bottle", basket.Items.Single(item => item.Name == "Soda water").ToBuy);
        Assert.Equal("The 1 litre bottle of Soda water has no price, so Soda water is planned by the fewest packs and its cost is left out.", Assert.Single(basket.Findings).Message);
        Assert.Equal(21m, basket.Cost);
    }

    [Fact]
    public void House_preps_are_taken_apart_to_the_last_input()
    {
        var demand = BasketPlanner.Plan(Episode(Drink("Minty", ("40 ml", "mint-syrup"))), Of(), DemandFor.Viewer).Demand;

        Assert.Equal(["Mint syrup 0.25", "Sugar syrup 0.125"], demand.Preps.Select(prep => FormattableString.Invariant($"{prep.Prep.Name} {prep.Batches}")));
        Assert.Equal(25, demand[S("sugar")]!.Grams, 9);
        Assert.Equal(7.5, demand[S("mint")]!.Totals.Single().Amount, 9);
    }

    [Fact]
    public void A_prep_made_from_itself_is_refused_in_words()
    {
        var bar = Of(Syrup with { Prep = Syrup.Prep! with { Inputs = [new(S("mint-syrup"), M("100 ml"))] } });

        var demand = BasketPlanner.Plan(Episode(Sour), bar, DemandFor.Viewer).Demand;

        Assert.Contains(demand.Findings, finding => finding.Message == "Sugar syrup is made, on some way, from itself, so what it takes cannot be counted.");
    }

    [Fact]
    public void Packs_cover_a_need_at_the_least_cost_when_every_combination_is_tried() =>
        Gen.Select(Gen.Int[1, 900], Gen.Int[1, 300], Gen.Int[1, 300], Gen.Int[1, 300], Gen.Int[1, 40], Gen.Int[1, 40], Gen.Int[1, 40])
            .Sample((need, a, b, c, priceA, priceB, priceC) =>
            {
                (Pack Pack, double Holds)[] packs = [(new("a", M("1"), priceA), a), (new("b", M("1"), priceB), b), (new("c", M("1"), priceC), c)];
                var chosen = PackCover.Cheapest(packs, need);

                Assert.True(chosen.Sum(pack => pack.Count * packs.First(entry => entry.Pack == pack.Pack).Holds) >= need);
                var cheapest = int.MaxValue;
                for (var i = 0; (i - 1) * a < need; i++)
                    for (var j = 0; (j - 1) * b < need; j++)
                        cheapest = Math.Min(cheapest, i * priceA + j * priceB + Math.Max(0, (need - i * a - j * b + c - 1) / c) * priceC);
                Assert.Equal(cheapest, chosen.Sum(pack => pack.Count * pack.Pack.Price!.Value));
            }, iter: 300);

    [Fact]
    public void An_absurd_need_is_still_answered() =>
        Assert.NotEmpty(PackCover.Cheapest([(new("one", M("1"), 1m), 1)], 1e15));

    [Fact]
    public void Water_weighed_for_one_syrup_and_measured_for_a_drink_is_one_amount()
    {
        var weighed = Syrup with { Prep = Syrup.Prep! with { Inputs = [new(S("white-sugar"), M("100 g")), new(S("water"), M("100 g"))], Yield = M("100 ml") } };
        var drink = Drink("Long and plain", ("45 ml", "white-rum"), ("20 ml", weighed.Slug.Text), ("30 ml", "water"));

        var water = BasketPlanner.Plan(Episode(drink), Of(weighed), DemandFor.Viewer).AtHome.Single(item => item.Name == "Water");

        // 20 g for the syrup are 20.04 ml at 0.998 g/ml.
        Assert.Equal(QuantityKind.Millilitres, water.Need.Kind);
        Assert.Equal(50.04, water.Need.Amount, 2);
    }
}
