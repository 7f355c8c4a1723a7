using System.Numerics;
using Barshow.Engine.Names;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>The ladder of a lineup of usual size: every set of drinks is looked at.</summary>
internal static class LadderByEverySet
{
    /// <summary>Beyond this many drinks the sets are too many.</summary>
    public const int MostDrinks = 14;

    public static List<LadderStep> Climb(Basket basket, IReadOnlyList<Slug> drinks, List<ThingSet> needs)
    {
        var costs = basket.Items.Select(item => item.Cost ?? 0).ToArray();
        var things = new ThingSet[1 << drinks.Count];
        things[0] = new(basket.Items.Count, []);
        var best = new (int Mask, int Drinks, decimal Cost)?[basket.Items.Count + 1];
        for (var mask = 1; mask < things.Length; mask++)
        {
            things[mask] = things[mask & (mask - 1)].With(needs[BitOperations.TrailingZeroCount(mask)]);
            var count = things[mask].Count;
            var made = BitOperations.PopCount((uint)mask);
            if (best[count] is { } known && known.Drinks > made)
                continue;
            var cost = things[mask].Members.Sum(member => costs[member]);
            if (best[count] is not { } before || made > before.Drinks || (made == before.Drinks && (cost, Reversed(mask, drinks.Count)).CompareTo((before.Cost, Reversed(before.Mask, drinks.Count))) < 0))
                best[count] = (mask, made, cost);
        }

        var steps = new List<LadderStep>();
        var reached = 0;
        foreach (var choice in best)
        {
            if (choice is not { } step || step.Drinks <= reached)
                continue;
            reached = step.Drinks;
            steps.Add(new(
                [.. things[step.Mask].Members.Select(member => basket.Items[member])],
                [.. drinks.Where((_, index) => (step.Mask >> index & 1) == 1)]));
        }

        return steps;
    }

    // The set whose drinks come first in viewer order has the smallest value: a missing early drink weighs most.
    private static int Reversed(int mask, int drinks) =>
        Enumerable.Range(0, drinks).Where(index => (mask >> index & 1) == 0).Sum(index => 1 << (drinks - 1 - index));
}
