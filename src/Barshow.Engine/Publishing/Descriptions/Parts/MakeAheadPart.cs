using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>House preps, scaled to what one drink takes and to what each drink made once takes, with how they are made and how long they keep.</summary>
internal static class MakeAheadPart
{
    public static PartText Write(DemandList viewer, Bar bar, LinePrinter printer)
    {
        var preps = viewer.Preps.Where(prep => prep.Prep.Prep is not null).ToList();
        return PartText.OfLines(DescriptionPart.MakeAhead, preps.Select(prep => Whole(prep, bar, printer))) with
        {
            Short = string.Join('\n', preps.Select(prep => Short(prep, bar, printer))),
            ShortLoses = "the steps and the amounts for one drink",
        };
    }

    private static string Whole(PrepDemand prep, Bar bar, LinePrinter printer)
    {
        var lines = new List<string> { DescriptionText.Line(prep.Prep.Name) };
        var each = prep.Parts.Select(part => part.Each.Amount).DefaultIfEmpty(0).Max();
        if (prep.Millilitres <= 0)
        {
            lines.Add($"One batch: {Inputs(prep, 1, bar, printer)}");
        }
        else
        {
            lines.Add($"For one drink, {printer.Pourable(each)}: {Inputs(prep, each / prep.YieldMillilitres, bar, printer)}");
            if (prep.Millilitres > each * 1.01)
                lines.Add($"For all {prep.Parts.Select(part => part.Drink).Distinct().Count()}, {printer.Pourable(prep.Millilitres)}: {Inputs(prep, prep.Batches, bar, printer)}");
        }

        lines.AddRange(prep.Prep.Prep!.Steps.Select(DescriptionText.Line));
        lines.Add(Keeps(prep.Prep));
        return string.Join('\n', lines.Where(line => line.Length > 0));
    }

    private static string Short(PrepDemand prep, Bar bar, LinePrinter printer) => string.Join(' ', new[]
    {
        prep.Millilitres <= 0
            ? $"{DescriptionText.Line(prep.Prep.Name)}: {Inputs(prep, 1, bar, printer)}."
            : $"{DescriptionText.Line(prep.Prep.Name)}, {printer.Pourable(prep.Millilitres)}: {Inputs(prep, prep.Batches, bar, printer)}.",
        Keeps(prep.Prep),
    }.Where(words => words.Length > 0));

    private static string Inputs(PrepDemand prep, double batches, Bar bar, LinePrinter printer) =>
        string.Join(", ", prep.Prep.Prep!.Inputs.Select(input => Input(input, batches, bar, printer)));

    private static string Input(PrepInput input, double batches, Bar bar, LinePrinter printer)
    {
        var name = UsedIngredient.Named(input.Ingredient, bar);
        var note = string.IsNullOrWhiteSpace(input.Note) ? "" : " (" + input.Note.Trim() + ")";
        if (input.Amount.Middle is not { } middle)
            return DescriptionText.Line(name + note);
        var amount = middle.ToDouble() * batches;
        return DescriptionText.Line(input.Amount.Unit switch
        {
            { Grams: { } grams } => LinePrinter.Grams(amount * grams.ToDouble()) + " " + name,
            { Kind: UnitKind.Volume } => printer.Pourable(printer.Millilitres(input.Amount)!.Value * batches) + " " + name,
            { } unit => Pieces(amount) + " " + (Math.Ceiling(amount) > 1 ? unit.SpokenMany : unit.Spoken) + " " + name,
            null => Pieces(amount) + " " + name,
        } + note);
    }

    // Things that are counted are not cut finer than a half.
    private static string Pieces(double amount) => (amount > 1 ? Math.Ceiling(amount) : Math.Ceiling(amount * 2) / 2) switch
    {
        0.5 => "½",
        var pieces => pieces.ToString("0", CultureInfo.InvariantCulture),
    };

    private static string Keeps(Ingredient prep) => prep.Fresh is { } fresh
        ? $"Best within {Span(fresh.Best)}{(fresh.Keep > fresh.Best ? $", keep {Span(fresh.Keep)} at most" : "")}, cold and covered."
        : "";

    /// <summary>A keeping time: "6 hours", "3 days", "2 weeks".</summary>
    public static string Span(TimeSpan time)
    {
        var (count, unit) = time switch
        {
            { TotalDays: >= 14 } when time.TotalDays % 7 == 0 => ((long)time.TotalDays / 7, "week"),
            { TotalHours: >= 48 } => ((long)time.TotalDays, "day"),
            { TotalHours: >= 1 } => ((long)time.TotalHours, "hour"),
            _ => ((long)time.TotalMinutes, "minute"),
        };
        return string.Create(CultureInfo.InvariantCulture, $"{count} {unit}{(count == 1 ? "" : "s")}");
    }
}
