using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
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
        var list = string.Join('\n', Items(basket));
        var steps = Ladder(episode, ladder);
        return steps.Count == 0
            ? new(DescriptionPart.Shopping, list)
            : new(DescriptionPart.Shopping, list + "\n" + string.Join('\n', steps), list, "what the first few things make");
    }

    /// <summary>The list, a line each, what the home is assumed to have last.</summary>
    public static IEnumerable<string> Items(Basket basket)
    {
        foreach (var item in basket.Items)
            yield return DescriptionText.Line(Item(item));
        if (basket.AtHome.Count > 0)
            yield return DescriptionText.Line("From your kitchen: " + string.Join(", ", basket.AtHome.Select(item => Casing.Inside(item.Name))));
    }

    /// <summary>The ladder, a line a step: "With white rum and limes: 2 of 9 drinks (Harbour Sour, Dune)".</summary>
    public static IReadOnlyList<string> Ladder(Episode episode, BasketLadder? ladder) =>
        ladder is null || ladder.Steps.Count < 2 ? [] : [.. ladder.Steps.SkipLast(1).Select(step => Step(episode, step)), Whole(episode, ladder.Steps[^1])];

    private static string Item(BasketItem item)
    {
        var name = Casing.Inside(item.Name);
        var optional = item.Optional ? " (optional)" : "";
        var need = item.Need.Amount > 0 && item.Packs.Count > 0 && item.Fruit is null ? $", {item.Need} used" : "";
        return $"{Casing.AtStart(name)}: {ToBuy(item)}{need}{optional}";
    }

    // Whole pieces are counted, not called packs of one.
    private static string ToBuy(BasketItem item) => item.Packs is [{ Pack.Holds: { Unit: null, Open: null, IsRange: false, Low: { IsWhole: true } holds } } only]
        ? (holds.Numerator * only.Count).ToString(CultureInfo.InvariantCulture)
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
