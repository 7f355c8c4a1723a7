using Barshow.Engine.Ingredients;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>Chooses packs that cover a need at least cost, exactly.</summary>
/// <remarks>
/// Least cost first, then fewest packs, then least left over, then the packs listed first. Where a price is missing nothing is known of the cost:
/// fewest packs first, then least left over. A need of more than <see cref="Bulk"/> of the cheapest pack is met with that pack down to the bulk, and the rest exactly.
/// </remarks>
internal sealed class PackCover
{
    private const int Bulk = 200;
    private const double Most = 1e6;
    private readonly IReadOnlyList<(Pack Pack, double Holds, decimal Price)> _packs;
    private readonly int[] _counts;
    private int[]? _best;
    private (decimal Cost, int Packs, double Left) _bestValue;

    private PackCover(IReadOnlyList<(Pack Pack, double Holds)> packs)
    {
        var priced = packs.All(pack => pack.Pack.Price is not null);
        _packs = [.. packs
            .Select(pack => (pack.Pack, pack.Holds, Price: priced ? pack.Pack.Price!.Value : 1m))
            .OrderBy(pack => (double)pack.Price / pack.Holds)];
        _counts = new int[_packs.Count];
    }

    /// <summary>The packs to buy, in the order given; none when nothing is needed.</summary>
    /// <param name="packs">Packs with what they hold, above 0, in the unit of the need; at least one.</param>
    /// <param name="need">How much must be covered.</param>
    public static IReadOnlyList<PackCount> Cheapest(IReadOnlyList<(Pack Pack, double Holds)> packs, double need)
    {
        if (need <= Quantity.Least)
            return [];
        var cover = new PackCover(packs);
        var counts = cover.Solve(need);
        return [.. packs
            .Select(pack => new PackCount(pack.Pack, counts[cover.IndexOf(pack.Pack)]))
            .Where(pack => pack.Count > 0)];
    }

    private int IndexOf(Pack pack) => _packs.Index().First(entry => ReferenceEquals(entry.Item.Pack, pack)).Index;

    private int[] Solve(double need)
    {
        // No order is larger than a million packs, whatever a spec says.
        need = Math.Min(need, Most * _packs[0].Holds);
        var bulk = Math.Max(0, Math.Floor(need / _packs[0].Holds) - Bulk);
        Search(0, need - bulk * _packs[0].Holds, 0, 0);
        _best![0] += (int)bulk;
        return _best;
    }

    private void Search(int index, double need, decimal cost, int packs)
    {
        if (need <= Quantity.Least)
        {
            var value = (cost, packs, Math.Round(-need, 6));
            if (_best is null || value.CompareTo(_bestValue) < 0)
            {
                _bestValue = value;
                _best = [.. _counts];
            }

            return;
        }

        if (index == _packs.Count)
            return;
        var (_, holds, price) = _packs[index];
        // Packs come with the best price for what they hold first, so this is the least that the rest can cost.
        if (_best is not null && cost + (decimal)((need - Quantity.Least) / holds) * price > _bestValue.Cost)
            return;
        for (var count = (int)Math.Ceiling((need - Quantity.Least) / holds); count >= 0; count--)
        {
            _counts[index] = count;
            Search(index + 1, need - count * holds, cost + count * price, packs + count);
        }

        _counts[index] = 0;
    }
}
