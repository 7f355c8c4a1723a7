namespace Barshow.Engine.Planning.Lineup;

/// <summary>Plain sums over a lineup that drinks are added to and taken from: what it costs and which requirements it breaks.</summary>
internal sealed class LineupTally
{
    private readonly CandidateBook _book;
    private readonly long[][] _sums;
    private readonly int[] _users;
    private readonly long[] _costs;
    private readonly int[] _features;
    private readonly int[] _preps;
    private readonly int[] _counts;
    private readonly HashSet<int> _lineup = [];
    private long _cost;
    private long _things;
    private long _bottle;
    private long _staleness;
    private long _minutes;
    private long _varieties;
    private int _alcoholFree;

    public LineupTally(CandidateBook book)
    {
        _book = book;
        _sums = [.. book.Things.Select(thing => new long[thing.Facets])];
        _users = new int[book.Things.Count];
        _costs = new long[book.Things.Count];
        _features = new int[book.Features.Count];
        _preps = new int[book.Preps.Count];
        _counts = new int[book.Requirements.Count];
    }

    public IReadOnlyCollection<int> Lineup => _lineup;

    public long Cost => _cost;

    public long Things => _things;

    public long CostOf(int thing) => _costs[thing];

    public bool Contains(int place) => _lineup.Contains(place);

    /// <summary>What an aim counts; less is better.</summary>
    public long ValueOf(Aim aim) => aim switch
    {
        Aim.Cost => _cost,
        Aim.Variety => -_varieties,
        Aim.Freshness => _staleness,
        _ => _minutes,
    };

    public void Add(int place)
    {
        _lineup.Add(place);
        Change(place, 1);
    }

    public void Remove(int place)
    {
        _lineup.Remove(place);
        Change(place, -1);
    }

    /// <summary>How far the lineup is from keeping every requirement; 0 when it keeps all. Requirements that look at one drink count for each drink.</summary>
    public long Broken()
    {
        var broken = (long)Math.Abs(_lineup.Count - _book.Count);
        for (var i = 0; i < _book.Requirements.Count; i++)
        {
            var requirement = _book.Requirements[i];
            broken += requirement.Kind switch
            {
                RequirementKind.Alike => _counts[i] + _book.Alike.Count(pair => _lineup.Contains(pair.First) && _lineup.Contains(pair.Second)),
                RequirementKind.MustHave => Has(requirement.Subject) ? 0 : 1,
                RequirementKind.FamilyCap => OverCap(),
                RequirementKind.Floor => Math.Max(0, requirement.Floor!.AtLeast - _counts[i]),
                RequirementKind.AlcoholFree => Math.Max(0, _book.Question.AlcoholFree - _alcoholFree),
                RequirementKind.Glasses => _counts[i] + GlassesShort(),
                RequirementKind.BottleAtHome => Over(_bottle, _book.BottleAtHome),
                RequirementKind.BottlesOnSet => Over(_bottle, _book.BottleOnSet),
                RequirementKind.Money => _book.MoneyChecked ? Over(_cost, (long)Math.Floor(Math.Clamp(_book.Question.MostMoney!.Value, 0, 1_000_000_000) * 100)) : 0,
                RequirementKind.Things => Math.Max(0, _things - Math.Max(0, _book.Question.MostThings!.Value)),
                RequirementKind.Count => 0,
                _ => _counts[i],
            };
        }

        return broken;
    }

    private static long Over(long amount, long? limit) => limit is { } most && amount > most ? 1 + (amount - most) / 20_000 : 0;

    private bool Has(Names.Slug slug) => _lineup.Any(place => _book.Candidates[place].Slug == slug);

    private long OverCap()
    {
        var over = 0L;
        for (var feature = 0; feature < _features.Length; feature++)
        {
            if (_book.IsFamily[feature])
                over += Math.Max(0, _features[feature] - _book.Question.MostOfAFamily!.Value);
        }

        return over;
    }

    // Drinks find their glasses one after the other, each moving others on where that makes room.
    private int GlassesShort()
    {
        var kit = _book.Question.Bar.Kit.Glasses;
        var takes = Math.Max(1, _book.Question.Takes);
        var room = kit.Select(glass => (int)Math.Min(int.MaxValue, Math.Min(10_000, glass.Count) * (long)Math.Clamp(_book.Question.GlassRounds, 1, 100) / takes)).ToArray();
        var standing = kit.Select(_ => new List<int>()).ToArray();
        return _lineup.Count(place => _book.Candidates[place].Glasses.Count > 0 && !Stand(place, new HashSet<int>()));

        bool Stand(int place, HashSet<int> tried)
        {
            foreach (var glass in _book.Candidates[place].Glasses)
            {
                if (!tried.Add(glass))
                    continue;
                if (standing[glass].Count < room[glass])
                {
                    standing[glass].Add(place);
                    return true;
                }

                for (var i = 0; i < standing[glass].Count; i++)
                {
                    if (Stand(standing[glass][i], tried))
                    {
                        standing[glass][i] = place;
                        return true;
                    }
                }
            }

            return false;
        }
    }

    private void Change(int place, int sign)
    {
        var drink = _book.Candidates[place];
        foreach (var use in drink.Uses)
            _sums[use.Thing][use.Facet] += sign * use.Amount;
        foreach (var thing in drink.Things)
        {
            _users[thing] += sign;
            _things += _users[thing] == 0 ? -1 : _users[thing] == 1 && sign == 1 ? 1 : 0;
            var cost = _users[thing] == 0 ? 0 : _book.Things[thing].CostOf(_sums[thing]);
            _cost += cost - _costs[thing];
            _costs[thing] = cost;
        }

        foreach (var feature in drink.Features)
        {
            _features[feature] += sign;
            _varieties += _features[feature] == 0 ? -1 : _features[feature] == 1 && sign == 1 ? 1 : 0;
        }

        foreach (var prep in drink.Preps)
        {
            _preps[prep] += sign;
            _minutes += _preps[prep] == 0 ? -_book.Preps[prep].Minutes : _preps[prep] == 1 && sign == 1 ? _book.Preps[prep].Minutes : 0;
        }

        foreach (var broken in drink.Breaks)
            _counts[broken] += sign;
        foreach (var floor in drink.Floors)
            _counts[floor] += sign;
        _bottle += sign * drink.Bottle;
        _staleness += sign * drink.Staleness;
        _minutes += sign * drink.Minutes;
        _alcoholFree += drink.AlcoholFree ? sign : 0;
    }
}
