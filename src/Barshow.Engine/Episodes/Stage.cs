namespace Barshow.Engine.Episodes;

/// <summary>The stages of an episode, in the order of the work.</summary>
public enum Stage
{
    /// <summary>Choose the drinks and settle every spec.</summary>
    Plan,

    /// <summary>Order for the set; tell viewers what to buy.</summary>
    Stock,

    /// <summary>Everything to be ready before the first take.</summary>
    Prep,

    /// <summary>The shoot day.</summary>
    Shoot,

    /// <summary>What was said, and what is published.</summary>
    Publish,
}
