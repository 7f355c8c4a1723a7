namespace Barshow.Engine.Planning.Lineup;

/// <summary>Says of every drink of a lineup why it is in and what would best replace it.</summary>
internal sealed class LineupReasons
{
    private readonly CandidateBook _book;
    private readonly IReadOnlyList<int> _lineup;
    private readonly CancellationToken _cancel;
    private readonly LineupTally _tally;

    public LineupReasons(CandidateBook book, IReadOnlyCollection<int> lineup, CancellationToken cancel)
    {
        _book = book;
        _lineup = [.. lineup.Order()];
        _cancel = cancel;
        _tally = new(book);
        foreach (var place in _lineup)
            _tally.Add(place);
    }

    public IReadOnlyList<LineupPick> Picks() => [.. _lineup.Select(Pick)];

    private LineupPick Pick(int place)
    {
        var drink = _book.Candidates[place];
        var shared = drink.Things.Where(thing => _lineup.Any(other => other != place && _book.Candidates[other].Things.Contains(thing))).ToList();
        var alone = drink.Things.Except(shared).ToList();
        var cost = _tally.Cost;
        _tally.Remove(place);
        var saved = cost - _tally.Cost;
        var replacement = Replacement(place, cost);
        _tally.Add(place);
        var pick = new LineupPick(drink.Spec, drink.Swapped)
        {
            Shares = [.. shared.Select(thing => _book.Things[thing].Name)],
            Adds = [.. alone.Select(thing => _book.Things[thing].Name)],
            AddsCost = Shown(saved),
            Replacement = replacement,
        };
        return pick with { Reason = PlanningFindings.ReasonFor(pick, _book.Question, _book.Priced) };
    }

    // The drink taken out already: every other is tried in its place.
    private LineupReplacement? Replacement(int place, long cost)
    {
        int? best = null;
        long[]? worth = null;
        var aims = _book.Question.Aims;
        for (var other = 0; other < _book.Candidates.Count && !_cancel.IsCancellationRequested; other++)
        {
            if (other == place || _tally.Contains(other) || _book.Candidates[other].Breaks.Count > 0)
                continue;
            _tally.Add(other);
            if (_tally.Broken() == 0)
            {
                long[] value = [.. aims.Select(_tally.ValueOf), _tally.Cost];
                if (worth is null || value.AsSpan().SequenceCompareTo(worth) < 0)
                    (best, worth) = (other, value);
            }

            _tally.Remove(other);
        }

        return best is { } found ? new(_book.Candidates[found].Slug, _book.Candidates[found].Spec.Name, Shown(worth![^1] - cost)) : null;
    }

    private decimal Shown(long cost) => _book.Priced ? cost / 100m : cost;
}
