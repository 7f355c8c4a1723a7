using Barshow.Engine.Findings;

namespace Barshow.Engine.Planning.Claims;

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

/// <summary>A claim with what the plan says of it.</summary>
/// <param name="Claim">The claim.</param>
/// <param name="Kept">Whether it holds; null when it could not be checked.</param>
/// <param name="Truth">What was found, with the numbers: "the lineup has 8 drinks".</param>
public sealed record ClaimCheck(Claim Claim, bool? Kept, string Truth);

/// <summary>All claims of an episode's title, checked.</summary>
/// <param name="Checks">In the order of the title.</param>
/// <param name="Findings">Those that are broken and those that could not be checked.</param>
public sealed record ClaimReport(IReadOnlyList<ClaimCheck> Checks, IReadOnlyList<Finding> Findings);
