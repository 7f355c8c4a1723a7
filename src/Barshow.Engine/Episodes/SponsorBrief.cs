namespace Barshow.Engine.Episodes;

/// <summary>Where a sponsor's approval stands.</summary>
public enum Approval
{
    /// <summary>None is needed.</summary>
    NotNeeded,

    /// <summary>Not asked yet.</summary>
    NotAsked,

    /// <summary>Asked and waited for.</summary>
    Waiting,

    /// <summary>Given.</summary>
    Given,

    /// <summary>Refused, with a remark.</summary>
    Refused,
}

/// <summary>What a sponsor asks of an episode.</summary>
public sealed record SponsorBrief
{
    /// <summary>Who pays; empty for no sponsor.</summary>
    public string Sponsor { get; init; } = "";

    /// <summary>The disclosure as it must be said and printed; empty when none is given.</summary>
    public string Disclosure { get; init; } = "";

    /// <summary>By when it must be said, in seconds of film; null when that is not fixed.</summary>
    public int? DisclosureBySeconds { get; init; }

    /// <summary>Points that must be said.</summary>
    public IReadOnlyList<string> MustSay { get; init; } = [];

    /// <summary>Words that must not be said.</summary>
    public IReadOnlyList<string> Avoid { get; init; } = [];

    /// <summary>Where approval stands.</summary>
    public Approval Approval { get; init; }

    /// <summary>Whether anyone pays.</summary>
    public bool IsSponsored => Sponsor.Length > 0;
}

/// <summary>A link the description carries, with the words that promise it.</summary>
/// <param name="Label">What it leads to, in plain words.</param>
/// <param name="Address">A full https address.</param>
public sealed record Link(string Label, string Address);
