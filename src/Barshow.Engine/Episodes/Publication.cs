namespace Barshow.Engine.Episodes;

/// <summary>One drink as it was published.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Lines">Its lines as they were printed, both units in them, and last how it is made and served.</param>
public sealed record PublishedDrink(string Name, IReadOnlyList<string> Lines);

/// <summary>What was published of an episode, and when; it stays as it was whatever is changed later.</summary>
public sealed record Publication
{
    /// <summary>Which version, counted from 1.</summary>
    public required int Version { get; init; }

    /// <summary>When it was published.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The description as it was copied.</summary>
    public string Description { get; init; } = "";

    /// <summary>The drinks as they were published, in viewer order.</summary>
    public IReadOnlyList<PublishedDrink> Drinks { get; init; } = [];

    /// <summary>The notice that told viewers what changed; empty for the first version.</summary>
    public string Notice { get; init; } = "";
}
