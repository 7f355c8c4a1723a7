using Barshow.Data.Stores;
using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing;
using Barshow.Engine.Shooting;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Web.Desk;

/// <summary>One open episode in one browser window: what is saved, what was computed of it, and how its changes are saved.</summary>
/// <remarks>Everything here runs on the window's own thread; the computing itself does not.</remarks>
public sealed class EpisodeDesk(EpisodeStore episodes, BarStore bars, FeaturedLogStore logs, ShootPlans plans, TimeProvider clock) : IDisposable
{
    private readonly SemaphoreSlim _saving = new(1, 1);
    private CancellationTokenSource _open = new();
    private Stored<Episode>? _saved;
    private Episode? _before;
    private CancellationTokenSource? _planning;
    private ShootPlan? _plan;
    private string _planned = "";
    private int _asked;

    /// <summary>Raised when anything here has changed.</summary>
    public event Action? Changed;

    /// <summary>The episode as it stands on the screen.</summary>
    /// <exception cref="InvalidOperationException">None is open.</exception>
    public Episode Episode { get => field ?? throw new InvalidOperationException("No episode is open."); private set; }

    /// <summary>What it is looked up in.</summary>
    public Bar Bar { get => field ?? throw new InvalidOperationException("No episode is open."); private set; }

    /// <summary>All that was featured.</summary>
    public FeaturedLog Log { get; private set; } = FeaturedLog.Empty;

    /// <summary>What was computed of it.</summary>
    public EpisodeWork Work { get => field ?? throw new InvalidOperationException("No episode is open."); private set; }

    /// <summary>Whether the running order and the mise list were planned before the last change.</summary>
    public bool IsPlanStale { get; private set; }

    /// <summary>Whether the running order is being solved.</summary>
    public bool IsPlanning => _planning is not null;

    /// <summary>How far the solver is; null before it has said so.</summary>
    public PlanningProgress? Planning { get; private set; }

    /// <summary>Today at the house.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>Whether an episode is open.</summary>
    public bool IsOpen => _saved is not null;

    /// <summary>Counts its saves from 1.</summary>
    public int Version => _saved?.Version ?? 0;

    /// <summary>When it was saved last.</summary>
    public DateTimeOffset? SavedAt => _saved?.SavedAt;

    /// <summary>Whether a save is under way.</summary>
    public bool IsSaving { get; private set; }

    /// <summary>Why what is on the screen is not saved, a sentence; null when it is.</summary>
    public string? Problem { get; private set; }

    /// <summary>The episode as someone else saved it meanwhile; null without a conflict.</summary>
    public Episode? Theirs => _theirs?.Value;

    private Stored<Episode>? _theirs;

    /// <summary>Whether the last change can be taken back.</summary>
    public bool CanUndo => _before is not null;

    /// <summary>Opens an episode and computes it; an episode that is open already is read anew only when it was saved elsewhere.</summary>
    /// <returns>Whether there is such an episode.</returns>
    public async Task<bool> OpenAsync(Slug slug, CancellationToken cancel = default)
    {
        var found = await episodes.FindAsync(slug, cancel);
        if (found is null)
            return false;
        if (_saved is not null && Episode.Slug == slug && (_saved.Version == found.Version || Problem is not null))
            return true;
        await _open.CancelAsync();
        _open.Dispose();
        _open = new();
        StopPlanning();
        (_plan, _planned, IsPlanStale) = (null, "", false);
        (_before, _theirs, Problem) = (null, null, null);
        Bar = await bars.LoadAsync(cancel);
        Log = await logs.LoadAsync(cancel);
        Episode = found.Value;
        _planned = ShootPlans.QuestionOf(found.Value);
        _plan = plans.Find(_planned, Bar);
        Work = await ComputeAsync(found.Value, cancel);
        _saved = found;
        Changed?.Invoke();
        return true;
    }

    /// <summary>Changes the episode, shows what comes of it, and saves it.</summary>
    public async Task ChangeAsync(Func<Episode, Episode> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        var before = Episode;
        var after = change(before);
        if (ReferenceEquals(before, after))
            return;
        _before = before;
        Episode = after;
        await ShowAsync();
        await SaveAsync();
    }

    /// <summary>Takes the last change back.</summary>
    public async Task UndoAsync()
    {
        if (_before is not { } before)
            return;
        _before = null;
        Episode = before;
        await ShowAsync();
        await SaveAsync();
    }

    /// <summary>Ends a conflict: the parts named are taken from what the other saved, the rest stays as it is here, and the whole is saved over both.</summary>
    public async Task SettleAsync(IEnumerable<EpisodeField> fromTheirs)
    {
        ArgumentNullException.ThrowIfNull(fromTheirs);
        if (_theirs is not { } theirs)
            return;
        Episode = fromTheirs.Aggregate(Episode, (episode, field) => field.Take(episode, theirs.Value));
        (_saved, _theirs, _before, Problem) = (theirs, null, null, null);
        await ShowAsync();
        await SaveAsync();
    }

    /// <summary>Tries again to save what is on the screen.</summary>
    public Task RetryAsync() => SaveAsync();

    /// <summary>Plans the running order and the mise list in the background, unless that is done already.</summary>
    public async Task PlanAsync()
    {
        if (IsPlanning || (_plan is not null && !IsPlanStale) || Episode.Lineup.Count == 0)
            return;
        using var planning = CancellationTokenSource.CreateLinkedTokenSource(_open.Token);
        _planning = planning;
        Planning = null;
        Changed?.Invoke();
        try
        {
            var asked = Episode;
            var progress = new Progress<PlanningProgress>(Tell);
            var plan = await plans.PlanAsync(asked, Bar, progress, planning.Token);
            if (_open.IsCancellationRequested)
                return;
            (_plan, _planned) = (plan, ShootPlans.QuestionOf(asked));
        }
        catch (OperationCanceledException)
        {
            // Stopped while it waited for another solver: there is nothing to show.
        }
        finally
        {
            _planning = null;
            Planning = null;
        }

        if (!_open.IsCancellationRequested)
            await ShowAsync();
    }

    /// <summary>Stops the solver; what it has found so far is shown.</summary>
    public void StopPlanning() => _planning?.Cancel();

    /// <inheritdoc/>
    public void Dispose()
    {
        _open.Cancel();
        _open.Dispose();
        _saving.Dispose();
    }

    // Quick changes overtake one another: only what was asked last is shown.
    private async Task ShowAsync()
    {
        var asked = ++_asked;
        var work = await ComputeAsync(Episode, _open.Token);
        if (asked != _asked)
            return;
        Work = work;
        Changed?.Invoke();
    }

    // A plan for other drinks is of no use; one for the same drinks is shown as stale until it is planned again.
    private Task<EpisodeWork> ComputeAsync(Episode episode, CancellationToken cancel)
    {
        var question = ShootPlans.QuestionOf(episode);
        if (question != _planned && plans.Find(question, Bar) is { } known)
            (_plan, _planned) = (known, question);
        if (_plan is not null && !_plan.Order.ShootOrder.ToHashSet().SetEquals(episode.Lineup.Select(drink => drink.Spec.Slug)))
            _plan = null;
        IsPlanStale = _plan is not null && question != _planned;
        var (bar, log, today, plan) = (Bar, Log, Today, _plan);
        return Task.Run(() => EpisodeWork.Of(episode, bar, log, today, plan), cancel);
    }

    private void Tell(PlanningProgress progress)
    {
        Planning = progress;
        Changed?.Invoke();
    }

    private async Task SaveAsync()
    {
        var open = _open.Token;
        await _saving.WaitAsync(open);
        try
        {
            if (_theirs is not null || _saved is null || open.IsCancellationRequested)
                return;
            var wanted = Episode;
            if (ReferenceEquals(wanted, _saved.Value))
                return;
            IsSaving = true;
            Changed?.Invoke();
            switch (await episodes.SaveAsync(wanted, _saved.Version, cancel: CancellationToken.None))
            {
                case SaveResult<Episode>.Saved saved:
                    _saved = saved.Now with { Value = wanted };
                    Problem = null;
                    break;
                case SaveResult<Episode>.Conflict conflict:
                    _theirs = conflict.Theirs;
                    Problem = "Not saved: someone else saved this episode meanwhile.";
                    break;
                default:
                    Problem = "Not saved: this episode was deleted meanwhile. It waits in the bin of the episodes.";
                    break;
            }
        }
        catch (Exception problem) when (problem is System.Data.Common.DbException or IOException or Microsoft.EntityFrameworkCore.DbUpdateException)
        {
            Problem = $"Not saved: {problem.Message.TrimEnd('.')}. What you typed is still here.";
        }
        finally
        {
            IsSaving = false;
            _saving.Release();
            Changed?.Invoke();
        }
    }
}
