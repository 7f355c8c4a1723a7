using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>Lists everything that must be ready and sets its hours backward from the call.</summary>
public static class MisePlanner
{
    /// <summary>The mise list of an episode's shoot day.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="bar">What its ingredients, glasses, tools and hands are looked up in.</param>
    /// <param name="order">When each drink is filmed.</param>
    /// <param name="pace">How long things take; null for a house's defaults.</param>
    /// <param name="effort">How much work a level may take before it stops unproven, in the solver's own seconds.</param>
    /// <param name="cancel">Stops the solver; what was found so far is returned and marked as stopped.</param>
    public static MiseList Plan(Episode episode, Bar bar, RunningOrder order, ShootingPace? pace = null, double effort = 1, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        ArgumentNullException.ThrowIfNull(order);
        pace ??= ShootingPace.Default;
        var hands = Math.Max(1, bar.House.Hands);
        if (episode.Lineup.Count == 0)
            return new() { Clock = order.Clock, Hands = hands, Findings = [OrderSentences.Nothing()] };

        var (tasks, findings) = MiseTasks.Of(episode, bar, pace, order);
        List<MiseTask> timed = [.. tasks.Where(task => task.Session is MiseSession.DuringTheShoot)];
        List<Level> levels = [];
        List<Finding> said = [.. findings];
        if (order.Clock.Call is null)
            said.Add(OrderSentences.CallNotFixed());
        foreach (var session in new[] { MiseSession.DayBefore, MiseSession.BeforeTheCall })
        {
            var solved = MiseSchedule.Solve([.. tasks.Where(task => task.Session == session)], hands, effort, cancel);
            if (!solved.Found)
                said.Add(MiseSentences.NotMade());
            timed.AddRange(solved.Tasks);
            levels.AddRange(solved.Levels);
        }

        said.AddRange(timed.Where(task => task.Start < task.NotBefore || task.End > task.NotAfter).Select(task => MiseSentences.WindowMissed(task, order.Clock)));
        said.AddRange(levels.Where(level => !level.Proven).Select(MiseSentences.Unproven));
        return new()
        {
            Clock = order.Clock,
            Hands = hands,
            Tasks = [.. timed.OrderBy(task => task.Start).ThenBy(task => task.Key, StringComparer.Ordinal)],
            Levels = levels,
            Findings = said,
            Stopped = cancel.IsCancellationRequested,
        };
    }
}
