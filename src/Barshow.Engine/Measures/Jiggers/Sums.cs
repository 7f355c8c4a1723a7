namespace Barshow.Engine.Measures.Jiggers;

/// <summary>The amounts that pours can make, one more pour at a time, each with the pour that made it first.</summary>
internal sealed class Sums(Rational target, Rational tolerance, IReadOnlyList<Rational> coins)
{
    private readonly Dictionary<Rational, (Rational Before, int Coin)> _made = [];

    /// <summary>The sum of the fewest pours within the tolerance, else the nearest sum there is.</summary>
    public Rational FewestPours()
    {
        var last = new List<Rational> { Rational.Zero };
        var nearest = (Rational?)null;
        while (last.Count > 0)
        {
            var next = new List<Rational>();
            foreach (var sum in last)
            {
                for (var coin = 0; coin < coins.Count; coin++)
                {
                    var more = sum + coins[coin];
                    if (!_made.TryAdd(more, (sum, coin)))
                        continue;
                    if (nearest is not { } best || IsNearer(more, best))
                        nearest = more;
                    if (more < target)
                        next.Add(more);
                }
            }

            if (nearest is { } reached && (reached - target).Abs() <= tolerance)
                return reached;
            last = next;
        }

        return nearest!.Value;
    }

    /// <summary>The indices of the coins that make a sum.</summary>
    public IEnumerable<int> PoursOf(Rational sum)
    {
        while (sum.Sign > 0)
        {
            var (before, coin) = _made[sum];
            yield return coin;
            sum = before;
        }
    }

    // Of two that miss by as much, the lesser pour: what is missing can be added, what is too much cannot be taken back.
    private bool IsNearer(Rational sum, Rational best)
    {
        var (a, b) = ((sum - target).Abs(), (best - target).Abs());
        return a < b || (a == b && sum < best);
    }
}
