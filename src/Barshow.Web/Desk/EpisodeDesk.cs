using Barshow.Data.Stores;
using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing;
using Barshow.Engine.Shooting;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Web.Desk;

/// <summary>One open episode in one browser window: what is saved, what was computed of it, and the shoot plan that is solved in the background.</summary>
/// <remarks>Everything here runs on the window's own thread; the computing itself does not.</remarks>
public sealed class EpisodeDesk(EpisodeStore episodes, BarStore bars, FeaturedLogStore logs, ShootPlans plans, TimeProvider clock) : IDisposable
{
    private CancellationTokenSource _open = new();
    private CancellationTokenSource? _planning;
    private ShootPlan? _plan;
    private Episode? _computed;
    private string _planned = "";
    private int _asked;

    /// <summary>Raised when anything here has changed.</summary>
    public event Action? Changed;

    /// <summary>The episode as it is changed and saved.</summary>
    /// <exception cref="InvalidOperationException">None is open.</exception>
    public Draft<Episode> Draft { get => field ?? throw new InvalidOperationException("No episode is open."); private set; }

    /// <summary>The episode that <see cref="Work"/> was computed of; a step behind <see cref="Draft"/> while that is computed.</summary>
    public Episode Episode => Work.Episode;

    /// <summary>What it is looked up in.</summary>
    public Bar Bar { get => field ?? throw new InvalidOperationException("No episode is open."); private set; }

    /// <summary>All that was featured.</summary>
    public FeaturedLog Log { get; private set; } = FeaturedLog.Empty;

    /// <summary>What was computed of it.</summary>
    public EpisodeWork Work { get => field ?? throw new InvalidOperationException("No episode is open."); private set; }

    /// <summary>Whether an episode is open.</summary>
    public bool IsOpen { get; private set; }

    /// <summary>Whether the running order and the mise list were planned before the last change.</summary>
    public bool IsPlanStale { get; private set; }

    /// <summary>Whether the running order is being solved.</summary>
    public bool IsPlanning => _planning is not null;

    /// <summary>How far the solver is; null before it has said so.</summary>
    public PlanningProgress? Planning { get; private set; }

    /// <summary>Today at the house.</summary>
    public DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    /// <summary>Opens an episode and computes it; one that is open already is read anew only when it was saved elsewhere.</summary>
    /// <returns>Whether there is such an episode.</returns>
    public async Task<bool> OpenAsync(Slug slug, CancellationToken cancel = default)
    {
        if (await episodes.FindAsync(slug, cancel) is not { } found)
            return false;
        if (IsOpen && Draft.Value.Slug == slug && (Draft.Version == found.Version || Draft.Problem is not null))
            return true;
        Close();
        Bar = await bars.LoadAsync(cancel);
        Log = await logs.LoadAsync(cancel);
        Draft = new(found, (episode, version) => episodes.SaveAsync(episode, version, cancel: CancellationToken.None));
        Draft.Changed += Follow;
        _planned = ShootPlans.QuestionOf(found.Value);
        _plan = plans.Find(_planned, Bar);
        _computed = found.Value;
        Work = await ComputeAsync(found.Value);
        IsOpen = true;
        Changed?.Invoke();
        return true;
    }

    /// <summary>Changes the episode, shows what comes of it, and saves it.</summary>
    public async Task ChangeAsync(Func<Episode, Episode> change)
    {
        await Draft.ChangeAsync(change);
        await ShowAsync();
    }

    /// <summary>Reads the house's settings, ingredients and kit anew and computes with them, after this window has changed them.</summary>
    public async Task RefreshBarAsync()
    {
        Bar = await bars.LoadAsync(_open.Token);
        await ShowAsync(anew: true);
    }

    /// <summary>Plans the running order and the mise list in the background, unless that is done already.</summary>
    public async Task PlanAsync()
    {
        if (IsPlanning || (_plan is not null && !IsPlanStale) || Episode.Lineup.Count == 0)
            return;
        var open = _open;
        using var planning = CancellationTokenSource.CreateLinkedTokenSource(open.Token);
        _planning = planning;
        Planning = null;
        Changed?.Invoke();
        try
        {
            var asked = Draft.Value;
            var plan = await plans.PlanAsync(asked, Bar, new Progress<PlanningProgress>(Tell), planning.Token);
            if (!open.IsCancellationRequested)
                (_plan, _planned) = (plan, ShootPlans.QuestionOf(asked));
        }
        catch (OperationCanceledException)
        {
            // Stopped while it waited for another solver: there is nothing to show.
        }
        finally
        {
            if (_planning == planning)
                (_planning, Planning) = (null, null);
        }

        if (!open.IsCancellationRequested)
            await ShowAsync(anew: true);
    }

    /// <summary>Stops the solver; what it has found so far is shown.</summary>
    public void StopPlanning() => _planning?.Cancel();

    /// <inheritdoc/>
    public void Dispose()
    {
        Close();
        _open.Dispose();
    }

    private void Close()
    {
        _open.Cancel();
        _open.Dispose();
        _open = new();
        if (IsOpen)
        {
            Draft.Changed -= Follow;
            Draft.Dispose();
        }

        IsOpen = false;
        (_plan, _planning, _planned, IsPlanStale) = (null, null, "", false);
    }

    private void Follow()
    {
        Changed?.Invoke();
        if (!ReferenceEquals(Draft.Value, _computed))
            _ = ShowAsync();
    }

    // Quick changes overtake one another: only what was asked last is shown.
    private async Task ShowAsync(bool anew = false)
    {
        var episode = Draft.Value;
        if (!anew && ReferenceEquals(episode, _computed))
            return;
        _computed = episode;
        var asked = ++_asked;
        var work = await ComputeAsync(episode);
        if (asked != _asked)
            return;
        Work = work;
        Changed?.Invoke();
    }

    // A plan for other drinks is of no use; one for the same drinks is shown as stale until it is planned again.
    private Task<EpisodeWork> ComputeAsync(Episode episode)
    {
        var question = ShootPlans.QuestionOf(episode);
        if (question != _planned && plans.Find(question, Bar) is { } known)
            (_plan, _planned) = (known, question);
        if (_plan is not null && !_plan.Order.ShootOrder.ToHashSet().SetEquals(episode.Lineup.Select(drink => drink.Spec.Slug)))
            _plan = null;
        IsPlanStale = _plan is not null && question != _planned;
        var (bar, log, today, plan) = (Bar, Log, Today, _plan);
        return Task.Run(() => EpisodeWork.Of(episode, bar, log, today, plan));
    }

    private void Tell(PlanningProgress progress)
    {
        if (_planning is null)
            return;
        Planning = progress;
        Changed?.Invoke();
    }
}
