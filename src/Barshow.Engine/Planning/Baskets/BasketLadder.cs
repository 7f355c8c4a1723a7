using System.Numerics;
using Barshow.Engine.Names;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>With the best one, two, three … things bought, how many drinks a viewer can make, and which.</summary>
/// <param name="Steps">The numbers of things at which one drink more can be made, smallest first.</param>
public sealed record BasketLadder(IReadOnlyList<LadderStep> Steps)
{
    /// <summary>The ladder of a viewer's basket.</summary>
    /// <remarks>
    /// Exact: every set of drinks is looked at. Garnish and lines that may be left out keep nobody from making a drink, and what a home is assumed to have is not counted.
    /// Of two choices with as many drinks the cheaper is taken, then the one whose drinks come first in viewer order.
    /// </remarks>
    /// <param name="basket">A viewer's basket.</param>
    /// <param name="drinks">The drinks in viewer order.</param>
    public static BasketLadder Of(Basket basket, IReadOnlyList<Slug> drinks)
    {
        ArgumentNullException.ThrowIfNull(basket);
        ArgumentNullException.ThrowIfNull(drinks);
        var needs = drinks.Select(drink => new ThingSet(basket.Items.Count, basket.Items.Index().Where(item => Needs(item.Item, drink)).Select(item => item.Index))).ToList();
        return new(drinks.Count <= LadderByEverySet.MostDrinks
            ? LadderByEverySet.Climb(basket, drinks, needs)
            : LadderBySolver.Climb(basket, drinks, needs));
    }

    private static bool Needs(BasketItem item, Slug drink) =>
        item.Parts.Any(part => part.Drink == drink && part is { Optional: false, Garnish: false, FromLeftovers: false });
}

/// <summary>One step of the ladder.</summary>
/// <param name="Buy">What is bought, in the order of the basket.</param>
/// <param name="Drinks">What can be made with it, in viewer order.</param>
public sealed record LadderStep(IReadOnlyList<BasketItem> Buy, IReadOnlyList<Slug> Drinks)
{
    /// <summary>How many things are bought.</summary>
    public int Things => Buy.Count;

    /// <summary>What they cost, those without a price left out.</summary>
    public decimal Cost => Buy.Sum(item => item.Cost ?? 0);
}

/// <summary>A set of things by their place in the basket.</summary>
internal readonly struct ThingSet
{
    private readonly ulong[] _words;

    public ThingSet(int size, IEnumerable<int> members)
    {
        _words = new ulong[(size + 63) / 64];
        foreach (var member in members)
            _words[member / 64] |= 1UL << (member % 64);
    }

    private ThingSet(ulong[] words) => _words = words;

    public int Count => _words.Sum(word => BitOperations.PopCount(word));

    public IEnumerable<int> Members
    {
        get
        {
            for (var i = 0; i < _words.Length * 64; i++)
            {
                if ((_words[i / 64] >> (i % 64) & 1) == 1)
                    yield return i;
            }
        }
    }

    public ThingSet With(ThingSet other)
    {
        var words = new ulong[_words.Length];
        for (var i = 0; i < words.Length; i++)
            words[i] = _words[i] | other._words[i];
        return new(words);
    }
}
