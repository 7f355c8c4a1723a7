namespace Barshow.Engine.Planning.Lineup;

/// <summary>A good lineup found without a solver: the cheapest drink next, then single exchanges while one helps.</summary>
/// <remarks>It gives the solver a place to start and the user something to look at at once; nothing is promised of it.</remarks>
internal sealed class LineupStart(CandidateBook book, CancellationToken cancel)
{
    private const int MostRounds = 12;
    private readonly LineupTally _tally = new(book);

    /// <summary>What a sensible cook would do: the drink that adds least to what is missing and to the basket, one after the other.</summary>
    public IReadOnlyCollection<int> Greedy(IReadOnlyList<Aim> aims)
    {
        foreach (var place in Enumerable.Range(0, book.Candidates.Count).Where(IsMustHave))
            _tally.Add(place);
        while (_tally.Lineup.Count < book.Count)
        {
            var best = Best(Enumerable.Range(0, book.Candidates.Count), aims);
            if (best is not { } place)
                break;
            _tally.Add(place);
        }

        return [.. _tally.Lineup];
    }

    /// <summary>The greedy lineup, bettered by single exchanges.</summary>
    public IReadOnlyCollection<int> Found(IReadOnlyList<Aim> aims)
    {
        Greedy(aims);
        for (var round = 0; round < MostRounds && !cancel.IsCancellationRequested; round++)
        {
            var before = Worth(aims);
            foreach (var place in _tally.Lineup.Where(place => !IsMustHave(place)).Order().ToList())
            {
                _tally.Remove(place);
                _tally.Add(Best(Enumerable.Range(0, book.Candidates.Count), aims) ?? place);
            }

            if (Compare(Worth(aims), before) >= 0)
                break;
        }

        return [.. _tally.Lineup];
    }

    private bool IsMustHave(int place) => book.Question.MustHave.Contains(book.Candidates[place].Slug);

    private int? Best(IEnumerable<int> places, IReadOnlyList<Aim> aims)
    {
        int? best = null;
        long[]? worth = null;
        foreach (var place in places)
        {
            if (_tally.Contains(place) || book.Candidates[place].Breaks.Count > 0)
                continue;
            _tally.Add(place);
            var value = Worth(aims);
            _tally.Remove(place);
            if (worth is not null && Compare(value, worth) >= 0)
                continue;
            worth = value;
            best = place;
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
