namespace Barshow.Engine.Planning.Lineup;

/// <summary>A good lineup found without a solver: the cheapest drink next, then exchanges of one or two drinks while they help.</summary>
/// <remarks>It gives the solver a place to start and the user something to look at at once; nothing is promised of it.</remarks>
internal sealed class LineupStart(CandidateBook book, CancellationToken cancel)
{
    private const int MostRounds = 12;

    // How much of a thing's cost the drinks that could share it take off.
    private static readonly double[] Sharings = [0, 0.5, 1];
    private readonly LineupTally _tally = new(book);
    private readonly int[] _open = [.. Enumerable.Range(0, book.Candidates.Count).Where(place => book.Candidates[place].Breaks.Count == 0)];

    /// <summary>What a sensible cook would do: the drink that adds least to what is missing and to the basket, one after the other.</summary>
    public IReadOnlyCollection<int> Greedy(IReadOnlyList<Aim> aims)
    {
        foreach (var place in Enumerable.Range(0, book.Candidates.Count).Where(IsMustHave))
            _tally.Add(place);
        while (_tally.Lineup.Count < book.Count)
        {
            if (Best(aims) is not { } place)
                break;
            _tally.Add(place);
        }

        return [.. _tally.Lineup];
    }

    /// <summary>The greedy lineup, bettered by exchanging one drink, then two at a time, while that helps.</summary>
    public IReadOnlyCollection<int> Found(IReadOnlyList<Aim> aims)
    {
        int[]? best = null;
        long[]? worth = null;
        foreach (var sharing in Sharings)
        {
            foreach (var place in _tally.Lineup.ToList())
                _tally.Remove(place);
            Begin(sharing);
            for (var before = Worth(aims); !cancel.IsCancellationRequested; before = Worth(aims))
            {
                ExchangeOne(aims);
                if (Compare(Worth(aims), before) >= 0)
                    break;
            }

            if (worth is null || Compare(Worth(aims), worth) < 0)
                (best, worth) = ([.. _tally.Lineup], Worth(aims));
        }

        foreach (var place in _tally.Lineup.ToList())
            _tally.Remove(place);
        foreach (var place in best!)
            _tally.Add(place);
        for (var round = 0; round < MostRounds && !cancel.IsCancellationRequested; round++)
        {
            var before = Worth(aims);
            ExchangeOne(aims);
            if (Compare(Worth(aims), before) >= 0 && !ExchangeTwo(aims))
                break;
        }

        return [.. _tally.Lineup];
    }

    // Each thing counts a share of its cost: the more drinks could use it too, the smaller.
    private void Begin(double sharing)
    {
        var users = new int[book.Things.Count];
        foreach (var thing in _open.SelectMany(place => book.Candidates[place].Things))
            users[thing]++;
        var shares = users.Select((count, thing) => book.Things[thing].Steps[0].Cost / Math.Pow(Math.Max(1, count), sharing)).ToArray();
        foreach (var place in Enumerable.Range(0, book.Candidates.Count).Where(IsMustHave))
            _tally.Add(place);
        while (_tally.Lineup.Count < book.Count)
        {
            (long Broken, double Cost, int Place)? next = null;
            foreach (var place in _open.Where(place => !_tally.Contains(place)))
            {
                var cost = book.Candidates[place].Things.Sum(thing => _tally.CostOf(thing) > 0 ? 0 : shares[thing]);
                _tally.Add(place);
                var broken = _tally.Broken();
                _tally.Remove(place);
                if (next is null || (broken, cost).CompareTo((next.Value.Broken, next.Value.Cost)) < 0)
                    next = (broken, cost, place);
            }

            if (next is not { } chosen)
                break;
            _tally.Add(chosen.Place);
        }
    }

    private void ExchangeOne(IReadOnlyList<Aim> aims)
    {
        foreach (var place in Free())
        {
            _tally.Remove(place);
            _tally.Add(Best(aims) ?? place);
        }
    }

    // The first pair whose exchange helps.
    private bool ExchangeTwo(IReadOnlyList<Aim> aims)
    {
        var free = Free();
        var before = Worth(aims);
        for (var i = 0; i < free.Count; i++)
        {
            for (var j = i + 1; j < free.Count && !cancel.IsCancellationRequested; j++)
            {
                _tally.Remove(free[i]);
                _tally.Remove(free[j]);
                var first = Best(aims) ?? free[i];
                _tally.Add(first);
                var second = Best(aims) ?? (first == free[j] ? free[i] : free[j]);
                _tally.Add(second);
                if (Compare(Worth(aims), before) < 0)
                    return true;
                _tally.Remove(first);
                _tally.Remove(second);
                _tally.Add(free[i]);
                _tally.Add(free[j]);
            }
        }

        return false;
    }

    private List<int> Free() => [.. _tally.Lineup.Where(place => !IsMustHave(place)).Order()];

    private bool IsMustHave(int place) => book.Question.MustHave.Contains(book.Candidates[place].Slug);

    // The drink after whose addition the lineup is best. A drink that is worse by the aims alone need not be looked at closer
    // once the best so far breaks no more than any lineup of that length must.
    private int? Best(IReadOnlyList<Aim> aims)
    {
        int? best = null;
        var worth = new long[aims.Count + 1];
        var value = new long[aims.Count + 1];
        var least = Math.Abs(book.Count - _tally.Lineup.Count - 1);
        foreach (var place in _open)
        {
            if (_tally.Contains(place))
                continue;
            _tally.Add(place);
            for (var i = 0; i < aims.Count; i++)
                value[i + 1] = _tally.ValueOf(aims[i]);
            value[0] = least;
            if (best is null || Compare(value, worth) < 0)
            {
                value[0] = _tally.Broken();
                if (best is null || Compare(value, worth) < 0)
                {
                    (worth, value) = (value, worth);
                    best = place;
                }
            }

            _tally.Remove(place);
        }

        return best;
    }

    private long[] Worth(IReadOnlyList<Aim> aims) => [_tally.Broken(), .. aims.Select(_tally.ValueOf)];

    private static int Compare(long[] left, long[] right)
    {
        for (var i = 0; i < left.Length; i++)
        {
            if (left[i] != right[i])
                return left[i].CompareTo(right[i]);
        }

        return 0;
    }
}
