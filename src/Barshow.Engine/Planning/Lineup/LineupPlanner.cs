using Barshow.Engine.Findings;
using Barshow.Engine.Planning.Baskets;
using Google.OrTools.Sat;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>Chooses a lineup from a catalogue: every requirement kept, the aims met one after the other, each with its proof.</summary>
/// <remarks>
/// One worker, a fixed seed and a limit in the solver's own deterministic time: the same question gets the same answer.
/// A run that is stopped says so and promises no repeat.
/// </remarks>
public sealed class LineupPlanner
{
    private readonly CandidateBook _book;
    private readonly Action<LineupProgress>? _progress;
    private readonly CancellationToken _cancel;
    private readonly IReadOnlySet<RequirementKind>? _off;
    private readonly List<Finding> _findings = [];

    private LineupPlanner(CandidateBook book, Action<LineupProgress>? progress, IReadOnlySet<RequirementKind>? off, CancellationToken cancel)
    {
        _book = book;
        _progress = progress;
        _cancel = cancel;
        _off = off;
        _findings.AddRange(book.Findings);
    }

    private LineupQuestion Question => _book.Question;

    /// <summary>Plans a lineup.</summary>
    /// <param name="question">What to choose from, what to keep to, what to aim at.</param>
    /// <param name="progress">Called with the best so far, on the solver's thread; null for none.</param>
    /// <param name="cancel">Stops the run; the best so far is returned and marked as stopped.</param>
    public static LineupPlan Plan(LineupQuestion question, Action<LineupProgress>? progress = null, CancellationToken cancel = default) =>
        Plan(question, progress, null, cancel);

    internal static LineupPlan Plan(LineupQuestion question, Action<LineupProgress>? progress, IReadOnlySet<RequirementKind>? off, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        return new LineupPlanner(CandidateBook.Of(question), progress, off, cancel).Run();
    }

    private LineupPlan Run()
    {
        foreach (var missing in Question.MustHave.Where(slug => _book.Candidates.All(candidate => candidate.Slug != slug)))
            _findings.Add(PlanningFindings.MustHaveUnknown(missing));
        if (Question.Count < 1)
            return Refuse([_book.Requirements[_book.PlaceOf(RequirementKind.Count)]], proven: true);
        var aims = Question.Aims.Distinct().ToList();
        var greedy = new LineupStart(_book, _cancel).Greedy(aims);
        var best = _off is null ? new LineupStart(_book, _cancel).Found(aims) : greedy;
        var start = IsKept(best) ? best : null;
        if (start is not null)
            Report(aims.Count > 0 ? aims[0] : null, start, aims.Count > 0 ? ValueOf(start, aims[0]) : null, null);

        var model = new LineupModel(_book, off: _off);
        var levels = new List<LineupLevel>();
        var (lineup, stopped) = (start, false);
        foreach (var aim in aims)
        {
            if (_cancel.IsCancellationRequested)
            {
                stopped = true;
                break;
            }

            var value = model.ValueOf(aim);
            var solved = Solve(model, value, lineup, aim);
            if (solved.Status is CpSolverStatus.Infeasible or CpSolverStatus.ModelInvalid)
                return Impossible();
            if (solved.Lineup is null && lineup is null)
                return stopped || _cancel.IsCancellationRequested ? End(null, levels, greedy, LineupOutcome.Stopped) : End(null, levels, greedy, LineupOutcome.NotFound);
            lineup = solved.Lineup ?? lineup!;
            var reached = ValueOf(lineup, aim);
            levels.Add(new(aim, Shown(aim, reached), Shown(aim, Math.Min(reached, solved.Bound)), solved.Status is CpSolverStatus.Optimal));
            stopped |= _cancel.IsCancellationRequested;
            model.Model.Add(value <= reached);
        }

        if (!stopped)
        {
            var order = Solve(model, model.Order, lineup, null);
            if (order.Status is CpSolverStatus.Infeasible)
                return Impossible();
            lineup = order.Lineup ?? lineup;
            stopped = _cancel.IsCancellationRequested;
        }

        return End(lineup, levels, greedy, stopped ? LineupOutcome.Stopped : lineup is null ? LineupOutcome.NotFound : LineupOutcome.Planned);
    }

    private readonly record struct Solved(CpSolverStatus Status, IReadOnlyCollection<int>? Lineup, long Bound);

    private Solved Solve(LineupModel model, LinearExpr aim, IReadOnlyCollection<int>? start, Aim? named)
    {
        model.Model.Minimize(aim);
        if (start is not null)
            model.StartFrom(start);
        var solver = new CpSolver { StringParameters = Parameters(Question.WorkLimit) };
        using var stop = _cancel.Register(solver.StopSearch);
        var status = solver.Solve(model.Model, new BestSoFar(model, (lineup, bound) => Report(named, lineup, named is { } level ? ValueOf(lineup, level) : null, bound)));
        var found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        return new(status, found ? model.Chosen(solver.BooleanValue) : null, (long)Math.Ceiling(Math.Clamp(solver.BestObjectiveBound, -1e15, 1e15) - 1e-6));
    }

    internal static string Parameters(double work) =>
        FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{work},linearization_level:2");

    private LineupPlan Impossible()
    {
        var model = new LineupModel(_book, switches: true);
        var solver = new CpSolver { StringParameters = Parameters(Question.WorkLimit) };
        using var stop = _cancel.Register(solver.StopSearch);
        // Keep as many requirements as can be kept, then as many drinks; of equal choices the requirements named first.
        model.Model.Maximize(1000 * model.Kept + model.Drinks);
        var status = solver.Solve(model.Model);
        var relax = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? model.LetGo(solver.BooleanValue) : _book.Requirements;
        return Refuse(relax, status is CpSolverStatus.Optimal);
    }

    private LineupPlan Refuse(IReadOnlyList<Requirement> relax, bool proven) => new()
    {
        Outcome = _cancel.IsCancellationRequested ? LineupOutcome.Stopped : LineupOutcome.Impossible,
        Priced = _book.Priced,
        Relax = relax,
        RelaxProven = proven,
        Findings = [.. _findings, PlanningFindings.LineupImpossible(relax)],
    };

    private LineupPlan End(IReadOnlyCollection<int>? lineup, IReadOnlyList<LineupLevel> levels, IReadOnlyCollection<int> greedy, LineupOutcome outcome)
    {
        if (outcome is LineupOutcome.Stopped)
            _findings.Add(PlanningFindings.LineupStopped());
        else if (outcome is LineupOutcome.NotFound)
            _findings.Add(PlanningFindings.LineupNotFound());
        else if (levels.Any(level => !level.Proven))
            _findings.Add(PlanningFindings.LineupNotProven(levels.First(level => !level.Proven)));
        if (lineup is null)
            return new() { Outcome = outcome, Priced = _book.Priced, Levels = levels, Findings = _findings };

        var picks = new LineupReasons(_book, lineup, _cancel).Picks();
        var basket = BasketPlanner.Plan(LineupCheck.EpisodeOf(Question, [.. picks.Select(pick => pick.Spec)]), Question.Bar, DemandFor.Viewer);
        _findings.AddRange(LineupCheck.Check(Question, picks, basket));
        return new()
        {
            Outcome = outcome,
            Picks = picks,
            Levels = levels,
            Basket = basket,
            Priced = _book.Priced,
            GreedyCost = IsKept(greedy) ? Shown(Aim.Cost, ValueOf(greedy, Aim.Cost)) : null,
            Findings = _findings,
        };
    }

    private bool IsKept(IReadOnlyCollection<int> lineup) => TallyOf(lineup).Broken() == 0;

    private long ValueOf(IReadOnlyCollection<int> lineup, Aim aim) => TallyOf(lineup).ValueOf(aim);

    private LineupTally TallyOf(IReadOnlyCollection<int> lineup)
    {
        var tally = new LineupTally(_book);
        foreach (var place in lineup)
            tally.Add(place);
        return tally;
    }

    private decimal Shown(Aim aim, long value) => aim switch
    {
        Aim.Cost when _book.Priced => value / 100m,
        Aim.Variety => -value,
        _ => value,
    };

    private void Report(Aim? aim, IReadOnlyCollection<int> lineup, long? value, double? bound) => _progress?.Invoke(new(
        aim,
        [.. lineup.Select(place => _book.Candidates[place].Slug).Order()],
        aim is { } valued && value is { } amount ? Shown(valued, amount) : null,
        aim is { } bounded && bound is { } limit ? Shown(bounded, (long)Math.Ceiling(Math.Clamp(limit, -1e15, 1e15) - 1e-6)) : null));

    private sealed class BestSoFar(LineupModel model, Action<IReadOnlyList<int>, double> report) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback() => report(model.Chosen(BooleanValue), BestObjectiveBound());
    }
}
