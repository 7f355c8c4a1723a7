using Barshow.Engine.Planning.Lineup;

namespace Barshow.Web.Desk;

/// <summary>One run of the lineup planner in one window: on a worker, with the best so far, to be stopped at any time.</summary>
public sealed class LineupSearch : IDisposable
{
    private CancellationTokenSource? _running;

    /// <summary>Whether a run goes on.</summary>
    public bool IsRunning => _running is not null;

    /// <summary>The best so far of the run that goes on; null before there is one.</summary>
    public LineupProgress? Best { get; private set; }

    /// <summary>What was asked in the last run that ended.</summary>
    public LineupQuestion? Asked { get; private set; }

    /// <summary>What the last run gave.</summary>
    public LineupPlan? Plan { get; private set; }

    /// <summary>Runs a question to its end, or until it is stopped.</summary>
    /// <param name="question">The question.</param>
    /// <param name="changed">Called on the window's own thread whenever there is something new to show.</param>
    public async Task RunAsync(LineupQuestion question, Action changed)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(changed);
        if (IsRunning)
            return;
        using var running = new CancellationTokenSource();
        (_running, Best) = (running, null);
        var progress = new Progress<LineupProgress>(best =>
        {
            if (_running != running)
                return;
            Best = best;
            changed();
        });
        changed();
        try
        {
            // Without the token: stopping must give what was found, not an error.
            var plan = await Task.Run(() => LineupPlanner.Plan(question, ((IProgress<LineupProgress>)progress).Report, running.Token), CancellationToken.None);
            (Asked, Plan) = (question, plan);
        }
        finally
        {
            _running = null;
            changed();
        }
    }

    /// <summary>Stops the run; the best found so far is shown.</summary>
    public void Stop() => _running?.Cancel();

    /// <summary>Puts the last result away.</summary>
    public void Forget() => (Asked, Plan) = (null, null);

    /// <inheritdoc/>
    public void Dispose() => _running?.Cancel();
}
