using System.Globalization;
using Barshow.Engine.Shooting.Order;
using Google.OrTools.Sat;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>Sets the hours of the tasks of one session backward from the call. Times are whole minutes from the call.</summary>
internal sealed class MiseSchedule
{
    private readonly CpModel _model = new();
    private readonly IReadOnlyList<MiseTask> _tasks;
    private readonly int _hands;
    private readonly IReadOnlySet<string> _off;
    private readonly bool _mayRelax;
    private readonly Dictionary<MiseTask, IntVar> _start = [];
    private readonly Dictionary<MiseTask, IntervalVar> _span = [];
    private readonly Dictionary<(MiseTask Task, string Bound), BoolVar> _kept = [];
    private readonly int _earliest;
    private readonly int _latest;

    private MiseSchedule(IReadOnlyList<MiseTask> tasks, int hands, IReadOnlySet<string> off, bool mayRelax)
    {
        _tasks = tasks;
        _hands = hands;
        _off = off;
        _mayRelax = mayRelax;
        _latest = tasks.Max(task => Floor(task.NotAfter));
        _earliest = tasks.Min(task => Floor(task.NotAfter)) - tasks.Sum(Minutes) - 24 * 60;
        Decide();
        ShareHands();
        ShareEquipment();
        KeepPrecedence();
        KeepWindows();
    }

    /// <summary>The tasks with their hours; unchanged when none were found.</summary>
    public static (IReadOnlyList<MiseTask> Tasks, IReadOnlyList<Level> Levels, bool Found) Solve(IReadOnlyList<MiseTask> tasks, int hands, double effort, CancellationToken cancel)
    {
        if (tasks.Count == 0)
            return (tasks, [], true);
        if (new MiseSchedule(tasks, hands, new HashSet<string>(), false).Solve(effort, cancel) is { } kept)
            return (kept.Tasks, kept.Levels, true);
        if (new MiseSchedule(tasks, hands, new HashSet<string>(), true).FewestToRelax(effort, cancel) is not { } off)
            return (tasks, [], false);
        return new MiseSchedule(tasks, hands, off, false).Solve(effort, cancel) is { } relaxed ? (relaxed.Tasks, relaxed.Levels, true) : (tasks, [], false);
    }

    private void Decide()
    {
        foreach (var task in _tasks)
        {
            _start[task] = _model.NewIntVar(_earliest, _latest, $"start of {task.Key}");
            _span[task] = _model.NewFixedSizeIntervalVar(_start[task], Minutes(task), task.Key);
        }
    }

    private void ShareHands()
    {
        if (_hands == 1)
        {
            _model.AddNoOverlap(_span.Values);
            return;
        }

        var busy = _model.AddCumulative(_hands);
        foreach (var task in _tasks)
            busy.AddDemand(_span[task], Math.Min(_hands, task.Hands));
    }

    private void ShareEquipment()
    {
        foreach (var group in _tasks.Where(task => task.Equipment.Length > 0).GroupBy(task => task.Equipment))
            _model.AddNoOverlap(group.Select(task => _span[task]));
    }

    private void KeepPrecedence()
    {
        foreach (var task in _tasks)
            foreach (var before in _tasks.Where(before => task.After.Contains(before.Key)))
                _model.Add(_start[before] + Minutes(before) <= _start[task]);
    }

    private void KeepWindows()
    {
        foreach (var task in _tasks)
        {
            _model.Add(_start[task] >= (int)Math.Ceiling(task.NotBefore.TotalMinutes)).OnlyEnforceIf(Kept(task, "not before"));
            _model.Add(_start[task] + Minutes(task) <= Floor(task.NotAfter)).OnlyEnforceIf(Kept(task, "not after"));
        }
    }

    private BoolVar Kept(MiseTask task, string bound)
    {
        var kept = _model.NewBoolVar($"{task.Key} {bound}");
        _kept[(task, bound)] = kept;
        if (_off.Contains($"{task.Key} {bound}"))
            _model.Add(kept == 0);
        else if (!_mayRelax)
            _model.Add(kept == 1);
        return kept;
    }

    private HashSet<string>? FewestToRelax(double effort, CancellationToken cancel)
    {
        _model.Minimize(LinearExpr.Sum(_kept.Select(pair => pair.Value.NotAsExpr() * (pair.Key.Bound == "not after" ? 2 : 1))));
        using var solver = Solver(effort);
        using var registration = cancel.Register(solver.StopSearch);
        return solver.Solve(_model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? [.. _kept.Where(pair => !solver.BooleanValue(pair.Value)).Select(pair => $"{pair.Key.Task.Key} {pair.Key.Bound}")]
            : null;
    }

    private (IReadOnlyList<MiseTask> Tasks, IReadOnlyList<Level> Levels)? Solve(double effort, CancellationToken cancel)
    {
        List<Level> levels = [];
        IReadOnlyList<MiseTask>? best = null;
        var begins = _model.NewIntVar(_earliest, _latest, "work begins");
        _model.AddMinEquality(begins, _start.Values);
        (string Aim, string Unit, LinearExpr Early, Func<Dictionary<MiseTask, int>, long> Measure)[] aims =
        [
            ("least early work on what perishes", "weighted minutes",
                LinearExpr.Sum(_tasks.Where(task => task.Perishes > 0).Select(task => (_latest - Minutes(task) - _start[task]) * task.Perishes)),
                starts => starts.Sum(placed => (long)(_latest - Minutes(placed.Key) - placed.Value) * placed.Key.Perishes)),
            ("latest beginning", "minutes before the session ends", _latest - begins, starts => _latest - starts.Values.Min()),
        ];
        Hint(ByHand(), begins);
        foreach (var (aim, unit, early, measure) in aims)
        {
            _model.Minimize(early);
            using var solver = Solver(effort);
            using var registration = cancel.Register(solver.StopSearch);
            var status = solver.Solve(_model);
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
                break;
            var starts = AsLateAsTheyGo(_tasks.ToDictionary(task => task, task => (int)solver.Value(_start[task])));
            var (reached, bound) = (measure(starts), (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));
            levels.Add(new(aim, reached, bound, unit, status is CpSolverStatus.Optimal || reached == bound));
            best = [.. _tasks.Select(task => task with { Start = At(starts[task]), End = At(starts[task] + Minutes(task)) })];
            _model.Add(early <= reached);
            Hint(starts, begins);
            if (cancel.IsCancellationRequested)
                break;
        }

        return best is null ? null : (best, levels);
    }

    private void Hint(Dictionary<MiseTask, int> starts, IntVar begins)
    {
        _model.ClearHints();
        foreach (var (task, start) in starts)
            _model.AddHint(_start[task], start);
        _model.AddHint(begins, starts.Values.Min());
    }

    /// <summary>Hours as a person would set them: from the end backward, what perishes most placed first, each as late as hands, equipment and what follows it allow. A beginning for the solver.</summary>
    private Dictionary<MiseTask, int> ByHand()
    {
        Dictionary<MiseTask, int> starts = [];
        while (starts.Count < _tasks.Count)
        {
            // A task is placed when all that must follow it is.
            var next = _tasks.Where(task => !starts.ContainsKey(task) && !_tasks.Any(later => later.After.Contains(task.Key) && later != task && !starts.ContainsKey(later)))
                .OrderByDescending(task => task.Perishes).ThenByDescending(Minutes).FirstOrDefault()
                ?? _tasks.First(task => !starts.ContainsKey(task));
            var end = _tasks.Where(later => later.After.Contains(next.Key) && starts.ContainsKey(later)).Select(later => starts[later]).Append(Floor(next.NotAfter)).Min();
            while (!Fits(next, end - Minutes(next), starts))
                end--;
            starts[next] = end - Minutes(next);
        }

        return starts;
    }

    /// <summary>The same hours with every task moved as late as the others allow, until none can be moved: nothing grows earlier by it, so it worsens no aim.</summary>
    /// <remarks>The aims leave what does not perish free to lie anywhere behind the first task, and nobody lays a tray at four in the morning.</remarks>
    private Dictionary<MiseTask, int> AsLateAsTheyGo(Dictionary<MiseTask, int> hours)
    {
        Dictionary<MiseTask, int> starts = new(hours);
        bool moved;
        do
        {
            moved = false;
            foreach (var (task, now) in starts.OrderByDescending(placed => placed.Value).ThenBy(placed => placed.Key.Key, StringComparer.Ordinal).ToList())
            {
                starts.Remove(task);
                var end = starts.Where(later => later.Key.After.Contains(task.Key)).Select(later => later.Value).Append(Math.Max(Floor(task.NotAfter), now + Minutes(task))).Min();
                while (end > now + Minutes(task) && !Fits(task, end - Minutes(task), starts))
                    end--;
                starts[task] = Math.Max(now, end - Minutes(task));
                moved |= starts[task] > now;
            }
        }
        while (moved);
        return starts;
    }

    private bool Fits(MiseTask task, int start, Dictionary<MiseTask, int> starts)
    {
        var beside = starts.Where(placed => placed.Value < start + Minutes(task) && placed.Value + Minutes(placed.Key) > start).ToList();
        if (task.Equipment.Length > 0 && beside.Any(placed => placed.Key.Equipment == task.Equipment))
            return false;
        // Hands are short somewhere in the span only if they are at its start or where another task begins in it.
        return beside.Select(placed => Math.Max(start, placed.Value)).Append(start)
            .All(at => beside.Where(placed => placed.Value <= at && placed.Value + Minutes(placed.Key) > at).Sum(placed => Math.Min(_hands, placed.Key.Hands)) + Math.Min(_hands, task.Hands) <= _hands);
    }

    private static CpSolver Solver(double effort) => new()
    {
        StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1 random_seed:1 max_deterministic_time:{effort}"),
    };

    private static int Minutes(MiseTask task) => (int)Math.Ceiling(task.Duration.TotalMinutes);

    private static int Floor(TimeSpan time) => (int)Math.Floor(time.TotalMinutes);

    private static TimeSpan At(long minutes) => TimeSpan.FromMinutes(minutes);
}
