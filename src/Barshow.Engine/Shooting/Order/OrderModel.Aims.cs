using Google.OrTools.Sat;

namespace Barshow.Engine.Shooting.Order;

/// <content>The aims, the fewest relaxations, and reading the answer back.</content>
internal sealed partial class OrderModel
{

    /// <summary>Lets go of the fewest requirements, the cheapest first; null when the solver was stopped or ran out before it found any order.</summary>
    public (IReadOnlyList<Requirement> Off, bool Proven)? FewestToRelax(CancellationToken cancel)
    {
        _model.Minimize(LinearExpr.Sum(_kept
            .Where(pair => !_day.Settings.Without.Contains(pair.Key.Rule))
            .Select(pair => pair.Value.NotAsExpr() * pair.Key.Rule.Weight())));
        using var solver = Solver(_day.Settings.EffortPerLevel, cancel, out var registration);
        using (registration)
        {
            var status = solver.Solve(_model);
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
                return null;
            return ([.. _kept.Where(pair => !_day.Settings.Without.Contains(pair.Key.Rule) && !solver.BooleanValue(pair.Value)).Select(pair => pair.Key)], status is CpSolverStatus.Optimal);
        }
    }

    /// <summary>Meets the aims in turn; null when no order keeps every requirement that is on.</summary>
    public OrderAnswer? Solve(IProgress<PlanningProgress>? progress, CancellationToken cancel)
    {
        HintViewerOrder();
        List<Level> levels = [];
        OrderAnswer? best = null;
        var impossible = false;
        foreach (var aim in _day.Settings.Aims.Distinct())
        {
            progress?.Report(new(NameOf(aim), levels.Count + 1, _day.Settings.Aims.Count + 1));
            var (value, unit, upward) = Measured(aim);
            if (upward)
                _model.Maximize(value);
            else
                _model.Minimize(value);
            using var solver = Solver(_day.Settings.EffortPerLevel, cancel, out var registration);
            CpSolverStatus status;
            using (registration)
            using (FirstFound found = new(() => progress?.Report(new("a first order is found", 1, _day.Settings.Aims.Count + 1))))
                status = levels.Count == 0 ? solver.Solve(_model, found) : solver.Solve(_model);
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                impossible = status is CpSolverStatus.Infeasible;
                break;
            }

            var reached = (long)Math.Round(solver.ObjectiveValue);
            levels.Add(new(NameOf(aim), reached, upward ? (long)Math.Floor(solver.BestObjectiveBound + 1e-6) : (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), unit, status is CpSolverStatus.Optimal));
            best = Read(solver);
            if (upward)
                _model.Add(value >= reached);
            else
                _model.Add(value <= reached);
            Hint(solver);
            if (cancel.IsCancellationRequested)
                break;
        }

        if (best is null)
            return impossible || cancel.IsCancellationRequested ? null : new([], [], false);
        best = Tidy(best, cancel);
        return best with { Levels = levels, Stopped = cancel.IsCancellationRequested };
    }

    /// <summary>With the order settled, the fewest breaks that the rules ask for, and each drink as early as it can be.</summary>
    private OrderAnswer Tidy(OrderAnswer answer, CancellationToken cancel)
    {
        for (var i = 0; i < answer.Stops.Count; i++)
        {
            var stop = answer.Stops[i];
            _model.Add(_follows[(i == 0 ? null : answer.Stops[i - 1].Job, stop.Job)] == 1);
            _model.Add(_washBefore[stop.Job] == (stop.Wash ? 1 : 0));
            _model.Add(_mealBefore[stop.Job] == (stop.Meal ? 1 : 0));
            foreach (var ((prep, before), batch) in _batchBefore)
                if (before == stop.Job)
                    _model.Add(batch == (stop.Batches.Contains(prep) ? 1 : 0));
        }

        _model.Minimize(LinearExpr.Sum(_breakBefore.Values) * (_day.Jobs.Count * _day.Horizon) + LinearExpr.Sum(_start.Values));
        using var solver = Solver(_day.Settings.EffortPerLevel, cancel, out var registration);
        using (registration)
            return solver.Solve(_model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? Read(solver) : answer;
    }

    private (LinearExpr Value, string Unit, bool Upward) Measured(OrderAim aim) => aim switch
    {
        OrderAim.ShortDay => (LinearExpr.Sum(Arcs().Select(arc => arc.Follows * _day.ChangeMinutes(arc.Arc.From ?? _day.LastFilmed, arc.Arc.To)))
            + LinearExpr.Sum(_day.Jobs.Select(WashAndBatchesBefore)) + LinearExpr.Sum(_wait.Values), "minutes", false),
        OrderAim.FreshnessInHand => (_inHand, "minutes", true),
        OrderAim.KindPalate => (LinearExpr.Sum(Arcs().Select(arc => arc.Follows * OrderDay.PalatePoints(arc.Arc.From ?? _day.LastFilmed, arc.Arc.To))), "points", false),
        _ => (LinearExpr.Sum(Arcs().Where(arc => arc.Arc.From is not null && arc.Arc.From.Place > arc.Arc.To.Place).Select(arc => arc.Follows * (arc.Arc.From!.Place - arc.Arc.To.Place))), "places back", false),
    };

    private LinearExpr WashAndBatchesBefore(DrinkJob job) => WashAndBatches(job);

    private static string NameOf(OrderAim aim) => aim switch
    {
        OrderAim.ShortDay => "fewest minutes lost between drinks",
        OrderAim.FreshnessInHand => "most minutes in hand in the tightest fresh window",
        OrderAim.KindPalate => "light to strong, dry to sweet, salt and chilli late",
        _ => "nearest to the viewer order",
    };

    private OrderAnswer Read(CpSolver solver)
    {
        List<OrderStop> stops = [];
        DrinkJob? at = null;
        while (_day.Jobs.FirstOrDefault(job => job != at && solver.BooleanValue(_follows[(at, job)])) is { } next)
        {
            stops.Add(new(next, (int)solver.Value(_start[next]), solver.BooleanValue(_washBefore[next]),
                [.. _batchBefore.Where(batch => batch.Key.Before == next && solver.BooleanValue(batch.Value)).Select(batch => batch.Key.Prep)],
                solver.BooleanValue(_mealBefore[next]), solver.BooleanValue(_breakBefore[next]), (int)solver.Value(_wait[next])));
            at = next;
        }

        return new(stops, [], false);
    }

    private void HintViewerOrder()
    {
        for (var i = 0; i <= _day.Jobs.Count; i++)
            if (_follows.TryGetValue((i == 0 ? null : _day.Jobs[i - 1], i == _day.Jobs.Count ? null : _day.Jobs[i]), out var follows))
                _model.AddHint(follows, 1);
    }

    private void Hint(CpSolver solver)
    {
        _model.ClearHints();
        foreach (var follows in _follows.Values)
            _model.AddHint(follows, solver.BooleanValue(follows) ? 1 : 0);
        foreach (var choice in _washBefore.Values.Concat(_breakBefore.Values).Concat(_mealBefore.Values).Concat(_batchBefore.Values))
            _model.AddHint(choice, solver.BooleanValue(choice) ? 1 : 0);
        foreach (var time in _start.Values.Concat(_wait.Values).Append(_inHand))
            _model.AddHint(time, solver.Value(time));
    }

    private sealed class FirstFound(Action tell) : CpSolverSolutionCallback
    {
        private bool _told;

        public override void OnSolutionCallback()
        {
            if (!_told)
                tell();
            _told = true;
        }
    }

    private static CpSolver Solver(double effort, CancellationToken cancel, out CancellationTokenRegistration registration)
    {
        CpSolver solver = new() { StringParameters = Parameters(effort) };
        registration = cancel.Register(solver.StopSearch);
        return solver;
    }
}

/// <summary>One drink of a solved order with what stands before it.</summary>
internal sealed record OrderStop(DrinkJob Job, int Start, bool Wash, IReadOnlyList<FreshPrep> Batches, bool Meal, bool Break, int Wait);

/// <summary>A solved order; without stops when the effort ran out before any was found.</summary>
internal sealed record OrderAnswer(IReadOnlyList<OrderStop> Stops, IReadOnlyList<Level> Levels, bool Stopped);
