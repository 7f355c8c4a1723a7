using Barshow.Engine.Findings;

namespace Barshow.Engine.Episodes.Claims;

/// <summary>What a title counts.</summary>
public enum ClaimKind
{
    /// <summary>"Nine drinks."</summary>
    Drinks,

    /// <summary>"One bottle."</summary>
    Bottles,

    /// <summary>"Five ingredients": things to buy for the whole lineup, staples left out.</summary>
    Ingredients,

    /// <summary>"Three-ingredient drinks": things in each drink, staples left out.</summary>
    IngredientsEach,

    /// <summary>"Under ten minutes": the length of the film.</summary>
    Minutes,
}

/// <summary>A countable promise of a title.</summary>
/// <param name="Kind">What it counts.</param>
/// <param name="Number">How many.</param>
/// <param name="Words">As it stands in the title.</param>
/// <param name="Place">Where it stands in the title.</param>
public sealed record Claim(ClaimKind Kind, int Number, string Words, TextPlace Place);
