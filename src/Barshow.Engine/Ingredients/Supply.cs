namespace Barshow.Engine.Ingredients;

/// <summary>How an ingredient came into the house. What was not bought needs a disclosure wherever it is shown; local rules say how.</summary>
public enum Supply
{
    /// <summary>The house paid for it.</summary>
    Bought,

    /// <summary>It was given.</summary>
    Gift,

    /// <summary>It came with a sponsor's order.</summary>
    Sponsored,
}
