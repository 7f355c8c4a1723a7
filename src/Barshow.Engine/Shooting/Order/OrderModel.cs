using System.Globalization;
using Google.OrTools.Sat;

namespace Barshow.Engine.Shooting.Order;

/// <summary>The shoot order as a constraint model. Times are whole minutes from the call.</summary>
/// <remarks>
/// Decisions: which drink follows which, and before which drinks glasses are washed, a batch is made, a break or the meal is taken.
/// What happens between two drinks keeps one order: wash-up, further batches, meal or break, change of set-up, waiting.
/// </remarks>
internal sealed partial class OrderModel
{
    private readonly CpModel _model = new();
    private readonly OrderDay _day;
    private readonly IReadOnlyList<Requirement> _off;
    private readonly bool _mayRelax;
    private readonly Dictionary<(DrinkJob? From, DrinkJob? To), BoolVar> _follows = [];
    private readonly Dictionary<DrinkJob, IntVar> _start = [];
    private readonly Dictionary<DrinkJob, IntVar> _wait = [];
    private readonly Dictionary<DrinkJob, BoolVar> _washBefore = [];
    private readonly Dictionary<DrinkJob, BoolVar> _breakBefore = [];
    private readonly Dictionary<DrinkJob, BoolVar> _mealBefore = [];
    private readonly Dictionary<(FreshPrep Prep, DrinkJob Before), BoolVar> _batchBefore = [];
    private readonly Dictionary<Requirement, BoolVar> _kept = [];
    private readonly IntVar _inHand;

    /// <param name="day">The facts.</param>
    /// <param name="off">Requirements that are let go.</param>
    /// <param name="mayRelax">Whether the solver may let go of others, to find the fewest.</param>
    /// <param name="chosen">The order the user chose; null to let the solver choose.</param>
    public OrderModel(OrderDay day, IReadOnlyList<Requirement> off, bool mayRelax, IReadOnlyList<DrinkJob>? chosen)
    {
        _day = day;
        _off = off;
        _mayRelax = mayRelax;
        _inHand = _model.NewIntVar(0, 60, "minutes in hand");
        Decide();
        FilmEachDrinkOnce();
        KeepTime();
        Follow(chosen);
        FilmWhileFresh();
        KeepTheOpenerFirst();
        KeepTheCloserLast();
        FilmPairsSideBySide();
        UseOnlyCleanGlasses();
        LetGlassesChill();
        BreakInTime();
        EatInTime();
        WrapInTime();
    }

    private void Decide()
    {
        foreach (var job in _day.Jobs)
        {
            _start[job] = _model.NewIntVar(_day.Start, _day.Horizon, $"start of {job}");
            _wait[job] = _model.NewIntVar(0, 240, $"wait before {job}");
            _washBefore[job] = _day.Stocks.Any() ? _model.NewBoolVar($"wash up before {job}") : Never();
            _breakBefore[job] = _model.NewBoolVar($"break before {job}");
            _mealBefore[job] = _day.NeedsMeal ? _model.NewBoolVar($"meal before {job}") : Never();
            // A batch made just before a drink that uses it is as fresh as it can be; only one that must rest is made earlier.
            foreach (var prep in _day.Preps.Where(prep => prep.MayRepeat && (prep.RestMinutes > 0 || job.Uses.Contains(prep))))
                _batchBefore[(prep, job)] = _model.NewBoolVar($"batch of {prep.Slug} before {job}");
        }
    }

    /// <summary>One round through all drinks, from the call and back to the wrap.</summary>
    private void FilmEachDrinkOnce()
    {
        var round = _model.AddCircuit();
        List<DrinkJob?> stops = [null, .. _day.Jobs];
        foreach (var from in stops)
            foreach (var to in stops)
                if (from != to)
                {
                    var follows = _model.NewBoolVar($"{to?.Name ?? "wrap"} after {from?.Name ?? "call"}");
                    _follows[(from, to)] = follows;
                    round.AddArc(stops.IndexOf(from), stops.IndexOf(to), follows);
                }
    }

    /// <summary>A drink starts when the one before it, and all that stands between them, is over.</summary>
    private void KeepTime()
    {
        foreach (var ((from, to), follows) in Arcs())
            _model.Add(_start[to] == EndOf(from) + Between(to) + _day.ChangeMinutes(from ?? _day.LastFilmed, to) + _wait[to]).OnlyEnforceIf(follows);
    }

    private void Follow(IReadOnlyList<DrinkJob>? chosen)
    {
        for (var i = 0; i <= chosen?.Count; i++)
            _model.Add(_follows[(i == 0 ? null : chosen[i - 1], i == chosen.Count ? null : chosen[i])] == 1);
    }

    private IEnumerable<((DrinkJob? From, DrinkJob To) Arc, BoolVar Follows)> Arcs() =>
        from arc in _follows
        where arc.Key.To is not null
        select ((arc.Key.From, arc.Key.To!), arc.Value);

    /// <summary>When the drink and what belongs to it is over; of the call, when the opening talk is.</summary>
    private LinearExpr EndOf(DrinkJob? job) => job is null
        ? LinearExpr.Constant(_day.Start + _day.Opening.Sum(part => part.Minutes))
        : _start[job] + job.Minutes + LinearExpr.Sum(_day.Jobs
            .Where(from => from != job && _day.ComparisonMinutes(from, job) > 0)
            .Select(from => _follows[(from, job)] * _day.ComparisonMinutes(from, job)));

    /// <summary>What stands before a drink, but for the change of set-up and waiting.</summary>
    private LinearExpr Between(DrinkJob to) => WashAndBatches(to) + _mealBefore[to] * _day.Pace.MealMinutes + _breakBefore[to] * _day.Pace.BreakMinutes;

    /// <summary>The wash-up and the batches before a drink, up to and including one prep's; batches are made in the order of <see cref="OrderDay.Preps"/>.</summary>
    private LinearExpr WashAndBatches(DrinkJob to, FreshPrep? upTo = null) => _washBefore[to] * _day.Pace.WashUpMinutes
        + LinearExpr.Sum(_batchBefore
            .Where(batch => batch.Key.Before == to && (upTo is null || batch.Key.Prep.Slug.CompareTo(upTo.Slug) <= 0))
            .Select(batch => batch.Value * batch.Key.Prep.BatchMinutes));

    private BoolVar Never()
    {
        var never = _model.NewBoolVar("");
        _model.Add(never == 0);
        return never;
    }

    /// <summary>The switch of a requirement: held on, let go, or left to the solver.</summary>
    private BoolVar Requirement(OrderRule rule, string subject = "", string other = "")
    {
        Requirement requirement = new(rule, subject, other);
        if (_kept.TryGetValue(requirement, out var known))
            return known;
        var kept = _model.NewBoolVar(requirement.ToString());
        if (_day.Settings.Without.Contains(rule) || _off.Contains(requirement))
            _model.Add(kept == 0);
        else if (!_mayRelax)
            _model.Add(kept == 1);
        return _kept[requirement] = kept;
    }

    private static string Parameters(double effort) =>
        string.Create(CultureInfo.InvariantCulture, $"num_workers:1 random_seed:1 max_deterministic_time:{effort} linearization_level:2 cp_model_probing_level:0");
}
