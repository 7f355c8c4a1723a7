namespace Barshow.Web.Desk;

/// <summary>The stages of an episode, in order; their names are the last part of their addresses.</summary>
public enum Stage
{
    /// <summary>Choose drinks, settle specs.</summary>
    Plan,

    /// <summary>What to buy.</summary>
    Stock,

    /// <summary>What to have ready.</summary>
    Prep,

    /// <summary>The shoot day.</summary>
    Shoot,

    /// <summary>What goes out.</summary>
    Publish,
}
