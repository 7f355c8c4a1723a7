using Barshow.Data.Conflicts;
using Barshow.Data.Stores;

namespace Barshow.Web.Desk;

/// <summary>One saved thing as it is changed in one window: each change is saved at once; what cannot be saved stays on the screen.</summary>
/// <remarks>Used from the window's own thread only.</remarks>
public sealed class Draft<T>(Stored<T> opened, Func<T, int, Task<SaveResult<T>>> save) : IDisposable
    where T : class
{
    private readonly SemaphoreSlim _saving = new(1, 1);
    private Stored<T> _saved = opened;
    private Stored<T>? _theirs;
    private T? _before;

    /// <summary>Raised when anything here has changed.</summary>
    public event Action? Changed;

    /// <summary>The thing as it stands on the screen.</summary>
    public T Value { get; private set; } = opened.Value;

    /// <summary>Counts its saves; 0 for one that was never saved.</summary>
    public int Version => _saved.Version;

    /// <summary>When it was saved last; null when it never was.</summary>
    public DateTimeOffset? SavedAt => _saved.Version > 0 ? _saved.SavedAt : null;

    /// <summary>Whether a save is under way.</summary>
    public bool IsSaving { get; private set; }

    /// <summary>Why what is on the screen is not saved, a sentence; null when it is.</summary>
    public string? Problem { get; private set; }

    /// <summary>Whether the last change can be taken back.</summary>
    public bool CanUndo => _before is not null && _theirs is null;

    /// <summary>What is different here and in what someone else saved meanwhile; null without a conflict.</summary>
    public ThreeWayComparison<T>? Conflict { get; private set; }

    /// <summary>Changes the thing on the screen and saves it.</summary>
    public Task ChangeAsync(Func<T, T> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        var after = change(Value);
        if (ReferenceEquals(after, Value))
            return Task.CompletedTask;
        _before = Value;
        return ShowAndSaveAsync(after);
    }

    /// <summary>Takes the last change back.</summary>
    public Task UndoAsync()
    {
        if (_before is not { } before)
            return Task.CompletedTask;
        _before = null;
        return ShowAndSaveAsync(before);
    }

    /// <summary>Ends a conflict: for each field the side that was chosen, and the whole is saved over both.</summary>
    public Task SettleAsync(IReadOnlyDictionary<string, Side> choices)
    {
        if (_theirs is not { } theirs || Conflict is not { } conflict)
            return Task.CompletedTask;
        var joined = conflict.Join(choices);
        _saved = theirs;
        (_theirs, _before, Conflict, Problem) = (null, null, null, null);
        return ShowAndSaveAsync(joined);
    }

    /// <summary>Tries again to save what is on the screen.</summary>
    public Task RetryAsync() => SaveAsync();

    /// <inheritdoc/>
    public void Dispose() => _saving.Dispose();

    private Task ShowAndSaveAsync(T value)
    {
        Value = value;
        Changed?.Invoke();
        return SaveAsync();
    }

    private async Task SaveAsync()
    {
        await _saving.WaitAsync();
        try
        {
            var wanted = Value;
            if (_theirs is not null || ReferenceEquals(wanted, _saved.Value))
                return;
            IsSaving = true;
            Changed?.Invoke();
            Take(wanted, await save(wanted, _saved.Version));
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

    private void Take(T wanted, SaveResult<T> result)
    {
        switch (result)
        {
            case SaveResult<T>.Saved saved:
                _saved = saved.Now with { Value = wanted };
                Problem = null;
                break;
            case SaveResult<T>.Conflict conflict:
                _theirs = conflict.Theirs;
                Conflict = new(_saved.Value, wanted, conflict.Theirs.Value);
                Problem = "Not saved: someone else saved this meanwhile.";
                break;
            case SaveResult<T>.Refused refused:
                Problem = $"Not saved: {refused.Sentence}";
                break;
            default:
                Problem = "Not saved: this was deleted meanwhile. It waits in the bin, under House.";
                break;
        }
    }
}
