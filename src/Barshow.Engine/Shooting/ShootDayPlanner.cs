using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Engine.Shooting;

/// <summary>A shoot day: the order of its blocks and the mise list that makes it possible.</summary>
/// <param name="Order">The running order.</param>
/// <param name="Mise">The mise list.</param>
/// <param name="Rounds">How often the order was planned: more than once when the mise could not be ready as late as the order hoped.</param>
public sealed record ShootDay(RunningOrder Order, MiseList Mise, int Rounds)
{
    /// <summary>What both have to say, each thing once.</summary>
    public IReadOnlyList<Finding> Findings => [.. Order.Findings.Concat(Mise.Findings).DistinctBy(finding => (finding.Kind, finding.Subject, finding.Message))];
}

/// <summary>Plans order and mise in two stages: the order as if every prep were ready just before the call, then the mise around it; where hands and equipment cannot keep that, the order is planned again from the hours the mise can keep.</summary>
/// <remarks>What the levels prove, they prove for the hours at which the mise is ready; whether other hours would allow a better order is not proven when more than one round was needed.</remarks>
public static class ShootDayPlanner
{
    private const int MostRounds = 4;

    /// <summary>The shoot day of an episode.</summary>
    public static ShootDay Plan(Episode episode, Bar bar, OrderSettings? settings = null, IProgress<PlanningProgress>? progress = null, CancellationToken cancel = default)
    {
        settings ??= new();
        for (var round = 1; ; round++)
        {
            var order = RunningOrderPlanner.Plan(episode, bar, settings, progress, cancel);
            progress?.Report(new("the hours of the mise", 1, 1));
            var mise = MisePlanner.Plan(episode, bar, order, settings.Pace, cancel: cancel);
            var cut = Cut(mise, settings);
            if (cut.Count == 0 || round == MostRounds || cancel.IsCancellationRequested)
                return new(order, mise, round);
            settings = settings with { ReadyAt = new Dictionary<Slug, TimeSpan>(settings.ReadyAt.Where(at => !cut.ContainsKey(at.Key)).Concat(cut)) };
        }
    }

    /// <summary>The hours at which first batches are really ready, where those are too early for the order's windows.</summary>
    private static Dictionary<Slug, TimeSpan> Cut(MiseList mise, OrderSettings settings) => mise.Tasks
        .Where(task => !task.Makes.IsEmpty && task.Session is not MiseSession.DuringTheShoot && task.Start < task.NotBefore)
        .Where(task => !settings.ReadyAt.TryGetValue(task.Makes, out var known) || task.End < known)
        .GroupBy(task => task.Makes)
        .ToDictionary(group => group.Key, group => group.Min(task => task.End));
}
