using Barshow.Engine.Episodes;
using Google.OrTools.Sat;

namespace Barshow.Engine.Shooting.Order;

/// <content>The rules, one method each.</content>
internal sealed partial class OrderModel
{
    /// <summary>Each drink is served by one batch of each prep in it, and ends while that batch still looks right.</summary>
    private void FilmWhileFresh()
    {
        foreach (var prep in _day.Preps)
        {
            var made = _batchBefore.Where(batch => batch.Key.Prep == prep).ToDictionary(batch => batch.Key.Before, batch => MadeBefore(prep, batch.Key.Before, batch.Value));
            foreach (var job in _day.Jobs.Where(job => job.Uses.Contains(prep)))
            {
                var kept = Requirement(OrderRule.FreshWhenFilmed, job.Name, prep.Name);
                var first = _model.NewBoolVar($"{job} from the first {prep.Slug}");
                List<ILiteral> sources = [first];
                _model.Add(EndOf(job) + _inHand <= prep.Made + prep.BestMinutes).OnlyEnforceIf([kept, first]);
                foreach (var (before, at) in made)
                {
                    var served = _model.NewBoolVar($"{job} from the {prep.Slug} made before {before}");
                    sources.Add(served);
                    _model.AddImplication(served, _batchBefore[(prep, before)]);
                    _model.Add(EndOf(job) + _inHand <= at + prep.BestMinutes).OnlyEnforceIf([kept, served]);
                    _model.Add(_start[job] >= at + prep.RestMinutes).OnlyEnforceIf([kept, served]);
                }

                _model.AddExactlyOne(sources);
            }
        }

        if (!_day.Jobs.Any(job => job.Uses.Count > 0))
            _model.Add(_inHand == 60);
    }

    /// <summary>When the batch made before a drink is finished; of no meaning where none is made there.</summary>
    private IntVar MadeBefore(FreshPrep prep, DrinkJob to, BoolVar batch)
    {
        var made = _model.NewIntVar(_day.Start, _day.Horizon, $"{prep.Slug} made before {to}");
        foreach (var ((from, next), follows) in Arcs())
            if (next == to)
                _model.Add(made == EndOf(from) + WashAndBatches(to, prep)).OnlyEnforceIf([follows, batch]);
        return made;
    }

    private void KeepTheOpenerFirst()
    {
        if (_day.LastFilmed is null && _day.Jobs.FirstOrDefault(job => job.Drink.Pin is Pin.Opener) is { } opener)
            _model.Add(_follows[(null, opener)] == 1).OnlyEnforceIf(Requirement(OrderRule.OpenerFirst, opener.Name));
    }

    private void KeepTheCloserLast()
    {
        if (_day.Jobs.LastOrDefault(job => job.Drink.Pin is Pin.Closer) is { } closer)
            _model.Add(_follows[(closer, null)] == 1).OnlyEnforceIf(Requirement(OrderRule.CloserLast, closer.Name));
    }

    private void FilmPairsSideBySide()
    {
        foreach (var (one, other) in _day.Pairs)
            _model.Add(_follows[(one, other)] + _follows[(other, one)] == 1).OnlyEnforceIf(Requirement(OrderRule.SideBySide, one.Name, other.Name));
    }

    /// <summary>Glasses in use add up from drink to drink and fall to nought at a wash-up.</summary>
    private void UseOnlyCleanGlasses()
    {
        foreach (var stock in _day.Stocks)
        {
            var used = _day.Jobs.ToDictionary(job => job, job => _model.NewIntVar(0, Math.Max(stock.Needed, stock.Count), $"{stock.Glass} used after {job}"));
            foreach (var job in _day.Jobs)
            {
                var takes = job.Glass == stock ? job.Glasses : 0;
                _model.Add(used[job] >= takes);
                if (takes > 0)
                    _model.Add(used[job] <= stock.Count).OnlyEnforceIf(Requirement(OrderRule.CleanGlass, job.Name, stock.Name));
            }

            foreach (var ((from, to), follows) in Arcs())
                if (from is not null)
                    _model.Add(used[to] >= used[from] + (to.Glass == stock ? to.Glasses : 0)).OnlyEnforceIf([follows, _washBefore[to].Not()]);

            // Says nothing new, but lets the solver see at once how many wash-ups no order can spare.
            if (!_mayRelax && !_day.Settings.Without.Contains(OrderRule.CleanGlass) && !_off.Any(off => off.Rule is OrderRule.CleanGlass))
                _model.Add(LinearExpr.Sum(_washBefore.Values) >= (_day.Jobs.Where(job => job.Glass == stock).Sum(job => job.Glasses) + stock.Count - 1) / stock.Count - 1);
        }
    }

    /// <summary>Once its kind of glass has been washed, a chilled drink waits for the freezer.</summary>
    private void LetGlassesChill()
    {
        if (!_day.Jobs.Any(job => job.Glass is not null && job.Drink.Spec.Serve.Chilled))
            return;
        var longAgo = _day.Start - _day.Pace.RechillMinutes;
        var washed = _day.Jobs.ToDictionary(job => job, job => _model.NewIntVar(longAgo, _day.Horizon, $"washed as of {job}"));
        foreach (var ((from, to), follows) in Arcs())
        {
            LinearExpr before = from is null ? LinearExpr.Constant(longAgo) : washed[from];
            _model.Add(washed[to] >= before).OnlyEnforceIf([follows, _washBefore[to].Not()]);
            _model.Add(washed[to] >= EndOf(from) + _day.Pace.WashUpMinutes).OnlyEnforceIf([follows, _washBefore[to]]);
        }

        foreach (var job in _day.Jobs.Where(job => job.Glass is not null && job.Drink.Spec.Serve.Chilled))
            _model.Add(_start[job] >= washed[job] + _day.Pace.RechillMinutes).OnlyEnforceIf(Requirement(OrderRule.ColdGlass, job.Name));
    }

    private void BreakInTime()
    {
        var longest = Math.Max(_day.Pace.LongestStretchMinutes, _day.Jobs.Select(job => job.Minutes + _day.Pace.ComparisonMinutes).DefaultIfEmpty().Max());
        var first = _day.Settings.SoFar?.LastBreakEnded is { } ended ? (int)Math.Floor(ended.TotalMinutes) : Math.Min(0, _day.Start);
        var since = _day.Jobs.ToDictionary(job => job, job => _model.NewIntVar(first, _day.Horizon, $"at work since, as of {job}"));
        foreach (var ((from, to), follows) in Arcs())
        {
            LinearExpr before = from is null ? LinearExpr.Constant(first) : since[from];
            _model.Add(since[to] <= before).OnlyEnforceIf([follows, _breakBefore[to].Not(), _mealBefore[to].Not()]);
            _model.Add(since[to] <= _start[to] - _day.ChangeMinutes(from ?? _day.LastFilmed, to) - _wait[to]).OnlyEnforceIf(follows);
        }

        foreach (var job in _day.Jobs)
        {
            _model.AddAtMostOne([_breakBefore[job], _mealBefore[job]]);
            var outro = _follows[(job, null)] * _day.Pace.OutroMinutes;
            _model.Add(EndOf(job) + outro - since[job] <= longest).OnlyEnforceIf(Requirement(OrderRule.BreakInTime, job.Name));
        }
    }

    private void EatInTime()
    {
        if (!_day.NeedsMeal)
            return;
        var kept = Requirement(OrderRule.MealInTime);
        _model.Add(LinearExpr.Sum(_mealBefore.Values) == 1).OnlyEnforceIf(kept);
        _model.Add(LinearExpr.Sum(_mealBefore.Values) <= 1);
        foreach (var ((from, to), follows) in Arcs())
            _model.Add(EndOf(from) + WashAndBatches(to) <= _day.Pace.MealByMinutes).OnlyEnforceIf([follows, _mealBefore[to]]);
    }

    private void WrapInTime()
    {
        if (_day.Settings.WrapBy is not { } wrapBy)
            return;
        var kept = Requirement(OrderRule.WrapInTime);
        foreach (var job in _day.Jobs)
            _model.Add(EndOf(job) + _day.Pace.OutroMinutes <= (int)Math.Floor(wrapBy.TotalMinutes)).OnlyEnforceIf([_follows[(job, null)], kept]);
    }
}
