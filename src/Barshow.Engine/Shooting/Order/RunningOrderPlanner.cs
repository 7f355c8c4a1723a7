using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Shooting.Order;

/// <summary>Puts the drinks of an episode into the order in which they are filmed.</summary>
public static class RunningOrderPlanner
{
    /// <summary>The running order of an episode's shoot day. The user's own order is kept where <see cref="Episode.ShootOrder"/> gives one, and its cost is shown.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="bar">What its ingredients, glasses and hands are looked up in.</param>
    /// <param name="settings">What the user decides; null for a house's defaults.</param>
    /// <param name="progress">Told what is being solved.</param>
    /// <param name="cancel">Stops the solver; what was found so far is returned and marked as stopped.</param>
    /// <remarks>The same question gets the same answer, unless it was stopped: one worker, a fixed seed and a limit of work rather than of time.</remarks>
    public static RunningOrder Plan(Episode episode, Bar bar, OrderSettings? settings = null, IProgress<PlanningProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        settings ??= new();
        var clock = ShootClock.Of(episode);
        if (episode.Lineup.Count == 0)
            return new() { Clock = clock, Findings = [OrderSentences.Nothing()] };

        var day = OrderDay.Of(episode, bar, settings);
        List<Finding> findings = [.. Doubts(day, bar)];
        if (clock.Call is null)
            findings.Add(OrderSentences.CallNotFixed());
        if (episode.ShootOrder.Count == 0)
            return Write(day, clock, Solve(day, null, progress, cancel), findings);

        var chosen = Chosen(day, findings);
        var own = Write(day, clock, Solve(day, chosen, progress, cancel), findings);
        var free = Write(day, clock, Solve(day, null, progress, cancel), []);
        if (own.Blocks.Count == 0 || free.Blocks.Count == 0)
            return own;
        OverrideCost cost = new(
            (int)(own.Wrap - free.Wrap).TotalMinutes,
            Palate(own) - Palate(free),
            [.. own.Relaxed.Where(requirement => !free.Relaxed.Contains(requirement))]);
        return own with { Override = cost, Findings = [.. own.Findings, OrderSentences.Overridden(cost)] };
    }

    private static int Palate(RunningOrder order) => order.Costs.Where(cost => cost.Unit == "points").Sum(cost => cost.Amount);

    private static List<DrinkJob> Chosen(OrderDay day, List<Finding> findings)
    {
        var named = day.Episode.ShootOrder.Distinct().ToList();
        var chosen = named.Select(slug => day.Jobs.FirstOrDefault(job => job.Slug == slug)).OfType<DrinkJob>().ToList();
        var left = day.Jobs.Except(chosen).ToList();
        if (left.Count > 0)
            findings.Add(OrderSentences.Incomplete(string.Join(", ", left.Select(job => job.Name)), ""));
        var unknown = named.Where(slug => !day.Episode.Lineup.Any(drink => drink.Spec.Slug == slug)).ToList();
        if (unknown.Count > 0)
            findings.Add(OrderSentences.Incomplete("", string.Join(", ", unknown)));
        return [.. chosen, .. left];
    }

    private static (OrderAnswer? Answer, IReadOnlyList<Requirement> Off, bool FewestProven) Solve(OrderDay day, IReadOnlyList<DrinkJob>? chosen, IProgress<PlanningProgress>? progress, CancellationToken cancel)
    {
        if (day.Jobs.Count == 0)
            return (new([], [], false), [], true);
        if (new OrderModel(day, [], mayRelax: false, chosen).Solve(progress, cancel) is { } answer)
            return (answer, [], true);
        progress?.Report(new("the fewest rules to let go", 1, 1));
        if (new OrderModel(day, [], mayRelax: true, chosen).FewestToRelax(cancel) is not { } fewest)
            return (null, [], false);
        return (new OrderModel(day, fewest.Off, mayRelax: false, chosen).Solve(progress, cancel), fewest.Off, fewest.Proven);
    }

    private static RunningOrder Write(OrderDay day, ShootClock clock, (OrderAnswer? Answer, IReadOnlyList<Requirement> Off, bool FewestProven) solved, List<Finding> findings)
    {
        if (solved.Answer is not { } answer || (answer.Stops.Count == 0 && day.Jobs.Count > 0))
            return new() { Clock = clock, Findings = [.. findings, OrderSentences.NotMade()], Stopped = true };
        RunningOrder order = new()
        {
            Clock = clock,
            Blocks = OrderBlocks.Of(day, answer.Stops),
            ShootOrder = [.. day.Filmed.Select(film => film.Film.Drink), .. answer.Stops.Select(stop => stop.Job.Slug)],
            Levels = answer.Levels,
            Costs = OrderCosts.Of(day, answer.Stops),
            Relaxed = solved.Off,
            Stopped = answer.Stopped,
        };
        order = order with { Fresh = FreshStretches.Of(day, order.Blocks) };
        findings = [.. findings,
            .. solved.Off.Select(requirement => OrderSentences.Relaxed(requirement, order, KeepsFor(day, requirement))),
            .. order.Fresh.Where(stretch => stretch.Batch > 1).Select(stretch => OrderSentences.FurtherBatch(stretch, clock)),
            .. answer.Levels.Where(level => !level.Proven).Select(OrderSentences.Unproven)];
        return order with { Findings = findings };
    }

    private static string KeepsFor(OrderDay day, Requirement requirement) =>
        day.Preps.FirstOrDefault(prep => prep.Name == requirement.Object) is { } prep ? ShootClock.SayDuration(TimeSpan.FromMinutes(prep.BestMinutes)) : "";

    private static IEnumerable<Finding> Doubts(OrderDay day, Bar bar)
    {
        foreach (var job in day.Jobs)
        {
            if (!bar.Kit.TryGetGlass(job.SetUp.Glass, out var glass) || glass.Count == 0)
                yield return OrderSentences.GlassUnknown(job.Name);
            else if (job.Parts.Any(part => part.Kind is BlockKind.WashUp))
                yield return OrderSentences.WashWithin(job.Name, glass.Name, day.Episode.TakesOf(job.Drink) + job.Drink.TastedSwapOuts + job.Drink.UntastedSwapOuts, glass.Count);
            if (!job.Drink.BesideDrink.IsEmpty && !day.Episode.Lineup.Any(other => other.Spec.Slug == job.Drink.BesideDrink))
                yield return OrderSentences.PairUnknown(job.Name, job.Drink.BesideDrink.Text);
        }

        foreach (var pin in new[] { Pin.Opener, Pin.Closer })
            if (day.Jobs.Where(job => job.Drink.Pin == pin).ToList() is [var first, .., var last])
                yield return OrderSentences.PinTwice(first.Name, last.Name, pin is Pin.Opener);
    }
}
