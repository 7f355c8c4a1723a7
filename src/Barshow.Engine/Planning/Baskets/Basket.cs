using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Citrus;
using Barshow.Engine.Planning.Demand;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>What is bought: the viewer's list or the order for the shoot.</summary>
/// <param name="For">Whose basket it is.</param>
/// <param name="Items">What is bought, in the order in which the lineup first asks for it.</param>
/// <param name="AtHome">What the viewer's home is assumed to have; for the shoot, what the stock on hand covers.</param>
/// <param name="Currency">The currency of the prices, a code of three letters.</param>
/// <param name="Findings">What could not be worked out.</param>
public sealed record Basket(
    DemandFor For,
    IReadOnlyList<BasketItem> Items,
    IReadOnlyList<BasketItem> AtHome,
    string Currency,
    IReadOnlyList<Finding> Findings)
{
    /// <summary>The demand it covers.</summary>
    public required DemandList Demand { get; init; }

    /// <summary>How the fruit in it are used.</summary>
    public required FruitPlans Fruit { get; init; }

    /// <summary>How many different things are bought.</summary>
    public int Things => Items.Count;

    /// <summary>What the packs with a price cost; see <see cref="Unpriced"/> for the rest.</summary>
    public decimal Cost => Items.Sum(item => item.Cost ?? 0);

    /// <summary>What has no price and is left out of <see cref="Cost"/>.</summary>
    public IReadOnlyList<BasketItem> Unpriced => [.. Items.Where(item => item.Cost is null)];

    /// <summary>What is over when the drinks are made.</summary>
    public IReadOnlyList<BasketItem> Leftovers => [.. Items.Where(item => item.Left.Amount > Quantity.Least)];

    /// <summary>The share of the cost that falls to one drink, by how much of each thing it uses.</summary>
    public decimal CostOf(Slug drink) => Items.Sum(item => item.CostOf(drink));
}

/// <summary>One thing bought.</summary>
public sealed record BasketItem
{
    /// <summary>The ingredient; for one the house does not know, the slug of its name.</summary>
    public required Slug Slug { get; init; }

    /// <summary>The name that is shown.</summary>
    public required string Name { get; init; }

    /// <summary>The ingredient; null when the house does not know it.</summary>
    public Ingredient? Ingredient { get; init; }

    /// <summary>How much is needed, in the unit of the packs; an amount of 0 means that it is only wanted at hand.</summary>
    public required Quantity Need { get; init; }

    /// <summary>How much of the need the stock on hand covers.</summary>
    public Quantity OnHand { get; init; }

    /// <summary>The packs to buy; empty when no pack is known.</summary>
    public IReadOnlyList<PackCount> Packs { get; init; } = [];

    /// <summary>What the packs cost; null when a price is missing.</summary>
    public decimal? Cost { get; init; }

    /// <summary>What is over once the drinks are made.</summary>
    public Quantity Left { get; init; }

    /// <summary>How the fruit is used, for a fruit.</summary>
    public FruitPlan? Fruit { get; init; }

    /// <summary>Which drink needs how much.</summary>
    public IReadOnlyList<DemandPart> Parts { get; init; } = [];

    /// <summary>The drinks that need it, in lineup order.</summary>
    public IReadOnlyList<Slug> Drinks => [.. Parts.Select(part => part.Drink).Distinct()];

    /// <summary>Whether every drink may go without it.</summary>
    public bool Optional => Parts.Count > 0 && Parts.All(part => part.Optional);

    /// <summary>What to buy in words, to stand beside the name: "2 × 700 ml bottle"; "5" where pieces are bought one by one; the bare need when no pack is known.</summary>
    public string ToBuy => Packs.Count > 0
        ? string.Join(" + ", Packs.Select(pack => pack.Pack.Holds is { Unit: null, IsRange: false, Low: { Numerator: 1, Denominator: 1 } } ? PlanningFindings.Number(pack.Count)
            : pack.Count == 1 ? pack.Pack.Name
            : $"{PlanningFindings.Number(pack.Count)} × {pack.Pack.Name}"))
        : Need.Amount > 0 ? Need.ToString() : "a little";

    internal decimal CostOf(Slug drink)
    {
        if (Cost is not { } cost || Parts.Count == 0)
            return 0;
        var all = Parts.Sum(Weight);
        return all > 0
            ? cost * (decimal)(Parts.Where(part => part.Drink == drink).Sum(Weight) / all)
            : cost * Parts.Count(part => part.Drink == drink) / Parts.Count;
    }

    // Juice and cuts of one fruit are weighed as shares of a fruit.
    private double Weight(DemandPart part) => part.FromLeftovers ? 0 : part.Amount.Kind switch
    {
        QuantityKind.Millilitres when Fruit?.Fruit.Produce?.JuiceMillilitres is > 0 and var each => part.Amount.Amount / each,
        QuantityKind.Pieces => part.Amount.Amount / Conversion.PiecesPerWhole(Fruit?.Fruit ?? Ingredient, part.Amount.Cut),
        _ => part.Amount.Amount,
    };
}

/// <summary>A pack and how many of it.</summary>
/// <param name="Pack">The pack.</param>
/// <param name="Count">How many, 1 or more.</param>
public sealed record PackCount(Pack Pack, int Count);
