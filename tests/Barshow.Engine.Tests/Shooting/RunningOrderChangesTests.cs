using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Shooting;

public class RunningOrderChangesTests
{
    private static readonly Episode Night = Kit.Episode(
        Kit.Drink("Salt Lane Sour", rum: 40), Kit.Drink("Long Walk", MethodKind.Built, Kit.Highball, rum: 50), Kit.Drink("Harbour Sour", rum: 60), Kit.Drink("Long Road", MethodKind.Built, Kit.Highball, rum: 70));

    [Fact]
    public void The_users_own_order_is_kept_and_its_cost_is_said()
    {
        var own = Night with { ShootOrder = [.. Night.Lineup.Select(drink => drink.Spec.Slug)] };

        var order = RunningOrderPlanner.Plan(own, Kit.Bar());

        Assert.Equal(own.ShootOrder, order.ShootOrder);
        // Two changes more, each of station 10, method 2 and glass 1.
        Assert.Equal(26, order.Override!.MoreMinutes);
        Assert.Empty(order.Override.Broken);
        Assert.StartsWith("Your own order takes 26 min more than the planner's", Assert.Single(order.Findings, finding => finding.Kind == FindingCatalogue.OrderOverridden).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_order_against_a_pin_names_the_rule_it_breaks()
    {
        var pinned = Night with { Lineup = [Night.Lineup[0] with { Pin = Pin.Closer }, .. Night.Lineup.Skip(1)], ShootOrder = [.. Night.Lineup.Select(drink => drink.Spec.Slug)] };

        var order = RunningOrderPlanner.Plan(pinned, Kit.Bar());

        Assert.Equal([new Requirement(OrderRule.CloserLast, "Salt Lane Sour")], order.Override!.Broken);
        Assert.Equal(pinned.ShootOrder, order.ShootOrder);
    }

    [Fact]
    public void Drinks_left_out_of_the_users_order_are_filmed_last_and_named()
    {
        var own = Night with { ShootOrder = [Slug.Of("Long Road"), Slug.Of("Harbour Sour")] };

        var order = RunningOrderPlanner.Plan(own, Kit.Bar());

        Assert.Equal(["long-road", "harbour-sour", "salt-lane-sour", "long-walk"], order.ShootOrder.Select(slug => slug.Text));
        Assert.Equal("Your shoot order leaves out Salt Lane Sour, Long Walk; filmed last here.", Assert.Single(order.Findings, finding => finding.Kind == FindingCatalogue.OrderIncomplete).Message);
    }

    [Fact]
    public void During_the_day_what_is_filmed_stays_and_the_rest_is_planned_from_now()
    {
        var settings = new OrderSettings
        {
            SoFar = new() { Now = TimeSpan.FromMinutes(70), Filmed = [new(Slug.Of("Long Walk"), TimeSpan.FromMinutes(12), TimeSpan.FromMinutes(55))], LastBreakEnded = TimeSpan.FromMinutes(70) },
        };

        var order = RunningOrderPlanner.Plan(Night, Kit.Bar(), settings);

        Assert.Equal("long-walk", order.ShootOrder[0].Text);
        var filmed = Assert.Single(order.Blocks, block => block.Filmed);
        Assert.Equal((TimeSpan.FromMinutes(12), TimeSpan.FromMinutes(55)), (filmed.Start, filmed.End));
        Assert.All(order.Blocks.Where(block => !block.Filmed), block => Assert.True(block.Start >= TimeSpan.FromMinutes(70)));
        // The set-up of the last take stands, so its neighbour comes next.
        Assert.Equal("long-road", order.ShootOrder[1].Text);
        Assert.DoesNotContain(order.Blocks, block => block.Kind is BlockKind.Intro);
        var verdict = RunningOrderCheck.Check(order, Night, Kit.Bar(), settings);
        Assert.Empty(verdict.Faults);
        Assert.Empty(verdict.Broken);
    }

    [Fact]
    public void A_day_that_ran_late_finds_the_syrup_gone_and_makes_it_again()
    {
        var episode = Kit.Episode(Kit.Drink("Salt Lane Sour"), Kit.Drink("Garden Fizz", basil: true));
        var settings = new OrderSettings { SoFar = new() { Now = TimeSpan.FromMinutes(110), Filmed = [new(Slug.Of("Salt Lane Sour"), TimeSpan.FromMinutes(12), TimeSpan.FromMinutes(105))], LastBreakEnded = TimeSpan.FromMinutes(110) } };

        var order = RunningOrderPlanner.Plan(episode, Kit.Bar(), settings);

        Assert.Single(order.Blocks, block => block.Kind is BlockKind.Batch);
        Assert.Empty(RunningOrderCheck.Check(order, episode, Kit.Bar(), settings).Broken);
    }

    [Fact]
    public void A_stopped_plan_says_so()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();

        var order = RunningOrderPlanner.Plan(Night, Kit.Bar(), cancel: stopped.Token);

        Assert.True(order.Stopped);
        Assert.False(order.Proven);
    }

    [Fact]
    public void What_the_order_costs_is_told_part_by_part()
    {
        var order = RunningOrderPlanner.Plan(Night, Kit.Bar());

        Assert.Contains(new("resets", 18, "minutes", "3 resets"), order.Costs);
        Assert.Contains(new("changes of set-up", 13, "minutes", "before Long Walk: station from shaker to glass, method, glass"), order.Costs);
        Assert.Equal(31, order.Levels[0].Value);
    }
}
