using Barshow.Engine.Measures;
using Barshow.Engine.Shooting;
using Barshow.Engine.Shooting.AsPoured;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Shooting;

public class BenchCardTests
{
    [Fact]
    public void The_cards_come_in_the_order_of_filming()
    {
        var episode = Kit.Episode(Kit.Drink("Sour 1"), Kit.Drink("Long 1", MethodKind.Built, Kit.Highball), Kit.Drink("Sour 2", pin: Barshow.Engine.Episodes.Pin.Opener));
        var plan = ShootPlan.Of(episode, Kit.Bar());

        Assert.Equal(plan.Order.ShootOrder, BenchCards.Of(episode, Kit.Bar(), plan).Select(card => card.Drink));
    }

    [Fact]
    public void An_amount_is_shown_in_both_units_and_spelled_out()
    {
        var line = Assert.Single(BenchCards.Of(Kit.Episode(Kit.Drink("Sour 1", rum: 45)), Kit.Bar(), null)).Lines[0];

        Assert.Equal(("1½ oz", "45 ml", "one and a half ounces, forty-five mil"), (line.First.Replace('\u00A0', ' '), line.Second.Replace('\u00A0', ' '), line.Spoken));
    }

    [Fact]
    public void Every_step_that_one_tap_logs_is_an_amount_that_can_be_read_back()
    {
        var line = Assert.Single(BenchCards.Of(Kit.Episode(Kit.Drink("Sour 1", syrup: 5)), Kit.Bar(), null)).Lines[2];

        Assert.Equal(["5/2 ml", "15/2 ml", "10 ml", "15 ml"], line.Steps.Select(step => step.Measure));
        Assert.All(line.Steps, step => Assert.Equal(step.Measure, Measure.Parse(step.Measure).ToString()));
    }

    [Fact]
    public void A_hard_shake_is_timed_for_twelve_seconds_unless_the_spec_says_otherwise()
    {
        var shaken = Kit.Drink("Sour 1");
        var unsaid = shaken with { Spec = shaken.Spec with { Method = new(MethodKind.Shaken) } };
        var longer = shaken with { Spec = shaken.Spec with { Method = new(MethodKind.Shaken, 20) } };
        var built = Kit.Drink("Long 1", MethodKind.Built) is var drink ? drink with { Spec = drink.Spec with { Method = new(MethodKind.Built) } } : shaken;

        Assert.Equal([12, 20, null], new[] { unsaid, longer, built }.Select(each => BenchCards.Of(Kit.Episode(each), Kit.Bar(), null)[0].TimerSeconds));
    }
}
