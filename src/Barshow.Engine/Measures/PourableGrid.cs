namespace Barshow.Engine.Measures;

/// <summary>The amounts that jiggers show: ounces in quarters and thirds, millilitres in steps, and which of the two agree.</summary>
/// <remarks>Common practice, no source. Eighths of an ounce are understood when read, and not proposed.</remarks>
public sealed record PourableGrid
{
    private static readonly Rational Quarter = new(1, 4);
    private static readonly Rational Third = new(1, 3);
    private static readonly Rational HalfTeaspoon = new(1, 2);

    /// <summary>The largest difference of two sides, over the converted ounce side, at which they still agree: 3 %. It lets ¾ oz stand beside 22 ml (2.2 %) and not beside 25 ml (11.1 %).</summary>
    public static Rational Tolerance { get; } = new(3, 100);

    private PourableGrid(Convention convention, Rational step)
    {
        Convention = convention;
        MillilitreStep = step;
    }

    /// <summary>How ounces and millilitres are matched.</summary>
    public Convention Convention { get; }

    /// <summary>The step of the millilitre marks: 2.5, or 1.</summary>
    public Rational MillilitreStep { get; }

    /// <summary>The grid of a convention: steps of 2.5 ml, or of 1 ml under the imperial convention and where an owned jigger shows single millilitres.</summary>
    public static PourableGrid For(Convention convention, bool jiggerShowsMillilitres = false) =>
        new(convention, jiggerShowsMillilitres || convention == Convention.ImperialExact ? Rational.One : new(5, 2));

    /// <summary>Whether an ounce side can be poured; spoons and cups in halves and quarters and thirds can.</summary>
    public static bool ShowsOunces(Measure measure) => OnGrid(measure.Low) && OnGrid(measure.High);

    /// <summary>Whether a millilitre side can be poured.</summary>
    public bool ShowsMillilitres(Measure measure) => OnSteps(measure.Low) && OnSteps(measure.High);

    /// <summary>Whether an amount of millilitres lies on the grid and has ounces, or half teaspoons, that agree with it.</summary>
    public bool IsSpeakable(Rational millilitres)
    {
        var measure = Measure.Of(millilitres, Unit.Millilitre);
        return ShowsMillilitres(measure) && ShowsOunces(OuncesFor(measure));
    }

    /// <summary>The ounces, or half teaspoons, nearest to a metric measure.</summary>
    public Measure OuncesFor(Measure metric, BarSizes? sizes = null)
    {
        var each = metric.Unit!.MillilitresUnder(Convention, sizes)!.Value;
        var (low, high) = (metric.Low!.Value * each, metric.High!.Value * each);
        var ounce = Convention.MillilitresPerOunce();
        if (Nearest(low) is { } lowOunces && Nearest(high) is { } highOunces)
            return Measure.Between(lowOunces, highOunces, Unit.Ounce);
        var teaspoon = Unit.Teaspoon.MillilitresUnder(Convention)!.Value;
        if (high <= 2 * teaspoon && Teaspoons(low) is { } lowSpoons && Teaspoons(high) is { } highSpoons)
            return Measure.Between(lowSpoons, highSpoons, Unit.Teaspoon);
        return Measure.Between(ToHundredths(low / ounce), ToHundredths(high / ounce), Unit.Ounce);

        Rational? Nearest(Rational millilitres)
        {
            var exact = millilitres / ounce;
            var candidate = NearestOunces(exact);
            return candidate.Sign > 0 && (exact - candidate).Abs() / candidate <= Tolerance ? candidate : null;
        }

        Rational? Teaspoons(Rational millilitres)
        {
            var candidate = (millilitres / teaspoon).RoundTo(HalfTeaspoon);
            return candidate.Sign > 0 && (millilitres / teaspoon - candidate).Abs() / candidate <= Tolerance ? candidate : null;
        }
    }

    /// <summary>The millilitres nearest to a measure in ounces, spoons or cups.</summary>
    public Measure MillilitresFor(Measure customary, BarSizes? sizes = null)
    {
        var each = customary.Unit!.MillilitresUnder(Convention, sizes)!.Value;
        return Measure.Between(Marked(customary.Low!.Value * each), Marked(customary.High!.Value * each), Unit.Millilitre);

        Rational Marked(Rational exact)
        {
            var candidate = exact.RoundTo(MillilitreStep);
            return (candidate - exact).Abs() <= Tolerance * exact ? candidate : ToHundredths(exact);
        }
    }

    /// <summary>The quarter or third of an ounce nearest to an amount of ounces; a tie goes to the quarter.</summary>
    public static Rational NearestOunces(Rational ounces)
    {
        var (quarters, thirds) = (ounces.RoundTo(Quarter), ounces.RoundTo(Third));
        return (thirds - ounces).Abs() < (quarters - ounces).Abs() ? thirds : quarters;
    }

    /// <summary>The difference of two sides over the converted ounce side; above 0 when the millilitres are more. The end of a range that differs most counts.</summary>
    internal static Rational Gap(Measure ounces, Measure millilitres, Convention convention, BarSizes? sizes)
    {
        var each = ounces.Unit!.MillilitresUnder(convention, sizes)!.Value;
        var low = Gap(ounces.Low!.Value * each, millilitres.Low!.Value);
        var high = Gap(ounces.High!.Value * each, millilitres.High!.Value);
        return low.Abs() > high.Abs() ? low : high;
    }

    private static Rational Gap(Rational converted, Rational millilitres) =>
        converted.Sign == 0 ? (millilitres.Sign == 0 ? Rational.Zero : Rational.One) : (millilitres - converted) / converted;

    private static bool OnGrid(Rational? amount) => amount is { Sign: > 0 } value && (value.RoundTo(Quarter) == value || value.RoundTo(Third) == value);

    private bool OnSteps(Rational? amount) => amount is { Sign: > 0 } value && value.RoundTo(MillilitreStep) == value;

    private static Rational ToHundredths(Rational value)
    {
        var rounded = value.RoundTo(new(1, 100));
        // A drop or two is not nothing, and a fraction in millions is no amount that anyone reads.
        var fine = new Rational(1, 10_000);
        return rounded.Sign != 0 || value.Sign == 0 ? rounded : value < fine ? fine : value.RoundTo(fine);
    }
}
