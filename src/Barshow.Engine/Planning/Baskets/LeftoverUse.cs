using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>What could use up something that is over.</summary>
/// <param name="Item">The thing with what is left of it.</param>
/// <param name="Drinks">Drinks of the library that use it, the readiest first.</param>
public sealed record LeftoverUse(BasketItem Item, IReadOnlyList<LeftoverDrink> Drinks)
{
    private const int MostDrinks = 3;

    /// <summary>For everything that is over in a basket, what could use it up.</summary>
    /// <param name="basket">The basket.</param>
    /// <param name="library">The drinks of the house; those of the lineup itself are left out.</param>
    /// <param name="lineup">The drinks that the basket is for.</param>
    /// <param name="bar">What drinks are looked up in.</param>
    public static IReadOnlyList<LeftoverUse> Of(Basket basket, IReadOnlyList<Spec> library, IReadOnlyList<Slug> lineup, Bar bar)
    {
        ArgumentNullException.ThrowIfNull(basket);
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(lineup);
        ArgumentNullException.ThrowIfNull(bar);
        var there = basket.Items.Concat(basket.AtHome).Select(item => item.Slug).ToHashSet();
        var others = library.Where(spec => !lineup.Contains(spec.Slug)).Select(spec => (Spec: spec, Needs: NeedsOf(spec, bar))).ToList();
        return [.. basket.Leftovers.Select(item => new LeftoverUse(item,
            [.. others.Where(drink => drink.Needs.ContainsKey(item.Slug))
                .Select(drink => new LeftoverDrink(drink.Spec.Slug, drink.Spec.Name, [.. drink.Needs.Where(need => !there.Contains(need.Key) && !need.Value.AtHome).Select(need => need.Value.Name)]))
                .OrderBy(drink => drink.Missing.Count).ThenBy(drink => drink.Drink)
                .Take(MostDrinks)]))];
    }

    private static Dictionary<Slug, (string Name, bool AtHome)> NeedsOf(Spec spec, Bar bar)
    {
        var basket = BasketPlanner.Plan(new Episode { Slug = spec.Slug, Title = "", Lineup = [new LineupDrink { Spec = spec with { Garnish = null } }] }, bar, DemandFor.Viewer);
        return basket.Items.Select(item => (item, false)).Concat(basket.AtHome.Select(item => (item, true)))
            .ToDictionary(entry => entry.item.Slug, entry => (entry.item.Name, entry.Item2));
    }
}

/// <summary>A drink that would use a leftover.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Name">Its name.</param>
/// <param name="Missing">What would have to be bought for it beside what is there, by name.</param>
public sealed record LeftoverDrink(Slug Drink, string Name, IReadOnlyList<string> Missing);
