using Barshow.Engine.Findings;
using Barshow.Engine.Planning.Lineup;
using static Barshow.Engine.Tests.Planning.LineupBar;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

public sealed class LineupPlannerTests
{
    [Fact]
    public void The_cheapest_basket_is_chosen_and_proven()
    {
        var plan = LineupPlanner.Plan(Question() with { Aims = [Aim.Cost] });

        // White rum 21.00, two limes 1.00 and a can of soda water 0.60; mint would cost 2.00 and bitters 12.00.
        Assert.Equal(LineupOutcome.Planned, plan.Outcome);
        Assert.Equal("Blended rum, Long rum, Rum sour", Drinks(plan));
        Assert.Equal(new LineupLevel(Aim.Cost, 22.6m, 22.6m, true), Assert.Single(plan.Levels));
        Assert.Equal(22.6m, plan.Basket!.Cost);
        Assert.Empty(plan.Findings);
    }

    [Fact]
    public void The_aims_are_met_in_the_users_order()
    {
        var plan = LineupPlanner.Plan(Question() with { Aims = [Aim.Variety, Aim.Cost] });

        Assert.Equal([Aim.Variety, Aim.Cost], plan.Levels.Select(level => level.Aim));
        Assert.Equal("Bitter rum, Long rum, Mint sour", Drinks(plan));
        Assert.Equal(12, plan.Levels[0].Value);
    }

    [Fact]
    public void Every_pick_says_what_it_shares_and_what_it_adds()
    {
        var plan = LineupPlanner.Plan(Question() with { Aims = [Aim.Cost], MustHave = [S("bitter-rum")] });

        Assert.Equal("Must be in. Shares White rum; adds Aromatic bitters, 12.00 USD.", plan.Picks.Single(pick => pick.Spec.Name == "Bitter rum").Reason);
        Assert.Contains(plan.Picks, pick => pick.Reason == "Shares Lime and White rum; adds 0.50 USD to what is shared.");
    }

    [Fact]
    public void The_best_replacement_of_a_pick_keeps_every_requirement()
    {
        var plan = LineupPlanner.Plan(Question() with { Aims = [Aim.Cost] });

        Assert.Equal(new LineupReplacement(S("mint-sour"), "Mint sour", 1.9m), plan.Picks.Single(pick => pick.Spec.Name == "Long rum").Replacement);
    }

    [Fact]
    public void A_base_is_swapped_where_spec_and_question_allow_it()
    {
        var gin = WhiteRum with { Slug = S("gin"), Name = "Gin", Packs = [new("700 ml bottle", M("700 ml"), 25m)] };
        var ginSour = Drink("Gin sour", ("50 ml", "gin"), ("25 ml", "lime-juice")) with { BaseSwaps = [S("white-rum")] };
        var question = Question(RumSour, LongRum, ginSour);
        question = question with { Bar = question.Bar with { Ingredients = new([.. question.Bar.Ingredients.All, gin]) } };

        Assert.Equal(LineupOutcome.Impossible, LineupPlanner.Plan(question).Outcome);
        var plan = LineupPlanner.Plan(question with { BaseSwaps = true });
        Assert.True(plan.Picks.Single(pick => pick.Spec.Name == "Gin sour").BaseSwapped);
        Assert.DoesNotContain(plan.Basket!.Items, item => item.Name == "Gin");
    }

    [Fact]
    public void When_nothing_fits_the_fewest_requirements_to_relax_are_named()
    {
        var plan = LineupPlanner.Plan(Question() with { MostThings = 1, MustHave = [S("rum-sour")], AlcoholFree = 0 });

        Assert.Equal(LineupOutcome.Impossible, plan.Outcome);
        Assert.True(plan.RelaxProven);
        Assert.Equal("at most 1 thing to buy", Assert.Single(plan.Relax).Words);
        Assert.Equal("No lineup keeps every requirement. Only one would have to be relaxed: at most 1 thing to buy.", plan.Findings.Single().Message);
        Assert.Equal("Allow one thing more to buy.", plan.Findings.Single().Remedy);
    }

    [Fact]
    public void A_must_have_that_is_not_in_the_catalogue_is_named()
    {
        var plan = LineupPlanner.Plan(Question() with { MustHave = [S("moon-punch")] });

        Assert.Equal("moon-punch is in", Assert.Single(plan.Relax).Words);
        Assert.Equal("moon-punch must be in the lineup, but the catalogue has no drink of that name with lines.", plan.Findings[0].Message);
    }

    [Fact]
    public void The_same_question_gets_the_same_answer()
    {
        var first = LineupPlanner.Plan(Question());
        var again = LineupPlanner.Plan(Question([.. Catalogue.Reverse()]));

        Assert.Equal(Drinks(first), Drinks(again));
        Assert.Equal(first.Levels, again.Levels);
    }

    [Fact]
    public void A_stopped_run_says_so_and_shows_the_best_so_far()
    {
        using var stop = new CancellationTokenSource();
        var plan = LineupPlanner.Plan(Question(), _ => stop.Cancel(), stop.Token);

        Assert.Equal(LineupOutcome.Stopped, plan.Outcome);
        Assert.Equal(3, plan.Picks.Count);
        Assert.Contains(plan.Findings, finding => finding.Kind == FindingCatalogue.LineupStopped);
    }

    [Fact]
    public void Missing_prices_are_planned_by_the_number_of_packs_and_said()
    {
        var question = Question() with { Aims = [Aim.Cost], MostMoney = 5 };
        question = question with { Bar = question.Bar with { Ingredients = Of(Soda with { Packs = [new("200 ml can", M("200 ml"))] }).Ingredients } };

        var plan = LineupPlanner.Plan(question);

        Assert.False(plan.Priced);
        Assert.Equal("1 ingredient has no price (Soda water), so the basket is planned by the number of packs.", plan.Findings[0].Message);
        Assert.Equal("Prices are missing, so it was not checked that the basket costs at most 5.00 USD.", plan.Findings[1].Message);
        Assert.Equal(LineupOutcome.Planned, plan.Outcome);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void Asking_for_no_drinks_is_refused_in_words(int count) => Assert.Equal(
        "Ask for at least one drink and for no more than the catalogue can give.",
        LineupPlanner.Plan(Question() with { Count = count }).Findings.Single().Remedy);

    [Fact]
    public void More_drinks_than_the_catalogue_holds_are_refused_in_words() =>
        Assert.Equal("8 drinks", Assert.Single(LineupPlanner.Plan(Question() with { Count = 8, BottleInEvery = false, OneBottleAtHome = false }).Relax).Words);

    [Fact]
    public void An_empty_catalogue_is_no_crash() => Assert.Equal(LineupOutcome.Impossible, LineupPlanner.Plan(Question() with { Catalogue = [] }).Outcome);

    [Fact]
    public void A_bottle_of_size_nought_is_no_crash() =>
        Assert.Equal(LineupOutcome.Planned, LineupPlanner.Plan(Question() with { Bottle = new() { Name = "White rum", Ingredient = S("white-rum"), Millilitres = 0 } }).Outcome);

    [Fact]
    public void Progress_shows_the_best_so_far()
    {
        var seen = new List<LineupProgress>();

        LineupPlanner.Plan(Question() with { Aims = [Aim.Cost] }, seen.Add);

        Assert.NotEmpty(seen);
        Assert.All(seen, step => Assert.Equal(3, step.Drinks.Count));
    }

    /// <summary>For each rule a case that it decides: with the rule the lineup keeps the requirement, without it the lineup breaks it.</summary>
    public static TheoryData<RequirementKind> Rules => new(Enum.GetValues<RequirementKind>());

    [Theory]
    [MemberData(nameof(Rules))]
    public void Each_rule_decides_a_prepared_case(RequirementKind rule)
    {
        var question = CaseFor(rule);
        var words = Requirement.Of(question).First(requirement => requirement.Kind == rule).Words;

        var with = LineupPlanner.Plan(question);
        var without = LineupPlanner.Plan(question, null, new HashSet<RequirementKind> { rule });

        Assert.Equal(LineupOutcome.Planned, with.Outcome);
        Assert.DoesNotContain(with.Findings, finding => finding.Kind == FindingCatalogue.LineupBreaks);
        Assert.Contains(without.Findings, finding => finding.Kind == FindingCatalogue.LineupBreaks && finding.Message.EndsWith($": {words}.", StringComparison.Ordinal));
    }

    private static LineupQuestion CaseFor(RequirementKind rule)
    {
        var question = Question() with { Aims = [Aim.Cost], BottleInEvery = rule is RequirementKind.Bottle, OneBottleAtHome = rule is RequirementKind.BottleAtHome };
        var small = WhiteRum with { Packs = [new("140 ml bottle", M("140 ml"), 5m)] };
        var light = Drink("Light and bitter", ("30 ml", "white-rum"), ("3 dash", "aromatic-bitters"));
        var one = question with { Bottle = question.Bottle! with { Millilitres = 140 }, Catalogue = [RumSour, LongRum, Blended, light], Bar = question.Bar with { Ingredients = Of(small).Ingredients } };
        var cheapRum = Of(WhiteRum with { Packs = [new("miniature", M("50 ml"), 0.1m)] }).Ingredients;
        return rule switch
        {
            RequirementKind.Count => question,
            RequirementKind.Alike => question with { Catalogue = [RumSour, RumSour with { Slug = S("daily-sour"), Name = "Daily sour" }, LongRum, MintSour] },
            RequirementKind.Bottle => question with { Catalogue = [RumSour, MintSour, LongRum, Cooler] },
            RequirementKind.MustHave => question with { MustHave = [S("bitter-rum")] },
            RequirementKind.LeaveOut => question with { LeaveOut = [S("long-rum")] },
            RequirementKind.Without => question with { Without = [S("soda-water")] },
            RequirementKind.Fresh => question with { LastFeatured = new Dictionary<Names.Slug, DateOnly> { [S("long-rum")] = new(2026, 1, 10) }, Date = new(2026, 12, 1), FreshMonths = 12 },
            RequirementKind.FamilyCap => question with { BottleInEvery = true, MostOfAFamily = 1 },
            RequirementKind.Floor => question with { Floors = [new(FloorOn.Method, "Stirred", 1)] },
            RequirementKind.AlcoholFree => question with { Count = 1, AlcoholFree = 1, Catalogue = [Drink("Bare rum", ("50 ml", "white-rum")), Cooler], Bar = question.Bar with { Ingredients = cheapRum } },
            RequirementKind.Glasses => question with { GlassStock = true, GlassRounds = 1, Bar = question.Bar with { Kit = question.Bar.Kit with { Glasses = [.. question.Bar.Kit.Glasses.Select(glass => glass with { Count = 1 })] } } },
            RequirementKind.Tools => question with { BottleInEvery = true, ToolStock = true, Bar = question.Bar with { Kit = question.Bar.Kit with { Tools = [.. question.Bar.Kit.Tools.Where(tool => tool.Name != "Blender")] } } },
            RequirementKind.BottleAtHome => one,
            RequirementKind.BottlesOnSet => one with { ShootBottles = 1 },
            RequirementKind.Money => question with { MustHave = [S("rum-sour")], MostMoney = 22.9m, Aims = [Aim.Variety] },
            RequirementKind.Things => question with { Count = 2, MostThings = 2, Bar = question.Bar with { Ingredients = Of(Lime with { Packs = [new("one", M("1"), 5m)] }).Ingredients } },
            _ => throw new ArgumentOutOfRangeException(nameof(rule)),
        };
    }
}
