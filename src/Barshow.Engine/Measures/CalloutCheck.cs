using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures.Writing;

namespace Barshow.Engine.Measures;

/// <summary>What is to be said of a callout: sides that disagree, an amount that no jigger shows, a metric amount that no ounce says.</summary>
public static class CalloutCheck
{
    /// <summary>The findings of one callout.</summary>
    /// <param name="callout">The callout.</param>
    /// <param name="subject">What it is about, in the user's words: the ingredient or the line.</param>
    /// <param name="grid">The marks that can be poured; the convention's usual ones when not given.</param>
    public static IReadOnlyList<Finding> Findings(Callout callout, string subject, PourableGrid? grid = null)
    {
        ArgumentNullException.ThrowIfNull(callout);
        if (callout is not { Ounces: { } ounces, Millilitres: { } millilitres })
            return [];
        grid ??= PourableGrid.For(callout.Convention);
        var isMetric = callout.Measure.Unit!.IsMetric;
        var isWrittenTwice = callout.WrittenBeside is not null && !callout.Agrees;
        if (isWrittenTwice)
            return [PairDisagrees(callout, ounces.WithoutOpen(), millilitres.WithoutOpen(), subject, grid)];
        if (!(isMetric ? callout.MillilitresPourable : callout.OuncesPourable))
            return [NotPourable(isMetric ? millilitres.WithoutOpen() : ounces.WithoutOpen(), subject, grid)];
        if (!(isMetric ? callout.OuncesPourable : callout.MillilitresPourable) && callout.WrittenBeside is null)
            return [NoAgreeingPair(isMetric ? millilitres.WithoutOpen() : ounces.WithoutOpen(), subject, grid)];
        return [];
    }

    private static Finding PairDisagrees(Callout callout, Measure ounces, Measure millilitres, string subject, PourableGrid grid)
    {
        var percent = Percent(Math.Abs(callout.Gap));
        var fitting = grid.MillilitresFor(ounces);
        return new(FindingCatalogue.PairDisagrees, subject,
            $"{MeasureWriter.Show(ounces)} stands beside {MeasureWriter.Show(millilitres)}, {percent} {(callout.Gap > 0 ? "more" : "less")} than the {MeasureWriter.Show(Converted(ounces, callout.Convention))} it makes.",
            $"Say {MeasureWriter.Show(fitting)} with {MeasureWriter.Show(ounces)}{Alternative(millilitres, grid)}.")
        {
            Said = MeasureWriter.Show(millilitres),
            Expected = MeasureWriter.Show(fitting),
        };
    }

    // A gap beyond the limit is never printed as the limit: "3.02 %", not "3 %".
    private static string Percent(double gap)
    {
        var limit = PourableGrid.Tolerance.ToDouble();
        var decimals = 1;
        while (decimals < 8 && Math.Round(100 * gap, decimals) == 100 * limit && gap > limit)
            decimals++;
        return (100 * gap).ToString($"0.{new string('#', decimals)}", CultureInfo.InvariantCulture) + " %";
    }

    private static string Alternative(Measure millilitres, PourableGrid grid) =>
        grid.OuncesFor(millilitres) is var other && PourableGrid.ShowsOunces(other)
            ? $", or {MeasureWriter.Show(other)} with {MeasureWriter.Show(millilitres)}"
            : "";

    private static Finding NotPourable(Measure written, string subject, PourableGrid grid)
    {
        var isMetric = written.Unit!.IsMetric;
        var marks = isMetric
            ? $"steps of {MeasureWriter.Show(Measure.Of(grid.MillilitreStep, Unit.Millilitre))}"
            : "quarters and thirds of an ounce";
        var nearest = Nearest(written, grid);
        return new(FindingCatalogue.NotPourable, subject,
            $"{MeasureWriter.Show(written)} lies between the marks of a jigger, which go in {marks}.",
            $"Pour {Callout.Of(nearest, grid.Convention, grid: grid).Show(!isMetric)}.")
        {
            Said = MeasureWriter.Show(written),
            Expected = MeasureWriter.Show(nearest),
        };
    }

    private static Finding NoAgreeingPair(Measure written, string subject, PourableGrid grid)
    {
        var isMetric = written.Unit!.IsMetric;
        var nearest = Nearest(written, grid);
        var callout = Callout.Of(nearest, grid.Convention, grid: grid);
        var gap = Math.Abs(((written.Middle!.Value * written.Unit.MillilitresUnder(grid.Convention)!.Value
            / callout.Measure.InMillilitres(grid.Convention)!.Value) - 1).ToDouble());
        return new(FindingCatalogue.NoAgreeingPair, subject,
            isMetric
                ? $"No quarter or third of an ounce comes within 3 % of {MeasureWriter.Show(written)}."
                : $"No mark in millilitres comes within 3 % of {MeasureWriter.Show(written)}.",
            $"Pour {callout.Show(!isMetric)}, {Percent(gap)} away, or rescale the drink so that every line can be said in both units.")
        {
            Said = MeasureWriter.Show(written),
            Expected = callout.Show(!isMetric),
        };
    }

    // The nearest amount that can be both poured and said: ounces on the grid whose millilitres are on it too.
    private static Measure Nearest(Measure written, PourableGrid grid)
    {
        var each = written.Unit!.MillilitresUnder(grid.Convention)!.Value;
        var ounce = grid.Convention.MillilitresPerOunce();
        var (low, high) = (End(written.Low!.Value), End(written.High!.Value));
        var ounces = Measure.Between(low, high, Unit.Ounce);
        return written.Unit.IsMetric ? grid.MillilitresFor(ounces) : ounces;

        Rational End(Rational amount)
        {
            var exact = amount * each / ounce;
            var smallest = new Rational(1, 4);
            return exact < smallest ? smallest : PourableGrid.NearestOunces(exact);
        }
    }

    private static Measure Converted(Measure ounces, Convention convention)
    {
        var each = ounces.Unit!.MillilitresUnder(convention)!.Value;
        return Measure.Between((ounces.Low!.Value * each).RoundTo(new(1, 100)), (ounces.High!.Value * each).RoundTo(new(1, 100)), Unit.Millilitre);
    }
}
