using Barshow.Engine.Episodes.Claims;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Planning.Claims;

/// <summary>A claim with what the plan says of it.</summary>
/// <param name="Claim">The claim.</param>
/// <param name="Kept">Whether it holds; null when it could not be checked.</param>
/// <param name="Truth">What was found, with the numbers: "the lineup has 8 drinks".</param>
public sealed record ClaimCheck(Claim Claim, bool? Kept, string Truth);

/// <summary>All claims of an episode's title, checked.</summary>
/// <param name="Checks">In the order of the title.</param>
/// <param name="Findings">Those that are broken and those that could not be checked.</param>
public sealed record ClaimReport(IReadOnlyList<ClaimCheck> Checks, IReadOnlyList<Finding> Findings);
