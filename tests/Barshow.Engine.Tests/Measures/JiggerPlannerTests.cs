using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Jiggers;
using CsCheck;

namespace Barshow.Engine.Tests.Measures;

/// <summary>The fewest pours with the jiggers at hand.</summary>
public class JiggerPlannerTests
{
    private static readonly JiggerMark[] DoubleJigger = Marks("1 oz", "3/4 oz", "1/2 oz", "2 oz", "3/2 oz");

    [Theory]
    [InlineData("2 oz", "2 oz")]
    [InlineData("7/4 oz", "1 oz, ¾ oz")]
    [InlineData("4 oz", "2 × 2 oz")]
    [InlineData("5/4 oz", "¾ oz, ½ oz")]
    [InlineData("22 ml", "¾ oz")]
    public void An_amount_is_poured_with_the_fewest_pours(string amount, string pours)
    {
        var plan = JiggerPlanner.Plan(Measure.Parse(amount), DoubleJigger, Convention.Bar, "gin");

        Assert.Equal(pours, plan.Show().Replace('\u00A0', ' '));
        Assert.Empty(plan.Findings);
    }

    [Fact]
    public void An_amount_out_of_reach_says_how_near_one_can_get()
    {
        var plan = JiggerPlanner.Plan(Measure.Millilitres(35), Marks("25 ml", "50 ml"), Convention.Bar, "gin");

        Assert.Equal(25, plan.Millilitres);
        var finding = Assert.Single(plan.Findings);
        Assert.Equal(FindingCatalogue.OutOfJiggersReach, finding.Kind);
        Assert.Equal("35 ml cannot be poured with the jiggers at hand: the nearest is 25 ml, 10 ml or 28.6 % less.", finding.Message.Replace('\u00A0', ' '));
        Assert.Equal("Use a jigger that shows 35 ml, or change the amount to one that can be poured.", finding.Remedy.Replace('\u00A0', ' '));
    }

    [Fact]
    public void Without_a_jigger_nothing_is_measured()
    {
        var plan = JiggerPlanner.Plan(Measure.Ounces(1), [], Convention.Bar, "gin");

        Assert.Empty(plan.Pours);
        Assert.Equal("No jigger is in the kit, so 1 oz cannot be measured.", Assert.Single(plan.Findings).Message.Replace('\u00A0', ' '));
    }

    // 3 % up to 33⅓ ml, 1 ml above it.
    [Theory]
    [InlineData("103/5 ml", true)]
    [InlineData("207/10 ml", false)]
    [InlineData("61 ml", true)]
    [InlineData("611/10 ml", false)]
    public void Pours_reach_an_amount_within_the_smaller_of_a_millilitre_and_three_percent(string amount, bool reaches) =>
        Assert.Equal(reaches, JiggerPlanner.Plan(Measure.Parse(amount), Marks("20 ml", "60 ml"), Convention.Bar, "gin").Reaches);

    [Theory]
    [InlineData("2 dash", true)]
    [InlineData("8 leaf", false)]
    [InlineData("0 oz", false)]
    public void Only_a_volume_can_be_poured(string amount, bool isVolume)
    {
        var exception = Record.Exception(() => JiggerPlanner.Plan(Measure.Parse(amount), DoubleJigger, Convention.Bar, "gin"));

        Assert.Equal(!isVolume, exception is ArgumentException);
    }

    [Fact]
    public void A_plan_is_as_good_as_trying_every_choice_of_pours() =>
        Gen.Select(Gen.Int[1, 200], Gen.Int[1, 24].Array[1, 4], Gen.OneOf(Convention.Bar, Convention.UsExact)).Sample((amount, marks, convention) =>
        {
            // Half millilitres wanted; jiggers in steps of 2.5 ml, and one of them in ounces.
            var wanted = Measure.Of(new(amount, 2), Unit.Millilitre);
            JiggerMark[] jiggers = [.. marks.Select((mark, i) => new JiggerMark($"jigger {i}", i == 0 ? Measure.Of(new(mark, 4), Unit.Ounce) : Measure.Of(new Rational(mark * 5, 2), Unit.Millilitre)))];

            var plan = JiggerPlanner.Plan(wanted, jiggers, convention, "gin");

            var coins = jiggers.Select(jigger => jigger.Amount.InMillilitres(convention)!.Value).Distinct().ToArray();
            var target = wanted.InMillilitres(convention)!.Value;
            var (count, off) = BestOfAll(target, coins, JiggerPlanner.Tolerance(target));
            Assert.Equal(plan.Millilitres, plan.Pours.Aggregate(Rational.Zero, (sum, pour) => sum + pour.Mark.Amount.InMillilitres(convention)!.Value * pour.Times));
            Assert.Equal(off, plan.Off.Abs());
            if (plan.Reaches)
                Assert.Equal(count, plan.Count);
        });

    // Every number of every coin, up to one more than reaches past the target.
    private static (int Count, Rational Off) BestOfAll(Rational target, Rational[] coins, Rational tolerance)
    {
        var best = (Count: int.MaxValue, Off: target * 1000, Reaches: false);
        Try(0, Rational.Zero, 0);
        return (best.Count, best.Off);

        void Try(int coin, Rational sum, int count)
        {
            if (count > 0)
            {
                var off = (sum - target).Abs();
                var reaches = off <= tolerance;
                var better = reaches == best.Reaches
                    ? reaches ? count < best.Count || (count == best.Count && off < best.Off) : off < best.Off
                    : reaches;
                if (better)
                    best = (count, off, reaches);
            }

            if (sum >= target || (best.Reaches && count >= best.Count))
                return;
            for (var next = coin; next < coins.Length; next++)
                Try(next, sum + coins[next], count + 1);
        }
    }

    private static JiggerMark[] Marks(params string[] amounts) => [.. amounts.Select(amount => new JiggerMark("jigger", Measure.Parse(amount)))];
}
