using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;
using Xunit.Abstractions;

namespace Barshow.Engine.Tests.Shooting;

/// <summary>Each rule on a few hand-made facts: with it the plain re-check finds nothing; taken out, the order breaks it.</summary>
public class RunningOrderRulesTests(ITestOutputHelper output)
{
    public static TheoryData<OrderRule> Rules => [.. OrderRules.All];

    [Fact]
    public void The_rules_in_plain_words()
    {
        foreach (var rule in OrderRules.All)
            output.WriteLine($"{rule}: {rule.InPlainWords()}");

        Assert.All(OrderRules.All, rule => Assert.EndsWith(".", rule.InPlainWords(), StringComparison.Ordinal));
        Assert.Equal(OrderRules.All.Count, OrderRules.All.Select(rule => rule.InPlainWords()).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_is_kept_and_is_broken_when_it_is_taken_out(OrderRule rule)
    {
        var (episode, bar, settings) = FactsThatTempt(rule);

        var kept = RunningOrderPlanner.Plan(episode, bar, settings);
        var free = RunningOrderPlanner.Plan(episode, bar, settings with { Without = new HashSet<OrderRule> { rule } });

        Assert.Empty(kept.Relaxed);
        Assert.Empty(RunningOrderCheck.Check(kept, episode, bar, settings).Broken);
        Assert.Contains(RunningOrderCheck.Check(free, episode, bar, settings).Broken, requirement => requirement.Rule == rule);
    }

    /// <summary>Facts on which the cheapest order breaks the rule.</summary>
    private static (Episode, Bar, OrderSettings) FactsThatTempt(OrderRule rule) => rule switch
    {
        // The herb drink is the strongest and is alone at its station: the palate would have it last.
        OrderRule.FreshWhenFilmed => (
            Kit.Episode([.. Enumerable.Range(1, 5).Select(i => Kit.Drink($"Sour {i}")), Kit.Drink("Garden Press", MethodKind.Built, Kit.Highball, rum: 90, basil: true)]),
            Kit.Bar(), new() { FurtherBatches = false }),
        // Pinned against the palate.
        OrderRule.OpenerFirst => (Kit.Episode(Kit.Drink("Light", rum: 20), Kit.Drink("Middle", rum: 40), Kit.Drink("Strong", rum: 80, pin: Pin.Opener)), Kit.Bar(), new()),
        OrderRule.CloserLast => (Kit.Episode(Kit.Drink("Light", rum: 20, pin: Pin.Closer), Kit.Drink("Middle", rum: 40), Kit.Drink("Strong", rum: 80)), Kit.Bar(), new()),
        // The two are alike in nothing, and each has drinks of its own set-up that part them.
        OrderRule.SideBySide => (
            Kit.Episode(Kit.Drink("Sour 1", rum: 40, beside: "Long 2"), Kit.Drink("Sour 2", rum: 50), Kit.Drink("Long 1", MethodKind.Built, Kit.Highball, rum: 60), Kit.Drink("Long 2", MethodKind.Built, Kit.Highball, rum: 70)),
            Kit.Bar(), new()),
        OrderRule.CleanGlass => (Kit.Episode([.. Enumerable.Range(1, 4).Select(i => Kit.Drink($"Sour {i}"))]), Kit.Bar(coupes: 2), new()),
        // Waiting costs time, so without the rule nobody waits.
        OrderRule.ColdGlass => (Kit.Episode([.. Enumerable.Range(1, 2).Select(i => Kit.Drink($"Sour {i}", chilled: true))]), Kit.Bar(coupes: 1), new()),
        OrderRule.BreakInTime => (Kit.Episode([.. Enumerable.Range(1, 5).Select(i => Kit.Drink($"Sour {i}"))]), Kit.Bar(), new()),
        OrderRule.MealInTime => (Kit.Episode([.. Enumerable.Range(1, 6).Select(i => Kit.Drink($"Sour {i}", takes: 3))]), Kit.Bar(coupes: 24), new()),
        // A kind palate costs changes of set-up; the hour does not allow them.
        OrderRule.WrapInTime => (
            Kit.Episode(Kit.Drink("Sour 1", rum: 20), Kit.Drink("Long 1", MethodKind.Built, Kit.Highball, rum: 40), Kit.Drink("Sour 2", rum: 60), Kit.Drink("Long 2", MethodKind.Built, Kit.Highball, rum: 80)),
            Kit.Bar(), new() { Aims = [OrderAim.KindPalate], WrapBy = TimeSpan.FromMinutes(150) }),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "No facts for the rule."),
    };

    [Fact]
    public void When_rules_cannot_all_be_kept_the_fewest_are_let_go_and_named()
    {
        // Both ends are pinned, so the pair cannot stand together across the drink between them.
        var episode = Kit.Episode(Kit.Drink("First", pin: Pin.Opener, beside: "Last"), Kit.Drink("Middle"), Kit.Drink("Last", pin: Pin.Closer));

        var order = RunningOrderPlanner.Plan(episode, Kit.Bar());

        Assert.Equal([new Requirement(OrderRule.SideBySide, "First", "Last")], order.Relaxed);
        Assert.Equal("First and Last are to be compared but are not filmed side by side.", Assert.Single(order.Findings, finding => finding.Kind == FindingCatalogue.PairParted).Message);
        Assert.Equal(order.Relaxed, RunningOrderCheck.Check(order, episode, Kit.Bar()).Broken);
    }

    [Fact]
    public void An_hour_that_cannot_be_met_lets_the_wrap_go_and_nothing_else()
    {
        var episode = Kit.Episode(Kit.Drink("Sour 1"), Kit.Drink("Sour 2"));

        var order = RunningOrderPlanner.Plan(episode, Kit.Bar(), new() { WrapBy = TimeSpan.FromMinutes(30) });

        Assert.Equal([new Requirement(OrderRule.WrapInTime)], order.Relaxed);
        // 10 of introduction, two drinks of 22, a reset of 6, 5 of signing off.
        Assert.Equal("The day ends at 11:05, later than it must.", Assert.Single(order.Findings, finding => finding.Kind == FindingCatalogue.WrapLate).Message);
    }

    // Introduction 10, take 7, taste 3, close-ups 12: the drink ends at 32 at the earliest; its syrup is ready 15 min before the call.
    [Theory]
    [InlineData(48, 0, 0)]
    [InlineData(47, 0, 0)]
    [InlineData(46, 1, 0)]
    [InlineData(23, 1, 0)]
    [InlineData(22, 1, 0)]
    [InlineData(21, 0, 1)]
    public void A_window_shortened_by_a_minute_across_its_border_changes_the_batch_and_then_the_findings(int minutes, int furtherBatches, int closed)
    {
        var bar = Kit.Bar(basilMinutes: minutes);

        var order = RunningOrderPlanner.Plan(Kit.Episode(Kit.Drink("Garden Fizz", basil: true)), bar);

        Assert.Equal(furtherBatches, order.Blocks.Count(block => block.Kind is BlockKind.Batch));
        Assert.Equal(closed, order.Findings.Count(finding => finding.Kind == FindingCatalogue.FreshWindowClosed));
    }

    [Theory]
    [InlineData(75, "Garden Fizz")]
    [InlineData(74, "Strong Sour")]
    public void A_window_shortened_by_a_minute_across_its_border_changes_the_order(int minutes, string closer)
    {
        // In the order that the palate likes the herb drink, the stronger, comes last and ends 60 min after the call, 75 after its syrup.
        var episode = Kit.Episode(Kit.Drink("Strong Sour", rum: 30), Kit.Drink("Garden Fizz", rum: 70, basil: true));

        var order = RunningOrderPlanner.Plan(episode, Kit.Bar(basilMinutes: minutes), new() { FurtherBatches = false });

        Assert.Equal(Slug.Of(closer), order.ShootOrder[^1]);
        Assert.Empty(order.Relaxed);
    }

    [Fact]
    public void Two_hours_of_colour_cannot_serve_a_last_drink_and_a_second_batch_is_planned_and_said()
    {
        var episode = Kit.Episode([.. Enumerable.Range(1, 6).Select(i => Kit.Drink($"Sour {i}")), Kit.Drink("Garden Fizz", basil: true, pin: Pin.Closer)]);
        var bar = Kit.Bar(hands: 2);

        var order = RunningOrderPlanner.Plan(episode, bar);

        var batch = Assert.Single(order.Blocks, block => block.Kind is BlockKind.Batch);
        Assert.True(batch.Beside);
        Assert.Equal(TimeSpan.FromMinutes(12), batch.End - batch.Start);
        Assert.StartsWith("Basil syrup is made again: batch 2 is ready at ", Assert.Single(order.Findings, finding => finding.Kind == FindingCatalogue.FurtherBatch).Message, StringComparison.Ordinal);
        Assert.Empty(RunningOrderCheck.Check(order, episode, bar).Broken);
        Assert.Equal([Slug.Of("Garden Fizz")], order.Fresh.Single(stretch => stretch.Prep == Kit.Basil && stretch.Batch == 2).Drinks);
    }

    [Fact]
    public void Without_leave_for_a_second_batch_it_is_a_finding()
    {
        var episode = Kit.Episode([.. Enumerable.Range(1, 6).Select(i => Kit.Drink($"Sour {i}")), Kit.Drink("Garden Fizz", basil: true, pin: Pin.Closer)]);

        var order = RunningOrderPlanner.Plan(episode, Kit.Bar(), new() { FurtherBatches = false, Aims = [OrderAim.ShortDay] });

        Assert.Equal(OrderRule.CloserLast, Assert.Single(order.Relaxed).Rule);
        Assert.Equal("Garden Fizz is pinned as the closer but is not filmed last.", Assert.Single(order.Findings, finding => finding.Kind == FindingCatalogue.PinNotKept).Message);
    }
}
