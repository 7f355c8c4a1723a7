using Barshow.Engine.Names;
using Barshow.Engine.Planning.Baskets;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>Something a viewer buys, with what each amount of it costs.</summary>
internal sealed class Thing
{
    private const int MostSteps = 400;

    public Thing(Slug slug, string name, Buying? buying, FruitShape? fruit, long most)
    {
        Slug = slug;
        Name = name;
        Fruit = fruit;
        // Without a known pack it is one thing to buy, whatever the amount.
        Steps = buying is null ? [new(long.MaxValue / 4, 1)] : StepsOf(buying, most);
    }

    public Slug Slug { get; }

    public string Name { get; }

    /// <summary>How its fruit are cut and pressed, for a fruit.</summary>
    public FruitShape? Fruit { get; }

    /// <summary>What it costs to hold so much, cheapest first; both numbers rise.</summary>
    public IReadOnlyList<Step> Steps { get; }

    /// <summary>How many sums are kept for it.</summary>
    public int Facets => Fruit is null ? 1 : 2 + Fruit.Cuts.Count;

    /// <summary>The cost of what covers the sums, in the book's cost unit; 0 when no drink needs it.</summary>
    public long CostOf(ReadOnlySpan<long> sums)
    {
        var need = Fruit?.Fewest(sums) * CandidateBook.Scale ?? sums[0];
        foreach (var step in Steps)
        {
            if (need <= step.Holds)
                return step.Cost;
        }

        return Steps[^1].Cost * (need / Math.Max(1, Steps[^1].Holds) + 1);
    }

    private static List<Step> StepsOf(Buying buying, long most)
    {
        var steps = new List<Step>();
        var held = 0.0;
        while (steps.Count == 0 || (steps[^1].Holds < most && steps.Count < MostSteps))
        {
            var packs = PackCover.Cheapest(buying.Packs, held + 2 * Quantity.Least);
            held = packs.Sum(pack => pack.Count * buying.Packs.First(entry => ReferenceEquals(entry.Pack, pack.Pack)).Holds);
            var cost = CostOf(packs);
            if (steps.Count > 0 && steps[^1].Cost == cost)
                steps.RemoveAt(steps.Count - 1);
            steps.Add(new((long)Math.Floor(Math.Min(held, 1e12) * CandidateBook.Scale + 0.5), cost));
        }

        return steps;
    }

    // Cents where every pack has a price, packs where one has none.
    private static long CostOf(IReadOnlyList<PackCount> packs) => packs.All(pack => pack.Pack.Price is not null)
        ? packs.Sum(pack => pack.Count * (long)Math.Round(Math.Min(pack.Pack.Price!.Value, 1_000_000) * 100))
        : packs.Sum(pack => pack.Count);
}

/// <summary>What is held for a cost.</summary>
/// <param name="Holds">Thousandths of the unit.</param>
/// <param name="Cost">Cents, or packs where prices are missing.</param>
internal readonly record struct Step(long Holds, long Cost);

/// <summary>How one fruit is cut and pressed.</summary>
/// <param name="JuiceEach">Thousandths of a millilitre in one, 0 when it is not pressed.</param>
/// <param name="Cuts">The cuts in use, in the order of the facets from 2.</param>
internal sealed record FruitShape(long JuiceEach, IReadOnlyList<FruitCut> Cuts)
{
    /// <summary>The names of the cuts; null for whole fruit, which are counted in halves.</summary>
    public IReadOnlyList<Measures.Unit?> Names { get; init; } = [];

    /// <summary>The fewest whole fruit: the rule of <see cref="Citrus.FruitPlanner"/> on sums already taken.</summary>
    public int Fewest(ReadOnlySpan<long> sums)
    {
        var pressing = Math.Max(JuiceEach > 0 ? Up(2 * sums[0], JuiceEach) : 0, Up(sums[1], CandidateBook.Scale));
        var best = long.MaxValue;
        for (var mask = 0; mask < 1 << Cuts.Count; mask++)
        {
            var (halves, pressed, possible) = (0L, 0L, true);
            for (var i = 0; i < Cuts.Count; i++)
            {
                var cut = Cuts[i];
                var lone = (mask >> i) & 1;
                possible &= lone == 0 || cut.PerHalf > 0;
                var used = 2 * Up(sums[2 + i] - lone * cut.PerHalf * CandidateBook.Scale, cut.PerFruit * CandidateBook.Scale) + lone;
                halves += used;
                pressed += cut.Pressed ? used : 0;
            }

            if (possible)
                best = Math.Min(best, (halves + Math.Max(0, pressing - pressed) + 1) / 2);
        }

        return (int)best;
    }

    private static long Up(long amount, long each) => amount <= 0 ? 0 : (amount + each - 1) / each;
}

/// <summary>A cut of a fruit: how many a whole gives and half a one gives, and whether it is pressed afterwards.</summary>
internal readonly record struct FruitCut(int PerFruit, int PerHalf, bool Pressed);
