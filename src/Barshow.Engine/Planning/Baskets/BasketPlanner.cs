using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Planning.Citrus;
using Barshow.Engine.Planning.Demand;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>Turns a demand into what is bought.</summary>
public sealed class BasketPlanner
{
    private readonly Episode _episode;
    private readonly Bar _bar;
    private readonly DemandList _demand;
    private readonly FruitPlans _fruit;
    private readonly List<Finding> _findings = [];

    private BasketPlanner(Episode episode, Bar bar, DemandList demand)
    {
        _episode = episode;
        _bar = bar;
        _demand = demand;
        _fruit = FruitPlans.Of(demand, bar.Ingredients);
    }

    /// <summary>The basket of an episode.</summary>
    public static Basket Plan(Episode episode, Bar bar, DemandFor demandFor) => Plan(episode, bar, DemandPlanner.Of(episode, bar, demandFor));

    /// <summary>The basket that covers a demand already counted.</summary>
    public static Basket Plan(Episode episode, Bar bar, DemandList demand)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        ArgumentNullException.ThrowIfNull(demand);
        return new BasketPlanner(episode, bar, demand).Result();
    }

    private Basket Result()
    {
        var items = Items().ToList();
        bool AtHome(BasketItem item) => _demand.For is DemandFor.Viewer
            ? item.Ingredient is { Staple: true } or { Kind: IngredientKind.Water, Packs.Count: 0 }
            : item.Ingredient is { Kind: IngredientKind.Water, Packs.Count: 0 } || (item.Packs.Count == 0 && item.OnHand.Amount > 0 && item.OnHand.Amount >= item.Need.Amount - Quantity.Least);
        return new(_demand.For, [.. items.Where(item => !AtHome(item))], [.. items.Where(AtHome)], _bar.House.Currency, [.. _demand.Findings, .. _fruit.Findings, .. _findings])
        {
            Demand = _demand,
            Fruit = _fruit,
        };
    }

    private IEnumerable<BasketItem> Items()
    {
        var planned = new HashSet<Names.Slug>();
        foreach (var need in _demand.Ingredients)
        {
            if (FruitPlans.FruitBehind(need.Ingredient, _bar.Ingredients) is { } fruit && _fruit[fruit.Slug] is { } plan)
            {
                if (planned.Add(fruit.Slug))
                    yield return Item(fruit.Slug, fruit.Name, fruit, [Quantity.Pieces(plan.Whole)], plan.Parts) with { Fruit = plan };
                continue;
            }

            // What a leftover gives is not bought.
            if (need.Parts.All(part => part.FromLeftovers))
                continue;
            yield return Item(need.Slug, need.Name, need.Ingredient, need.Totals, need.Parts);
        }
    }

    private BasketItem Item(Names.Slug slug, string name, Ingredient? ingredient, IReadOnlyList<Quantity> totals, IReadOnlyList<DemandPart> parts)
    {
        var item = new BasketItem { Slug = slug, Name = name, Ingredient = ingredient, Parts = parts, Need = totals.Count > 0 ? totals[0] : parts[0].Amount };
        if (ingredient is null)
            return item;
        foreach (var pack in ingredient.Packs.Where(pack => !Buying.IsSound(pack)))
            _findings.Add(PlanningFindings.PackEmpty(ingredient, pack));
        var packs = Buying.PacksOf(ingredient, _episode.Bottle);
        if (Buying.Of(ingredient, totals, packs, _bar.House.BarSizes) is not { Kind: var kind, Packs: var held })
        {
            var need = string.Join(" and ", totals);
            if (ingredient.Kind is IngredientKind.Water)
                return WithoutPacks(item with { Need = Quantity.Millilitres(0) }, ingredient, totals) is { Need.Amount: > 0 } poured ? poured : item;
            _findings.Add(packs.Count == 0 ? PlanningFindings.PackUnknown(name, need.Length > 0 ? need : "A little") : PlanningFindings.PackInOtherUnit(ingredient, need));
            return WithoutPacks(item, ingredient, totals);
        }

        var amount = totals.Sum(total => Conversion.To(kind, total, ingredient)!.Value);
        var onHand = OnHand(ingredient, kind);
        // What is only wanted at hand takes the smallest pack when there is none.
        var missing = amount > 0 ? amount - onHand : onHand > 0 ? 0 : Quantity.Least * 2;
        var chosen = PackCover.Cheapest(held, missing);
        foreach (var unpriced in chosen.Where(pack => pack.Pack.Price is null))
            _findings.Add(PlanningFindings.PriceMissing(ingredient, unpriced.Pack));
        var bought = chosen.Sum(pack => pack.Count * held.First(entry => ReferenceEquals(entry.Pack, pack.Pack)).Holds);
        return item with
        {
            Need = new(amount, kind),
            OnHand = new(onHand, kind),
            Packs = chosen,
            Cost = chosen.All(pack => pack.Pack.Price is not null) ? chosen.Sum(pack => pack.Count * pack.Pack.Price!.Value) : null,
            Left = new(Math.Max(0, bought + onHand - amount), kind),
        };
    }

    private BasketItem WithoutPacks(BasketItem item, Ingredient ingredient, IReadOnlyList<Quantity> totals)
    {
        var kind = item.Need.Kind;
        var converted = totals.Select(total => Conversion.To(kind, total, ingredient)).ToList();
        if (converted.Any(amount => amount is null))
            return item;
        var need = converted.Sum(amount => amount!.Value);
        // Whole pieces are bought even when no pack is known.
        var whole = kind is QuantityKind.Pieces ? Math.Ceiling(need - Quantity.Least) : need;
        return item with { Need = new(whole, kind), OnHand = new(OnHand(ingredient, kind), kind) };
    }

    private double OnHand(Ingredient ingredient, QuantityKind kind)
    {
        if (_demand.For is DemandFor.Viewer || ingredient.OnHand is not { } stock)
            return 0;
        if (Conversion.QuantityOf(stock, _bar.House.BarSizes, _episode.Convention) is { } quantity && Conversion.To(kind, quantity, ingredient) is { } amount)
            return amount;
        _findings.Add(PlanningFindings.OnHandNotUsed(ingredient));
        return 0;
    }
}
