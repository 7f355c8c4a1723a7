using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures.Writing;

namespace Barshow.Engine.Measures.Jiggers;

/// <summary>Finds the fewest pours with the jiggers at hand that make an amount.</summary>
public static class JiggerPlanner
{
    private static readonly Rational OneMillilitre = Rational.One;

    /// <summary>How far pours may lie from an amount and still be it: the smaller of 1 ml and 3 %.</summary>
    public static Rational Tolerance(Rational millilitres)
    {
        var share = millilitres * PourableGrid.Tolerance;
        return share < OneMillilitre ? share : OneMillilitre;
    }

    /// <summary>The fewest pours that reach the amount; among as few, the nearest; where none reach it, the nearest there are, with a finding.</summary>
    /// <param name="wanted">A volume above nought; of a range the middle is poured.</param>
    /// <param name="marks">What the jiggers show.</param>
    /// <param name="convention">How ounces and millilitres are matched.</param>
    /// <param name="subject">What it is about, in the user's words.</param>
    /// <param name="sizes">The house's own sizes.</param>
    /// <exception cref="ArgumentException">The amount or a mark is no volume above nought.</exception>
    public static JiggerPlan Plan(Measure wanted, IReadOnlyList<JiggerMark> marks, Convention convention, string subject, BarSizes? sizes = null)
    {
        ArgumentNullException.ThrowIfNull(marks);
        var target = Volume(wanted, convention, sizes, nameof(wanted));
        var coins = marks
            .Select(mark => (Mark: mark, Millilitres: Volume(mark.Amount, convention, sizes, nameof(marks))))
            .DistinctBy(coin => coin.Millilitres)
            .OrderByDescending(coin => coin.Millilitres)
            .ToArray();
        if (coins.Length == 0)
            return new(wanted, [], Rational.Zero, -target, [NoJigger(wanted, subject)]);

        var sums = new Sums(target, Tolerance(target), [.. coins.Select(coin => coin.Millilitres)]);
        var best = sums.FewestPours();
        var pours = sums.PoursOf(best)
            .GroupBy(coin => coin)
            .OrderBy(group => group.Key)
            .Select(group => new Pour(coins[group.Key].Mark, group.Count()))
            .ToArray();
        var plan = new JiggerPlan(wanted, pours, best, best - target, []);
        return plan.Off.Abs() <= Tolerance(target) ? plan : plan with { Findings = [OutOfReach(plan, target, subject)] };
    }

    private static Rational Volume(Measure measure, Convention convention, BarSizes? sizes, string name) =>
        measure.InMillilitres(convention, sizes) is { Sign: > 0 } millilitres
            ? millilitres
            : throw new ArgumentException($"{measure} is no volume above nought.", name);

    private static Finding NoJigger(Measure wanted, string subject) => new(FindingCatalogue.OutOfJiggersReach, subject,
        $"No jigger is in the kit, so {MeasureWriter.Show(wanted)} cannot be measured.",
        "Add the jiggers on the bench, each with its marks.");

    private static Finding OutOfReach(JiggerPlan plan, Rational target, string subject)
    {
        var off = plan.Off.Abs();
        var percent = (off / target).ToDouble().ToString("0.# %", CultureInfo.InvariantCulture);
        return new(FindingCatalogue.OutOfJiggersReach, subject,
            $"{MeasureWriter.Show(plan.Wanted)} cannot be poured with the jiggers at hand: the nearest is {plan.Show()}, {Millilitres(off)} or {percent} {(plan.Off.Sign > 0 ? "more" : "less")}.",
            $"Use a jigger that shows {Millilitres(target)}, or change the amount to one that can be poured.")
        {
            Expected = plan.Show(),
        };
    }

    private static string Millilitres(Rational amount) => MeasureWriter.Show(Measure.Of(amount.RoundTo(new(1, 100)), Unit.Millilitre));
}
