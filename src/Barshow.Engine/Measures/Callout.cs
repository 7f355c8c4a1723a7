using Barshow.Engine.Measures.Writing;

namespace Barshow.Engine.Measures;

/// <summary>One measure shown or said in both units under a convention. A count, a dash and an open measure are shown as themselves.</summary>
public sealed record Callout
{
    private const char NoBreakSpace = '\u00A0';

    private Callout(Measure measure, Convention convention, Measure? writtenBeside)
    {
        Measure = measure;
        Convention = convention;
        WrittenBeside = writtenBeside;
    }

    /// <summary>The measure as the spec has it.</summary>
    public Measure Measure { get; }

    /// <summary>How ounces and millilitres are matched.</summary>
    public Convention Convention { get; }

    /// <summary>The other side as somebody wrote or said it; null when it is computed.</summary>
    public Measure? WrittenBeside { get; }

    /// <summary>The side in ounces, or in spoons or cups when it was written so; null for a count, a dash or an open measure.</summary>
    /// <remarks>A computed side is a quarter or third of an ounce where one agrees (or a whole or half teaspoon), else the ounces to two places.</remarks>
    public Measure? Ounces { get; private init; }

    /// <summary>The side in millilitres; null for a count, a dash or an open measure.</summary>
    /// <remarks>A computed side is a mark of the grid where one agrees, else the millilitres to two places.</remarks>
    public Measure? Millilitres { get; private init; }

    /// <summary>Whether both units can be given.</summary>
    public bool HasBothUnits => Ounces is not null && Millilitres is not null;

    /// <summary>The difference of the two sides over the converted ounce side; above 0 when the millilitres are more. The end of a range that differs most counts.</summary>
    public double Gap { get; private init; }

    /// <summary>Whether the two sides are the same amount, as near as 3 %. True where there is only one side.</summary>
    public bool Agrees { get; private init; } = true;

    /// <summary>Whether the ounce side lies on the grid. True where there is none.</summary>
    public bool OuncesPourable { get; private init; } = true;

    /// <summary>Whether the millilitre side lies on the grid. True where there is none.</summary>
    public bool MillilitresPourable { get; private init; } = true;

    /// <summary>Both units of a measure.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="convention">How ounces and millilitres are matched.</param>
    /// <param name="writtenBeside">The other side as it was written; used where it is a volume in the other unit.</param>
    /// <param name="sizes">The house's own sizes.</param>
    /// <param name="grid">The marks that can be poured; the convention's usual ones when not given.</param>
    public static Callout Of(Measure measure, Convention convention, Measure? writtenBeside = null, BarSizes? sizes = null, PourableGrid? grid = null)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var plain = new Callout(measure, convention, writtenBeside);
        if (!IsMeasuredVolume(measure))
            return plain;
        grid ??= PourableGrid.For(convention);
        var beside = writtenBeside is not null && IsMeasuredVolume(writtenBeside) && writtenBeside.Unit!.IsMetric != measure.Unit!.IsMetric ? writtenBeside : null;
        var (ounces, millilitres) = measure.Unit!.IsMetric
            ? (beside ?? grid.OuncesFor(measure, sizes), InMillilitres(measure))
            : (measure, beside is null ? grid.MillilitresFor(measure, sizes) : InMillilitres(beside));
        if (measure.Open is { } open)
            (ounces, millilitres) = (ounces.As(open), millilitres.As(open));
        var gap = PourableGrid.Gap(ounces, millilitres, convention, sizes);
        return plain with
        {
            Ounces = ounces,
            Millilitres = millilitres,
            Gap = gap.ToDouble(),
            Agrees = gap.Abs() <= PourableGrid.Tolerance,
            OuncesPourable = PourableGrid.ShowsOunces(ounces),
            MillilitresPourable = grid.ShowsMillilitres(millilitres),
        };
    }

    /// <summary>For print and screen, with no-break spaces inside: "1½ oz · 45 ml", "8 leaves", "top with 2½ oz · 75 ml".</summary>
    public string Show(bool ouncesFirst = true) => Both(MeasureWriter.Show, $"{NoBreakSpace}·{NoBreakSpace}", ouncesFirst).Replace(' ', NoBreakSpace);

    /// <summary>In ASCII: "1 1/2 oz / 45 ml".</summary>
    public string Plain(bool ouncesFirst = true) => Both(MeasureWriter.Plain, " / ", ouncesFirst);

    /// <summary>As it is said: "one and a half ounces, forty-five mil".</summary>
    public string Say(bool ouncesFirst = true) => Both(MeasureWriter.Say, ", ", ouncesFirst);

    private string Both(Func<Measure, string> write, string join, bool ouncesFirst)
    {
        if (Ounces is null || Millilitres is null)
            return write(Measure);
        var (first, second) = ouncesFirst ? (Ounces, Millilitres) : (Millilitres, Ounces);
        var amounts = write(first.WithoutOpen()) + join + write(second.WithoutOpen());
        return Measure.Open is { } open ? MeasureWriter.WithOpen(open, amounts) : amounts;
    }

    private static bool IsMeasuredVolume(Measure measure) => measure is { HasAmount: true, Unit.Kind: UnitKind.Volume };

    private static Measure InMillilitres(Measure metric)
    {
        var each = metric.Unit!.Millilitres!.Value;
        return Measure.Between(metric.Low!.Value * each, metric.High!.Value * each, Unit.Millilitre);
    }
}
