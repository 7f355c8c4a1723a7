using Barshow.Engine.Measures;
using Barshow.Engine.Planning.Citrus;
using CsCheck;

namespace Barshow.Engine.Tests.Planning;

public sealed class FruitPlanTests
{
    private static int Whole(double juice, params (Unit Cut, double Count)[] cuts) => Plan(juice, 0, cuts).Whole;

    private static FruitPlan Plan(double juice, int shells, params (Unit Cut, double Count)[] cuts) =>
        FruitPlanner.Plan(PlanningBar.Lime, new(juice, cuts.ToDictionary(cut => new CutKey(cut.Cut), cut => cut.Count), shells));

    [Theory]
    [InlineData(28, 1)]
    [InlineData(28.1, 2)]
    [InlineData(0.5, 1)]
    [InlineData(0, 0)]
    public void Juice_takes_whole_fruit(double millilitres, int limes) => Assert.Equal(limes, Whole(millilitres));

    [Fact]
    public void A_peeled_fruit_is_pressed_afterwards() => Assert.Equal(2, Whole(56, (Unit.Twist, 12)));

    [Fact]
    public void A_fruit_cut_in_wheels_gives_no_juice() => Assert.Equal(2, Whole(28, (Unit.Wheel, 7)));

    [Fact]
    public void Half_a_fruit_is_cut_in_wedges_and_half_is_pressed()
    {
        var plan = Plan(14, 0, (Unit.Wedge, 4));

        Assert.Equal(1, plan.Whole);
        Assert.Equal("half cut in wedges, half pressed", Assert.Single(plan.Uses).Words);
    }

    [Fact]
    public void Seven_wheels_from_one_fruit_are_three_from_a_half()
    {
        Assert.Equal(1, Whole(14, (Unit.Wheel, 3)));
        Assert.Equal(2, Whole(14, (Unit.Wheel, 4)));
    }

    [Fact]
    public void A_spent_shell_of_a_pressed_fruit_is_free()
    {
        Assert.Equal(1, Plan(28, 2).Whole);
        Assert.Equal(2, Plan(28, 3).Whole);
    }

    [Fact]
    public void Half_a_muddled_lime_leaves_the_other_half_to_press()
    {
        var plan = FruitPlanner.Plan(PlanningBar.Lime, new(14, new Dictionary<CutKey, double> { [default] = 0.5 }));

        Assert.Equal(1, plan.Whole);
    }

    [Fact]
    public void A_cut_the_ingredient_does_not_know_is_planned_by_practice()
    {
        var plan = Plan(0, 0, (Unit.Slice, 7));

        Assert.Equal(2, plan.Whole);
        Assert.Equal("Lime does not say how many slices one gives; 6 are planned.", Assert.Single(plan.Findings).Message);
    }

    [Fact]
    public void No_smaller_number_of_fruit_would_do_when_everything_is_tried() =>
        Gen.Select(Gen.Double[0, 120], Gen.Int[0, 12], Gen.Int[0, 15], Gen.Int[0, 15], Gen.Int[0, 6], Gen.Int[1, 9], Gen.Int[1, 9])
            .Sample((juice, wedges, wheels, twists, shells, perWedge, perWheel) =>
            {
                var fruit = PlanningBar.Lime with
                {
                    Produce = PlanningBar.Lime.Produce! with { Cuts = [new(Unit.Wedge, perWedge), new(Unit.Wheel, perWheel), new(Unit.Twist, 6, SparesJuice: true)] },
                };
                var plan = FruitPlanner.Plan(fruit, new(juice, new Dictionary<CutKey, double> { [new(Unit.Wedge)] = wedges, [new(Unit.Wheel)] = wheels, [new(Unit.Twist)] = twists }, shells));

                Assert.Equal(FewestByTryingEverything(juice, wedges, wheels, twists, shells, perWedge, perWheel), plan.Whole);
                Assert.Equal(plan.Whole, plan.Uses.Sum(use => use.Count));
                Covers(plan, juice, wedges, wheels, twists, shells, perWedge, perWheel);
            }, iter: 400);

    // The plan read back as a cook would: count what every fruit gives.
    private static void Covers(FruitPlan plan, double juice, int wedges, int wheels, int twists, int shells, int perWedge, int perWheel)
    {
        int Given(Unit cut, int per) => plan.Uses.Sum(use => use.Count * (use.Halves.All(half => half.Cut == cut) ? per : use.Halves.Count(half => half.Cut == cut) * (per / 2)));
        Assert.True(Given(Unit.Wedge, perWedge) >= wedges);
        Assert.True(Given(Unit.Wheel, perWheel) >= wheels);
        Assert.True(Given(Unit.Twist, 6) >= twists);
        Assert.True(plan.SpentShells * 14 >= juice - 1e-2);
        Assert.True(plan.SpentShells >= shells);
    }

    // Knows nothing of halves put together: every multiset of ways to use a fruit, smallest first.
    private static int FewestByTryingEverything(double juice, int wedges, int wheels, int twists, int shells, int perWedge, int perWheel)
    {
        // Ways: pressed whole, wedges whole, wheels whole, press and wedge, press and wheel, wedge and wheel. A pressed part may always be peeled.
        (int Halves, int Wedges, int Wheels, int Twists)[] ways =
        [
            (2, 0, 0, 6), (0, perWedge, 0, 0), (0, 0, perWheel, 0), (1, perWedge / 2, 0, 3), (1, 0, perWheel / 2, 3), (0, perWedge / 2, perWheel / 2, 0),
        ];
        var reached = new HashSet<(int, int, int, int)> { (0, 0, 0, 0) };
        for (var fruit = 0; ; fruit++)
        {
            if (reached.Any(sum => sum.Item1 * 14 >= juice - 1e-3 && sum.Item1 >= shells && sum.Item2 >= wedges && sum.Item3 >= wheels && sum.Item4 >= twists))
                return fruit;
            reached = [.. reached.SelectMany(sum => ways.Select(way => (
                Math.Min(20, sum.Item1 + way.Halves), Math.Min(wedges, sum.Item2 + way.Wedges), Math.Min(wheels, sum.Item3 + way.Wheels), Math.Min(twists, sum.Item4 + way.Twists))))];
        }
    }
}
