using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Engine.Episodes;
using Barshow.Engine.Shooting;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Web.Desk;

/// <summary>The shoot plans that were made since the program started, so that one question is solved once; a stopped plan is not kept.</summary>
public sealed class ShootPlans : IDisposable
{
    private const int MostKept = 24;
    private readonly Lock _lock = new();
    private readonly LinkedList<(string Question, Bar Bar, ShootPlan Plan)> _kept = new();
    private readonly SemaphoreSlim _solvers = new(Math.Max(1, Environment.ProcessorCount / 2));

    /// <summary>Everything of an episode that the shoot day depends on, as text: two states that ask the same question have the same text.</summary>
    public static string QuestionOf(Episode episode)
    {
        ArgumentNullException.ThrowIfNull(episode);
        var asked = episode with
        {
            Title = "",
            Theme = "",
            Number = null,
            PublishDate = null,
            Gifts = [],
            Links = [],
            FilmLengthSeconds = null,
            Ticked = [],
            Brief = "",
            Lineup = [.. episode.Lineup.Select(drink => drink with { FilmSeconds = null, BriefLine = null, Spec = drink.Spec with { Stories = [], Sources = [], Notes = [], Taste = "" } })],
        };
        return JsonSerializer.Serialize(asked, DomainJson.Compact);
    }

    /// <summary>A plan that was made already; null when there is none.</summary>
    public ShootPlan? Find(string question, Bar bar)
    {
        lock (_lock)
        {
            for (var node = _kept.First; node is not null; node = node.Next)
            {
                if (node.Value.Question != question || !ReferenceEquals(node.Value.Bar, bar))
                    continue;
                _kept.Remove(node);
                _kept.AddFirst(node);
                return node.Value.Plan;
            }
        }

        return null;
    }

    /// <summary>The plan of an episode, solved now if it was not before. Stopping gives what was found so far.</summary>
    public async Task<ShootPlan> PlanAsync(Episode episode, Bar bar, IProgress<PlanningProgress>? progress, CancellationToken cancel)
    {
        var question = QuestionOf(episode);
        if (Find(question, bar) is { } known)
            return known;
        await _solvers.WaitAsync(cancel);
        try
        {
            if (Find(question, bar) is { } meanwhile)
                return meanwhile;
            // Without the token: stopping must give what was found, not an error.
            var plan = await Task.Run(() => ShootPlan.Of(episode, bar, progress: progress, cancel: cancel), CancellationToken.None);
            if (!plan.Order.Stopped && !plan.Mise.Stopped)
                Keep(question, bar, plan);
            return plan;
        }
        finally
        {
            _solvers.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _solvers.Dispose();

    private void Keep(string question, Bar bar, ShootPlan plan)
    {
        lock (_lock)
        {
            _kept.AddFirst((question, bar, plan));
            if (_kept.Count > MostKept)
                _kept.RemoveLast();
        }
    }
}
