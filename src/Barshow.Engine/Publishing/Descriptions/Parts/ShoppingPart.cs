using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>What a viewer buys to make each drink once, and how far the first few things go.</summary>
internal static class ShoppingPart
{
    public static PartText Write(Episode episode, Basket? basket, BasketLadder? ladder)
    {
        if (basket is null)
            return new(DescriptionPart.Shopping, "");
        var list = string.Join('\n', Items(basket).Append(AtHome(basket)).Where(line => line.Length > 0));
        var steps = InFewWords(episode, ladder);
        return steps.Length == 0
            ? new(DescriptionPart.Shopping, list)
            : new(DescriptionPart.Shopping, list + "\n" + steps, list, "what the first few things make");
    }

    /// <summary>What is bought, a line each.</summary>
    public static IEnumerable<string> Items(Basket basket) => basket.Items.Select(item => DescriptionText.Line(Item(item)));

    /// <summary>What the home is assumed to have, a line; empty for nothing.</summary>
    public static string AtHome(Basket basket) => basket.AtHome.Count == 0
        ? ""
        : DescriptionText.Line("From your kitchen: " + string.Join(", ", basket.AtHome.Select(item => Casing.Inside(item.Name))));

    /// <summary>The ladder, a line a step: "With white rum and limes: 2 of 9 drinks (Harbour Sour, Dune)".</summary>
    public static IReadOnlyList<string> Ladder(Episode episode, BasketLadder? ladder) =>
        ladder is null || ladder.Steps.Count < 2 ? [] : [.. ladder.Steps.SkipLast(1).Select(step => Step(episode, step)), Whole(episode, ladder.Steps[^1])];

    // "White rum, lime: 2 drinks (Daiquiri, Canchánchara) + soda water: 3 (Mojito)": a step that only adds to the one before says what it adds.
    private static string InFewWords(Episode episode, BasketLadder? ladder)
    {
        if (ladder is null || ladder.Steps.Count < 2)
            return "";
        var words = new List<string>();
        LadderStep? before = null;
        foreach (var step in ladder.Steps)
        {
            var adds = before is { } last && last.Buy.All(step.Buy.Contains) && last.Drinks.All(step.Drinks.Contains);
            var buy = string.Join(", ", step.Buy.Except(adds ? before!.Buy : []).Select(item => Casing.Inside(item.Name)));
            var drinks = string.Join(", ", step.Drinks.Except(adds ? before!.Drinks : []).Select(drink => NameOf(episode, drink)));
            words.Add(string.Create(CultureInfo.InvariantCulture, $"{(adds ? "+ " : "")}{buy}: {step.Drinks.Count} ({(step.Drinks.Count == episode.Lineup.Count && !adds ? "all" : drinks)})"));
            before = step;
        }

        return DescriptionText.Line("How many drinks you can make with " + string.Join("; ", words));
    }

    private static string Item(BasketItem item)
    {
        var name = Casing.Inside(item.Name);
        var optional = item.Optional ? " (optional)" : "";
        var need = item.Need.Amount > 0 && item.Packs.Count > 0 && item.Need.Kind is not QuantityKind.Pieces ? $", {item.Need} used" : "";
        return $"{Casing.AtStart(name)}: {ToBuy(item)}{need}{optional}";
    }

    /// <summary>What to buy; whole pieces are counted, not called packs of one.</summary>
    public static string ToBuy(BasketItem item) => item.Packs is [{ Pack.Holds: { Unit: null, Open: null } holds } only] && holds == Measure.Of(1, null)
        ? only.Count.ToString(CultureInfo.InvariantCulture)
        : item.ToBuy;

    private static string Step(Episode episode, LadderStep step) => DescriptionText.Line(string.Create(CultureInfo.InvariantCulture,
        $"With {Listed(step.Buy.Select(item => Casing.Inside(item.Name)))}: {step.Drinks.Count} of {episode.Lineup.Count} drinks ({string.Join(", ", step.Drinks.Select(drink => NameOf(episode, drink)))})"));

    private static string Whole(Episode episode, LadderStep step) => DescriptionText.Line(string.Create(CultureInfo.InvariantCulture,
        $"With all {step.Things} things needed: {step.Drinks.Count} of {episode.Lineup.Count} drinks"));

    private static string NameOf(Episode episode, Slug drink) => episode.Lineup.FirstOrDefault(item => item.Spec.Slug == drink)?.Name ?? drink.Text;

    private static string Listed(IEnumerable<string> names)
    {
        var all = names.ToList();
        return all.Count switch
        {
            0 => "what the kitchen has",
            1 => all[0],
            _ => string.Join(", ", all.SkipLast(1)) + " and " + all[^1],
        };
    }
}
