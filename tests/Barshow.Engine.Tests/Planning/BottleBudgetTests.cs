using Barshow.Engine.Measures;
using Barshow.Engine.Planning.Bottles;
using Barshow.Engine.Specs;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

public sealed class BottleBudgetTests
{
    private static Spec[] Drinks(int count, string rum) => [.. Enumerable.Range(1, count).Select(number => Drink($"Drink {number}", (rum, "white-rum")))];

    [Fact]
    public void Ten_drinks_of_60_ml_leave_100_ml_of_a_700_ml_bottle()
    {
        var budget = BottleBudgetPlanner.Plan(Episode(Drinks(10, "60 ml")), Of());

        Assert.True(budget.ViewerFits);
        Assert.Equal([100, 150], budget.Checks.Select(check => check.LeftMillilitres));
    }

    // 2 US fl oz = 59.147 ml (NIST Handbook 44, Appendix C), so ten leave 750 - 591.4706 = 158.5294 ml.
    [Fact]
    public void Ten_drinks_of_2_oz_by_the_exact_ounce_leave_158_5_ml_of_a_750_ml_bottle()
    {
        var episode = Episode(Drinks(10, "2 oz")) with { Convention = Convention.UsExact };

        Assert.Equal(158.529, BottleBudgetPlanner.Plan(episode, Of()).Checks.Single(check => check.BottleMillilitres == 750).LeftMillilitres, 3);
    }

    // Whole pours of a bottle, exact arithmetic without waste.
    [Theory]
    [InlineData(700, 25, 28)]
    [InlineData(700, 35, 20)]
    [InlineData(700, 45, 15)]
    [InlineData(750, 50, 15)]
    [InlineData(750, 60, 12)]
    [InlineData(1750, 45, 38)]
    public void As_many_drinks_fit_as_the_bottle_holds_whole_pours(double bottle, int pour, int fits)
    {
        bool? Fits(int drinks)
        {
            var episode = Episode(Drinks(drinks, $"{pour} ml"));
            return BottleBudgetPlanner.Plan(episode with { Bottle = episode.Bottle! with { Millilitres = bottle } }, Of()).ViewerFits;
        }

        Assert.True(Fits(fits));
        Assert.False(Fits(fits + 1));
    }

    [Fact]
    public void A_lineup_that_needs_more_than_one_bottle_is_said_with_the_numbers()
    {
        var budget = BottleBudgetPlanner.Plan(Episode(Drinks(12, "60 ml")), Of());

        Assert.False(budget.ViewerFits);
        Assert.Equal("Each drink made once pours 720 ml of White rum; one bottle holds 700 ml, 20 ml too little.", budget.Findings[0].Message);
        Assert.Equal("Pour less, leave a drink out, or say that it takes 2 bottles.", budget.Findings[0].Remedy);
    }

    [Fact]
    public void The_shoot_opens_a_second_bottle_where_the_viewer_needs_one()
    {
        var episode = Episode(Drinks(6, "60 ml")) with { Takes = 2 };

        var budget = BottleBudgetPlanner.Plan(episode, Of());

        Assert.True(budget.ViewerFits);
        Assert.Equal(720, budget.ShootMillilitres);
        Assert.Equal(2, budget.BottlesToOrder);
        Assert.Equal([(1, 580.0), (1, 460.0), (1, 340.0), (1, 220.0), (1, 100.0), (2, 680.0)], budget.Levels.Select(level => (level.Bottle, level.LevelMillilitres)));
        Assert.Equal(11, budget.RetakesLeft);
        Assert.Equal("The shoot pours 720 ml of White rum from 2 bottles of 700 ml; the last has 680 ml left, 11 more takes of Drink 1.", budget.Findings.Single().Message);
    }

    [Fact]
    public void Rehearsal_is_poured_before_the_first_drink()
    {
        var bar = Of();
        var budget = BottleBudgetPlanner.Plan(Episode(Drinks(2, "50 ml")), bar with { House = bar.House with { RehearsalsPerDrink = 1 } });

        Assert.Equal([("Rehearsal", 600.0), ("Drink 1", 550.0), ("Drink 2", 500.0)], budget.Levels.Select(level => (level.Name, level.LevelMillilitres)));
    }

    [Fact]
    public void The_levels_follow_the_shoot_order()
    {
        var budget = BottleBudgetPlanner.Plan(Episode(Drinks(3, "50 ml")), Of(), [S("drink-3"), S("drink-1"), S("drink-2")]);

        Assert.Equal(["Drink 3", "Drink 1", "Drink 2"], budget.Levels.Select(level => level.Name));
    }

    [Fact]
    public void What_is_on_hand_need_not_be_ordered() =>
        Assert.Equal(0, BottleBudgetPlanner.Plan(Episode(Drinks(3, "50 ml")), Of(WhiteRum with { OnHand = M("150 ml") })).BottlesToOrder);

    [Theory]
    [InlineData(0d)]
    [InlineData(-700d)]
    [InlineData(null)]
    [InlineData(double.NaN)]
    public void A_bottle_without_a_size_is_checked_at_the_common_sizes_only(double? size)
    {
        var episode = Episode(Drinks(3, "50 ml"));
        var budget = BottleBudgetPlanner.Plan(episode with { Bottle = episode.Bottle! with { Millilitres = size } }, Of());

        Assert.Null(budget.ViewerFits);
        Assert.Equal([700, 750], budget.Checks.Select(check => check.BottleMillilitres));
        Assert.Equal("The bottle of White rum has no size above nought, so the stated bottle is not checked; the viewer's 150 ml is checked against 700 ml and 750 ml.", budget.Findings[0].Message);
    }

    [Fact]
    public void An_episode_without_a_bottle_says_that_nothing_was_checked() =>
        Assert.Equal("The episode names no featured bottle, so the bottle budgets are not worked out.",
            BottleBudgetPlanner.Plan(Episode(Sour) with { Bottle = null }, Of()).Findings.Single().Message);

    [Fact]
    public void A_lineup_that_never_pours_the_bottle_is_told_so() =>
        Assert.Equal("No drink of the lineup pours the White rum.", BottleBudgetPlanner.Plan(Episode(Drink("Plain soda", ("200 ml", "soda-water"))), Of()).Findings.Single().Message);

    [Fact]
    public void A_drink_without_the_bottle_is_named()
    {
        var budget = BottleBudgetPlanner.Plan(Episode(Sour, Drink("Plain soda", ("200 ml", "soda-water"))), Of());

        Assert.Contains(budget.Findings, finding => finding.Message == "Plain soda does not pour the White rum.");
    }

    [Fact]
    public void A_lineup_that_fits_750_but_not_700_is_told_when_the_size_is_750()
    {
        var episode = Episode(Drinks(12, "60 ml"));
        var budget = BottleBudgetPlanner.Plan(episode with { Bottle = episode.Bottle! with { Millilitres = 750 } }, Of());

        Assert.True(budget.ViewerFits);
        Assert.Equal("Each drink made once pours 720 ml of White rum: a bottle of 750 ml carries it, one of 700 ml is 20 ml short.", budget.Findings[0].Message);
    }

    [Fact]
    public void The_bottle_is_counted_through_a_house_prep()
    {
        var infusion = Syrup with { Slug = S("lime-rum"), Name = "Lime rum", Prep = new() { Inputs = [new(S("white-rum"), M("350 ml"))], Yield = M("350 ml") } };

        Assert.Equal(60, BottleBudgetPlanner.Plan(Episode(Drink("Infused", ("60 ml", "lime-rum"))), Of(infusion)).ViewerMillilitres, 9);
    }
}
