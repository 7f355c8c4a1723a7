using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Writing;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Publishing;

/// <summary>Prints the lines of a recipe: amounts in both units in the house's order, then the ingredient and how it is treated.</summary>
/// <remarks>All spaces are ordinary ones; a page that sets type puts its own between figures and units.</remarks>
public sealed class LinePrinter
{
    private readonly Convention _convention;
    private readonly House _house;

    /// <summary>Prints under an episode's convention and a house's unit order and sizes.</summary>
    public LinePrinter(Convention convention, House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        _convention = convention;
        _house = house;
    }

    /// <summary>Whether ounces stand first.</summary>
    public bool OuncesFirst => _house.UnitOrder is UnitOrder.OuncesFirst;

    /// <summary>An amount in millilitres under the episode's convention and the house's sizes; null when it is no volume or has no amount.</summary>
    public double? Millilitres(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.InMillilitres(_convention, _house.BarSizes)?.ToDouble();
    }

    /// <summary>The line as it is published: "1½ oz · 45 ml white rum", "top with soda water", "6–8 mint leaves, slapped".</summary>
    public string Line(SpecLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var name = PlainText.Line(line.Name);
        var text = AsUsed(line) is { } measure ? WithName(measure, Beside(line), name) : name;
        if (!string.IsNullOrWhiteSpace(line.Note))
            text += ", " + PlainText.Line(line.Note);
        return line.Optional ? text + " (optional)" : text;
    }

    /// <summary>The line as structured data holds it, the second unit in brackets: "1½ oz (45 ml) white rum".</summary>
    public string DataLine(SpecLine line)
    {
        var text = Line(line);
        var amount = Amount(line);
        return amount.IndexOf(" · ", StringComparison.Ordinal) is > 0 and var dot && text.StartsWith(amount, StringComparison.Ordinal)
            ? $"{amount[..dot]} ({amount[(dot + 3)..]}){text[amount.Length..]}"
            : text;
    }

    /// <summary>The amount of a line alone, as it is published: "1½ oz · 45 ml"; empty when there is none.</summary>
    public string Amount(SpecLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return AsUsed(line) is { } measure ? Amount(measure, Beside(line)) : "";
    }

    /// <summary>The callout of a line as it is published; null when it has no amount.</summary>
    public Callout? CalloutOf(SpecLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.ToPublish is { } measure ? CalloutOf(measure, Beside(line)) : null;
    }

    /// <summary>An amount: "1½ oz · 45 ml", "1 barspoon (5 ml)", "2 dashes", "top".</summary>
    public string Amount(Measure measure, Measure? beside = null)
    {
        ArgumentNullException.ThrowIfNull(measure);
        var shown = CalloutOf(measure, beside).Show(OuncesFirst).Replace('\u00A0', ' ');
        // A barspoon is no standard size, so the millilitres stand beside it.
        return measure.Unit == Unit.Barspoon && measure.InMillilitres(_convention, _house.BarSizes) is { } millilitres
            ? shown + " (" + MeasureWriter.Show(Measure.Of(millilitres, Unit.Millilitre)).Replace('\u00A0', ' ') + ")"
            : shown;
    }

    /// <summary>An amount beside the name it is of.</summary>
    public string WithName(Measure measure, Measure? beside, string name)
    {
        var amount = Amount(measure, beside);
        if (measure.Open is not { } open)
            return CountsTheThingItself(measure, name) ? amount
                : IsCutOfTheThing(measure) ? $"{Number(measure)} {name} {UnitOf(measure)}"
                : $"{amount} {name}";
        if (open is OpenMeasure.ToTaste)
            return $"{name}, {amount}";
        if (measure.HasAmount)
            return $"{amount} {name}";
        return open switch
        {
            OpenMeasure.Top or OpenMeasure.Fill or OpenMeasure.Rinse => $"{amount} with {name}",
            _ => $"{amount} of {name}",
        };
    }

    /// <summary>A computed amount rounded to what a jigger shows: to a quarter or third of an ounce, or to the step of the millilitre marks below that.</summary>
    public string Pourable(double millilitres)
    {
        var grid = PourableGrid.For(_convention);
        var exact = Rational.FromDecimal(Math.Round((decimal)millilitres, 2));
        var ounces = PourableGrid.NearestOunces(exact / _convention.MillilitresPerOunce());
        if (ounces >= new Rational(1, 4))
            return Amount(Measure.Of(ounces, Unit.Ounce));
        var marked = exact.RoundTo(grid.MillilitreStep);
        return Amount(Measure.Of(marked.Sign > 0 ? marked : exact, Unit.Millilitre));
    }

    /// <summary>Grams as a kitchen scale shows them: whole, or to half a gram below ten.</summary>
    public static string Grams(double grams) =>
        (grams >= 10 ? Math.Round(grams) : Math.Max(0.5, Math.Round(grams * 2) / 2)).ToString("#,0.#", CultureInfo.InvariantCulture) + " g";

    private Callout CalloutOf(Measure measure, Measure? beside)
    {
        var callout = Callout.Of(measure, _convention, beside, _house.BarSizes);
        // Two sides that disagree are a finding of their own; what is published is never a pair that disagrees.
        return callout.Agrees ? callout : Callout.Of(measure, _convention, null, _house.BarSizes);
    }

    // An amount that tops, floats or rinses says so.
    private static Measure? AsUsed(SpecLine line) => (line.ToPublish, line.Use) switch
    {
        ({ Open: null } measure, LineUse.Topped) => measure.As(OpenMeasure.Top),
        ({ Open: null } measure, LineUse.Floated) => measure.As(OpenMeasure.Float),
        ({ Open: null } measure, LineUse.Rinsed) => measure.As(OpenMeasure.Rinse),
        var (measure, _) => measure,
    };

    // The other side was written beside the amount of the brief: it does not belong to an amount that was changed since.
    private static Measure? Beside(SpecLine line) =>
        line.WrittenBeside is not null && line.ToPublish == line.Amounts.FirstOrDefault(amount => amount.Layer >= AmountLayer.Library)?.Measure ? line.WrittenBeside : null;

    // "8 mint leaves", not "8 leaves mint".
    private static bool IsCutOfTheThing(Measure measure) =>
        measure.Unit is { } unit && (unit == Unit.Leaf || unit == Unit.Sprig || unit == Unit.Wedge || unit == Unit.Wheel || unit == Unit.Slice || unit == Unit.Twist || unit == Unit.Cube);

    private static string Number(Measure measure) => MeasureWriter.Show(Measure.Between(measure.Low!.Value, measure.High!.Value, null)).Replace('\u00A0', ' ');

    private static string UnitOf(Measure measure) => measure.High > Rational.One ? measure.Unit!.SpokenMany : measure.Unit!.Spoken;

    // "1 egg white" of a count without a unit, "8 leaves" of "mint leaves": the unit is not said twice.
    private static bool CountsTheThingItself(Measure measure, string name) =>
        measure.Unit is { Kind: UnitKind.Count } unit && (NameFolding.Fold(name) == unit.Spoken || NameFolding.Fold(name) == unit.SpokenMany);
}
