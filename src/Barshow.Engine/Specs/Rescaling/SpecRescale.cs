using System.Globalization;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Rescaling;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Specs.Rescaling;

/// <summary>A whole spec rescaled so that every measured line can be poured and said in both units.</summary>
public sealed record SpecRescale
{
    // Less than a twentieth of a percent is shown as nought.
    private const double LeastBendSaid = 0.0005;

    /// <summary>The spec with its new amounts on the episode's layer, each with its reason.</summary>
    public required Spec Spec { get; init; }

    /// <summary>The common factor and the bend of each measured line.</summary>
    public required Rescale Rescale { get; init; }

    /// <summary>The drink as it was.</summary>
    public required DrinkAnalysis Before { get; init; }

    /// <summary>The drink as it is then.</summary>
    public required DrinkAnalysis After { get; init; }

    /// <summary>How many percent by volume stronger it is before ice; below nought for weaker.</summary>
    public double StrengthPoints => (After.StartStrength - Before.StartStrength) * 100;

    /// <summary>By what share its sugar to acid rises; below nought for falls; null without acid.</summary>
    public double? SugarToAcidBend => Before.SugarToAcid is > 0 and var before && After.SugarToAcid is { } after ? after / before - 1 : null;

    /// <summary>The whole change in words.</summary>
    public string Sentence => Rescale.LargestBend < LeastBendSaid
        ? string.Create(CultureInfo.InvariantCulture, $"At {Factor} times its size every amount can be poured and said, and no ratio bends.")
        : string.Create(CultureInfo.InvariantCulture, $"At {Factor} times its size every amount can be poured and said; no line bends by more than {Rescale.LargestBend * 100:0.0} %: {Strength}{Balance}.");

    private string Factor => Rescale.Factor.ToDouble().ToString("0.00", CultureInfo.InvariantCulture);

    private string Strength => string.Create(CultureInfo.InvariantCulture, $"{After.StartStrength * 100:0.0} % before ice instead of {Before.StartStrength * 100:0.0} %");

    private string Balance => Before.SugarToAcid is { } before && After.SugarToAcid is { } after
        ? string.Create(CultureInfo.InvariantCulture, $", sugar to acid {after:0.0} instead of {before:0.0}")
        : "";

    /// <summary>The ways of rescaling that are worth offering: the least bend first, then those that stay nearer to the drink's own size. Empty when no measured line is above nought.</summary>
    /// <param name="spec">The drink.</param>
    /// <param name="setting">What it is analysed by; its convention sizes the lines.</param>
    /// <param name="grid">The marks that can be poured.</param>
    public static IReadOnlyList<SpecRescale> Find(Spec spec, AnalysisSetting setting, PourableGrid grid)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(setting);
        // The new amounts are decided for this film, so what was poured and published before has no say.
        setting = setting with { Layer = AmountLayer.Episode };
        var measured = spec.Lines.Where(line => Millilitres(line, setting) is not null).ToArray();
        var before = DrinkAnalyser.Analyse(spec, setting);
        return
        [
            .. SpeakableRescale.Find([.. measured.Select(line => Millilitres(line, setting)!.Value)], grid)
                .Select(rescale => Of(spec, measured, rescale, before, setting)),
        ];
    }

    private static SpecRescale Of(Spec spec, SpecLine[] measured, Rescale rescale, DrinkAnalysis before, AnalysisSetting setting)
    {
        var rescaled = spec with { Lines = [.. spec.Lines.Select(line => Rescaled(line, Array.IndexOf(measured, line), rescale, setting))] };
        return new() { Spec = rescaled, Rescale = rescale, Before = before, After = DrinkAnalyser.Analyse(rescaled, setting) };
    }

    private static SpecLine Rescaled(SpecLine line, int index, Rescale rescale, AnalysisSetting setting)
    {
        var measure = line.At(setting.Layer);
        if (index >= 0)
        {
            var millilitres = Measure.Of(rescale.Lines[index].To, Unit.Millilitre);
            return line.With(AmountLayer.Episode, measure!.Open is { } open ? millilitres.As(open) : millilitres, Reason);
        }

        return measure is { HasAmount: true } && Counted(measure, rescale.Factor) is { } counted && counted != measure
            ? line.With(AmountLayer.Episode, counted, Reason)
            : line;
    }

    private const string Reason = "rescaled so that every amount can be poured and said";

    // Dashes and leaves come whole, spoons in halves; no fewer than one step is left.
    private static Measure? Counted(Measure measure, Rational factor)
    {
        var step = measure.Unit is { Kind: UnitKind.Volume } || measure.Unit == Unit.Barspoon ? new Rational(1, 2) : Rational.One;
        var (low, high) = (Stepped(measure.Low!.Value), Stepped(measure.High!.Value));
        var scaled = Measure.Between(low, high, measure.Unit);
        return measure.Open is { } open ? scaled.As(open) : scaled;

        // A part is a share of the whole and stays; an amount of nought stays nought.
        Rational Stepped(Rational amount) =>
            measure.Unit is { Kind: UnitKind.Part } || amount.Sign == 0 ? amount
            : (amount * factor).RoundTo(step) is { Sign: > 0 } stepped ? stepped
            : step;
    }

    // What a jigger measures: ounces and metric volumes. Spoons, dashes and counts follow by the factor.
    private static Rational? Millilitres(SpecLine line, AnalysisSetting setting) =>
        line.At(setting.Layer) is { HasAmount: true, Unit: { } unit } measure && line.Use is not (LineUse.Rinsed or LineUse.Rimmed)
        && (unit == Unit.Ounce || unit == Unit.Millilitre || unit == Unit.Centilitre || unit == Unit.Decilitre || unit == Unit.Litre)
        && measure.InMillilitres(setting.Convention, setting.Sizes) is { Sign: > 0 } millilitres
            ? millilitres
            : null;
}
