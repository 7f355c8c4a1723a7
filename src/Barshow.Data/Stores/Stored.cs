namespace Barshow.Data.Stores;

/// <summary>A thing as it is saved.</summary>
/// <param name="Value">The thing.</param>
/// <param name="Version">Counts its saves from 1; 0 for one that has never been saved.</param>
/// <param name="SavedAt">When it was saved.</param>
/// <param name="SavedBy">Who saved it; empty when nobody signed.</param>
public sealed record Stored<T>(T Value, int Version, DateTimeOffset SavedAt, string SavedBy);

/// <summary>How a save went.</summary>
public abstract record SaveResult<T>
{
    private SaveResult()
    {
    }

    /// <summary>It is on the disk.</summary>
    /// <param name="Now">The thing as it is saved now.</param>
    public sealed record Saved(Stored<T> Now) : SaveResult<T>;

    /// <summary>Nothing was saved: someone else saved another state first, or a thing of that name is there already.</summary>
    /// <param name="Theirs">The thing as it is saved.</param>
    public sealed record Conflict(Stored<T> Theirs) : SaveResult<T>;

    /// <summary>Nothing was saved: the thing was deleted meanwhile.</summary>
    /// <param name="InBin">Its row in the bin, to be restored; null when the bin was emptied.</param>
    public sealed record Gone(long? InBin) : SaveResult<T>;

    /// <summary>Nothing was saved: the thing would spoil others that are saved.</summary>
    /// <param name="Sentence">What it would spoil, a sentence for the user.</param>
    public sealed record Refused(string Sentence) : SaveResult<T>;
}

/// <summary>A thing in the bin.</summary>
/// <param name="Id">Its row, to restore it by.</param>
/// <param name="Slug">The name it was kept under.</param>
/// <param name="Name">The name that lists show.</param>
/// <param name="DeletedAt">When it went to the bin.</param>
/// <param name="DeletedBy">Who put it there; empty when nobody signed.</param>
public sealed record Binned(long Id, string Slug, string Name, DateTimeOffset DeletedAt, string DeletedBy);
