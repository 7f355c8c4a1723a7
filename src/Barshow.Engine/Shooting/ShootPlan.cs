using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Engine.Shooting;

/// <summary>The whole shoot: the order of the day and what must be ready for it.</summary>
/// <param name="Order">The running order.</param>
/// <param name="Mise">The mise list, scheduled backward from that order.</param>
/// <remarks>
/// Two stages: the order as if every prep were ready just before the call, then the mise around it. Where hands and equipment cannot keep that,
/// the order is planned again from the hours the mise can keep. The levels are proven for those hours; whether other hours would allow
/// a better order is not proven when more than one round was needed.
/// </remarks>
public sealed record ShootPlan(RunningOrder Order, MiseList Mise)
{
    private const int MostRounds = 4;

    /// <summary>The order for viewers.</summary>
    public ViewerOrder Viewers { get; init; } = new();

    /// <summary>How much is poured and tasted.</summary>
    public TastingLoad Tasting { get; init; } = new();

    /// <summary>How often the order was planned: more than once when the mise could not be ready as late as the order hoped.</summary>
    public int Rounds { get; init; } = 1;

    /// <summary>Whether both are known to be the best there are.</summary>
    public bool Proven => Order.Proven && Mise.Proven && Rounds == 1;

    /// <summary>What all of them have to say, each thing once.</summary>
    public IReadOnlyList<Finding> Findings =>
        [.. Order.Findings.Concat(Viewers.Findings).Concat(Tasting.Findings).Concat(Mise.Findings).DistinctBy(finding => (finding.Kind, finding.Subject, finding.Message))];

    /// <summary>Orders the takes, then places the mise around them. Takes seconds; the same question gets the same answer unless it was stopped.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="bar">What it is looked up in.</param>
    /// <param name="settings">What the user decides of the order; null for a house's defaults.</param>
    /// <param name="progress">Told what is being solved.</param>
    /// <param name="cancel">Stops the solver; what was found so far is returned.</param>
    public static ShootPlan Of(Episode episode, Bar bar, OrderSettings? settings = null, IProgress<PlanningProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        settings ??= new();
        bar = bar.For(episode);
        for (var round = 1; ; round++)
        {
            var order = RunningOrderPlanner.Plan(episode, bar, settings, progress, cancel);
            progress?.Report(new("the hours of the mise", settings.Aims.Count + 1, settings.Aims.Count + 1));
            var mise = MisePlanner.Plan(episode, bar, order, settings.Pace, cancel: cancel);
            var cut = Cut(mise, settings);
            if (cut.Count == 0 || round == MostRounds || cancel.IsCancellationRequested)
                return new(order, mise)
                {
                    Rounds = round,
                    Viewers = ViewerOrderPlanner.Plan(episode, bar, cancel: cancel),
                    Tasting = TastingLoad.Of(episode, bar, settings.Pace),
                };
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
