namespace Barshow.Data.Rows;

/// <summary>What was done to a saved thing.</summary>
public enum Deed
{
    /// <summary>Saved for the first time.</summary>
    Made,

    /// <summary>Saved over an earlier version.</summary>
    Saved,

    /// <summary>Put in the bin.</summary>
    Binned,

    /// <summary>Taken out of the bin.</summary>
    Restored,
}

/// <summary>One line of the change history: who did what to which thing, and how it was before.</summary>
public sealed class Change
{
    /// <summary>Which line this is; later ones are greater.</summary>
    public long Id { get; private set; }

    /// <summary>What sort of thing: the name of its table.</summary>
    public required string Kind { get; init; }

    /// <summary>The name the thing is kept under.</summary>
    public required string Slug { get; init; }

    /// <summary>The version that came of it.</summary>
    public required int Version { get; init; }

    /// <summary>What was done.</summary>
    public required Deed Deed { get; init; }

    /// <summary>When.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>By whom; empty when nobody signed.</summary>
    public required string By { get; init; }

    /// <summary>The thing as it was before, as JSON; null when it is new or did not change.</summary>
    public string? Before { get; init; }
}
