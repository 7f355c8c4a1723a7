using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Writing;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>Every drink in viewer order, every measured line in both units.</summary>
internal static class RecipePart
{
    public static PartText Write(Episode episode, Bar bar, LinePrinter printer, List<Finding> findings)
    {
        if (episode.Lineup.Count == 0)
            return new(DescriptionPart.Recipes, "");
        var drinks = episode.Lineup.Select((drink, i) => string.Join('\n', Lines(drink, i + 1, episode.Lineup.Count, bar, printer, findings)));
        return new(DescriptionPart.Recipes, Convention(episode.Convention) + "\n\n" + string.Join("\n\n", drinks));
    }

    /// <summary>How the two units are matched, a line: "1 oz = 30 ml".</summary>
    public static string Convention(Convention convention)
    {
        var millilitres = Measure.Of(convention.MillilitresPerOunce().RoundTo(new(1, 100)), Unit.Millilitre);
        return $"1 oz = {MeasureWriter.Show(millilitres).Replace('\u00A0', ' ')}";
    }

    private static IEnumerable<string> Lines(LineupDrink drink, int number, int count, Bar bar, LinePrinter printer, List<Finding> findings)
    {
        var spec = drink.Spec;
        yield return count == 1 ? DescriptionText.Line(drink.Name) : string.Create(CultureInfo.InvariantCulture, $"{number}. {DescriptionText.Line(drink.Name)}");
        foreach (var line in spec.Lines)
        {
            if (line.ToPublish is null)
                findings.Add(DescriptionSentences.AmountUnknown(drink.Name, line.Name, line.BriefLine));
            yield return Casing.AtStart(DescriptionText.Line(printer.Line(line)));
        }

        var serve = DescriptionText.Line(ServeWords.Of(spec, bar.Kit));
        if (serve.Length > 0)
            yield return serve;
    }
}
