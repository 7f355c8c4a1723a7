using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>What will do instead of an ingredient, and what must not.</summary>
internal static class StandInPart
{
    public static PartText Write(Episode episode, Bar bar, LinePrinter printer)
    {
        var used = UsedIngredient.Of(episode, bar);
        var instead = used.SelectMany(item => item.Ingredient.StandIns.Take(2).Select(standIn => Instead(item, standIn, episode, bar, printer)));
        var never = used
            .SelectMany(item => item.Ingredient.NotInstead.Select(not => Never(not, item.InSentence)))
            .Concat(episode.Lineup.SelectMany(drink => drink.Spec.NotInstead.Select(not => $"{drink.Name}: {Casing.Inside(Never(not, null))}")))
            .Concat(used
                .SelectMany(item => item.Ingredient.RegionalNames.Where(name => name.Warning is not null))
                .GroupBy(name => (name.Name, name.Warning))
                .Select(group => $"{Casing.AtStart(group.Key.Name)} ({string.Join(", ", group.Select(name => name.Region))}): {Casing.Inside(group.Key.Warning!).TrimEnd('.')}."))
            .Select(DescriptionText.Line)
            .Distinct()
            .ToList();
        var all = instead.Select(DescriptionText.Line).Distinct().Concat(never);
        return PartText.OfLines(DescriptionPart.StandIns, all) with { Short = string.Join('\n', never), ShortLoses = "what will do instead; what must not replace what stands" };
    }

    private static string Instead(UsedIngredient item, StandIn standIn, Episode episode, Bar bar, LinePrinter printer)
    {
        var name = UsedIngredient.Named(standIn.Ingredient, bar);
        var amount = item.First is { HasAmount: true, Unit.Kind: UnitKind.Volume } first && first.InMillilitres(episode.Convention, bar.House.BarSizes) is { } millilitres
            ? standIn.Ratio == 1
                ? $"{name}, the same amount"
                : $"{printer.Pourable(millilitres.ToDouble() * standIn.Ratio)} {name} for {printer.Amount(first.WithoutOpen())}"
            : name;
        var note = string.IsNullOrWhiteSpace(standIn.Note) ? "" : "; " + standIn.Note.Trim().TrimEnd('.');
        return $"No {item.InSentence}? {Casing.AtStart(amount)}{note}.";
    }

    private static string Never(NotInstead not, string? instead) =>
        $"Not {Casing.Inside(not.What)}{(instead is null ? "" : $" for {instead}")}: {Casing.Inside(not.Why).TrimEnd('.')}.";
}
