using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Shooting;

public class RunningOrderTests
{
    private static string[] Names(RunningOrder order, Episode episode) =>
        [.. order.ShootOrder.Select(slug => episode.Lineup.Single(drink => drink.Spec.Slug == slug).Name)];

    private static RunningOrder Planned(Episode episode, Bar? bar = null, OrderSettings? settings = null)
    {
        bar ??= Kit.Bar();
        var order = RunningOrderPlanner.Plan(episode, bar, settings);
        var verdict = RunningOrderCheck.Check(order, episode, bar, settings);
        Assert.Empty(verdict.Faults);
        Assert.Equal(order.Relaxed.Select(requirement => requirement.ToString()).Order(), verdict.Broken.Select(requirement => requirement.ToString()).Order());
        return order;
    }

    [Fact]
    public void An_empty_lineup_is_a_finding()
    {
        var order = RunningOrderPlanner.Plan(Kit.Episode(), Kit.Bar());

        Assert.Equal("The lineup is empty, so there is no shoot day to plan.", Assert.Single(order.Findings).Message);
    }

    [Fact]
    public void Drinks_of_one_set_up_are_filmed_together()
    {
        var episode = Kit.Episode(
            Kit.Drink("Salt Lane Sour"), Kit.Drink("Long Walk", MethodKind.Built, Kit.Highball), Kit.Drink("Harbour Sour"), Kit.Drink("Long Road", MethodKind.Built, Kit.Highball));

        var order = Planned(episode);

        Assert.True(order.Proven);
        Assert.Equal(["Salt Lane Sour", "Harbour Sour", "Long Walk", "Long Road"], Names(order, episode));
    }

    [Fact]
    public void Opener_and_closer_stay_where_they_are_pinned()
    {
        var episode = Kit.Episode(
            Kit.Drink("Salt Lane Sour", pin: Pin.Closer), Kit.Drink("Long Walk", MethodKind.Built, Kit.Highball), Kit.Drink("Harbour Sour", pin: Pin.Opener));

        Assert.Equal(["Harbour Sour", "Long Walk", "Salt Lane Sour"], Names(Planned(episode), episode));
    }

    [Fact]
    public void A_drink_with_a_short_lived_syrup_is_filmed_before_it_browns()
    {
        var episode = Kit.Episode([.. Enumerable.Range(1, 5).Select(i => Kit.Drink($"Sour {i}")), Kit.Drink("Garden Fizz", MethodKind.Built, Kit.Highball, basil: true)]);

        var order = Planned(episode);

        var end = order.Blocks.Where(block => block.Drink == Slug.Of("Garden Fizz")).Max(block => block.End);
        Assert.True(end <= TimeSpan.FromMinutes(120 - 15));
        Assert.DoesNotContain(order.Blocks, block => block.Kind is BlockKind.Batch);
    }

    [Fact]
    public void The_same_question_gets_the_same_answer()
    {
        var episode = Kit.Episode([.. Enumerable.Range(1, 8).Select(i => Kit.Drink($"Drink {i}", (MethodKind)(i % 4), i % 3 == 0 ? Kit.Coupe : Kit.Highball, rum: 30 + 5 * i, basil: i == 5))]);

        var first = RunningOrderPlanner.Plan(episode, Kit.Bar());
        var second = RunningOrderPlanner.Plan(episode, Kit.Bar());

        Assert.Equal(first.Blocks, second.Blocks);
        Assert.True(first.Proven);
    }

    [Fact]
    public void A_day_without_call_time_says_that_hours_are_counted_from_the_call()
    {
        var episode = Kit.Episode(Kit.Drink("Salt Lane Sour")) with { CallTime = null };

        var order = Planned(episode);

        Assert.Contains(order.Findings, finding => finding.Kind == FindingCatalogue.CallNotFixed);
        Assert.Equal("10 min after the call", order.Clock.Say(order.Blocks[1].Start));
    }
}
