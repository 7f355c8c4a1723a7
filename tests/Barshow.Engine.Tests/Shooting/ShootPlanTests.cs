using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Shooting;

/// <summary>Order and mise together: what the mise cannot keep goes back to the order as a cut.</summary>
public class ShootPlanTests
{
    private static readonly Slug Mint = Slug.Of("mint syrup");

    // A second syrup of the same short life, made in the same blender.
    private static Ingredient MintSyrup(int minutes) => new()
    {
        Slug = Mint,
        Name = "Mint syrup",
        Kind = IngredientKind.Syrup,
        Composition = new() { Strength = Strength.FromPercent(0), SugarGramsPer100Millilitres = 60 },
        Fresh = Kit.Keeps(TimeSpan.FromMinutes(minutes)),
        Prep = new() { Inputs = [new(Kit.Syrup, Measure.Millilitres(300))], Yield = Measure.Millilitres(280), HandsOn = TimeSpan.FromMinutes(12), Equipment = "blender", Steps = ["Blend and strain."] },
    };

    private static Barshow.Engine.Episodes.LineupDrink MintDrink(string name) => Kit.Drink(name) is var drink
        ? drink with { Spec = drink.Spec with { Lines = [.. drink.Spec.Lines.Take(2), Kit.Line("Mint syrup", Mint, 15)] } }
        : throw new InvalidOperationException();

    [Fact]
    public void Two_syrups_that_one_blender_cannot_make_at_once_are_each_filmed_in_their_own_window()
    {
        // Each would do if it were the last thing made; only one of them can be.
        var episode = Kit.Episode(Kit.Drink("Garden Fizz", basil: true), MintDrink("Mint Sour"));
        var bar = Kit.Bar(hands: 2, basilMinutes: 80, more: [MintSyrup(80)]);

        var plan = ShootPlan.Of(episode, bar);

        Assert.Empty(MiseCheck.Faults(plan.Mise));
        Assert.Empty(MiseCheck.OutsideWindow(plan.Mise));
        Assert.DoesNotContain(plan.Findings, finding => finding.Kind == FindingCatalogue.FreshWindowClosed);
        foreach (var stretch in plan.Order.Fresh)
            foreach (var drink in stretch.Drinks)
                Assert.True(plan.Order.Blocks.Where(block => block.Drink == drink).Max(block => block.End) <= stretch.Until);
    }

    [Fact]
    public void Where_the_mise_cannot_keep_the_hour_the_order_hoped_for_the_order_is_planned_again()
    {
        // Both drinks must be filmed in the first 35 minutes after their syrups, and one blender needs 12 for each.
        var episode = Kit.Episode(Kit.Drink("Garden Fizz", basil: true) with { Pin = Barshow.Engine.Episodes.Pin.Opener }, MintDrink("Mint Sour"));
        var bar = Kit.Bar(hands: 2, basilMinutes: 47, more: [MintSyrup(75)]);

        var plan = ShootPlan.Of(episode, bar);

        Assert.True(plan.Rounds > 1);
        Assert.False(plan.Proven);
        Assert.Empty(MiseCheck.Faults(plan.Mise));
        Assert.Single(plan.Order.Blocks, block => block.Kind is BlockKind.Batch);
        Assert.DoesNotContain(plan.Findings, finding => finding.Kind == FindingCatalogue.MiseWindowMissed);
    }

    [Fact]
    public void The_same_question_gets_the_same_plan()
    {
        var episode = Kit.Episode(Kit.Drink("Garden Fizz", basil: true), Kit.Drink("Salt Lane Sour", salt: true), Kit.Drink("Long Walk", MethodKind.Built, Kit.Highball, chilled: true));

        var (first, second) = (ShootPlan.Of(episode, Kit.Bar(2)), ShootPlan.Of(episode, Kit.Bar(2)));

        Assert.Equal(first.Order.Blocks, second.Order.Blocks);
        Assert.Equal(first.Mise.Tasks.Select(task => (task.Key, task.Start, task.End)), second.Mise.Tasks.Select(task => (task.Key, task.Start, task.End)));
        Assert.Equal(first.Viewers.Drinks, second.Viewers.Drinks);
    }

    [Fact]
    public void Drinks_nobody_measured_are_planned_all_the_same()
    {
        var bare = Kit.Drink("Salt Lane Sour");
        bare = bare with { Spec = bare.Spec with { Lines = [], Method = null, Serve = new() } };

        var plan = ShootPlan.Of(Kit.Episode(bare), Kit.Bar());

        Assert.Contains(plan.Order.Blocks, block => block.Take == 1);
        Assert.Contains(plan.Findings, finding => finding.Message == "The glass of Salt Lane Sour is not named or not counted: whether clean glasses run out was not checked.");
    }
}
