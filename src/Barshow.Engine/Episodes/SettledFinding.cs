namespace Barshow.Engine.Episodes;

/// <summary>How a finding about the film was settled.</summary>
public enum Settling
{
    /// <summary>It is right: it will be said again or laid over the film, and stays on the pick-up list.</summary>
    Accepted,

    /// <summary>It is not right or not worth it, for a reason.</summary>
    Dismissed,
}

/// <summary>A finding about the film that was settled.</summary>
/// <param name="Finding">Which finding, by its key.</param>
/// <param name="How">How it was settled.</param>
/// <param name="Reason">Why; may be empty for one that was accepted.</param>
public sealed record SettledFinding(string Finding, Settling How, string Reason);
