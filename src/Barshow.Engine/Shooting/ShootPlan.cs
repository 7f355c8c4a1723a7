using Barshow.Engine.Episodes;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Engine.Shooting;

/// <summary>The whole shoot: the order of the day and what must be ready for it.</summary>
/// <param name="Order">The running order.</param>
/// <param name="Mise">The mise list, scheduled backward from that order.</param>
public sealed record ShootPlan(RunningOrder Order, MiseList Mise)
{
    /// <summary>Orders the takes, then places the mise around them. Takes seconds; the same question gets the same answer unless it was stopped.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="bar">What it is looked up in.</param>
    /// <param name="settings">What the user decides of the order; null for a house's defaults.</param>
    /// <param name="progress">Told what is being solved.</param>
    /// <param name="cancel">Stops the solver; what was found so far is returned.</param>
    public static ShootPlan Of(Episode episode, Bar bar, OrderSettings? settings = null, IProgress<PlanningProgress>? progress = null, CancellationToken cancel = default)
    {
        var order = RunningOrderPlanner.Plan(episode, bar, settings, progress, cancel);
        return new(order, MisePlanner.Plan(episode, bar, order, cancel: cancel));
    }
}
