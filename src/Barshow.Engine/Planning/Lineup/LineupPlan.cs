using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>How a run ended.</summary>
public enum LineupOutcome
{
    /// <summary>A lineup was found that keeps every requirement.</summary>
    Planned,

    /// <summary>The run was stopped; the lineup is the best found until then, and the same question may give another next time.</summary>
    Stopped,

    /// <summary>No lineup keeps every requirement; the fewest to relax are named.</summary>
    Impossible,

    /// <summary>Nothing was found within the work allowed, and nothing was proven.</summary>
    NotFound,
}

/// <summary>The lineup that was chosen, or what stands in its way.</summary>
public sealed record LineupPlan
{
    /// <summary>How the run ended.</summary>
    public required LineupOutcome Outcome { get; init; }

    /// <summary>The drinks chosen, by slug; empty when there are none.</summary>
    public IReadOnlyList<LineupPick> Picks { get; init; } = [];

    /// <summary>The levels in the order of the aims.</summary>
    public IReadOnlyList<LineupLevel> Levels { get; init; } = [];

    /// <summary>The fewest requirements to relax so that a lineup exists; empty when one exists.</summary>
    public IReadOnlyList<Requirement> Relax { get; init; } = [];

    /// <summary>Whether <see cref="Relax"/> is proven to be the fewest.</summary>
    public bool RelaxProven { get; init; }

    /// <summary>The viewer's basket of the lineup; null without one.</summary>
    public Basket? Basket { get; init; }

    /// <summary>Whether costs are money; else they are packs, because prices are missing.</summary>
    public bool Priced { get; init; } = true;

    /// <summary>What the cheapest-next choice costs, without any search; null when it keeps not every requirement.</summary>
    public decimal? GreedyCost { get; init; }

    /// <summary>What the plan has to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}

/// <summary>A drink chosen.</summary>
/// <param name="Spec">Its spec, the base swapped where that was needed.</param>
/// <param name="BaseSwapped">Whether the base was swapped for the bottle.</param>
public sealed record LineupPick(Spec Spec, bool BaseSwapped)
{
    /// <summary>Why it is in: what it shares and what it adds to the basket, a sentence.</summary>
    public string Reason { get; init; } = "";

    /// <summary>Things it shares with another drink of the lineup, by name.</summary>
    public IReadOnlyList<string> Shares { get; init; } = [];

    /// <summary>Things that are bought for it alone, by name.</summary>
    public IReadOnlyList<string> Adds { get; init; } = [];

    /// <summary>What the basket would cost less without it: money, or packs where prices are missing.</summary>
    public decimal AddsCost { get; init; }

    /// <summary>The drink to take in its place, the rest staying as it is; null when none keeps every requirement.</summary>
    public LineupReplacement? Replacement { get; init; }
}

/// <summary>The best drink in place of another, the rest of the lineup staying as it is.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Name">Its name.</param>
/// <param name="CostChange">How much more the basket costs; money, or packs where prices are missing.</param>
public sealed record LineupReplacement(Slug Drink, string Name, decimal CostChange);

/// <summary>How one aim was met.</summary>
/// <param name="Aim">The aim.</param>
/// <param name="Value">What it counts: money (or packs), different families, methods, glasses and tags, points of staleness, minutes.</param>
/// <param name="Bound">No lineup that keeps the requirements and the levels before is better than this.</param>
/// <param name="Proven">Whether value and bound are known to be the same.</param>
public sealed record LineupLevel(Aim Aim, decimal Value, decimal Bound, bool Proven);

/// <summary>The best so far, while a run goes on.</summary>
/// <param name="Aim">The aim being worked at; null while equal lineups are told apart.</param>
/// <param name="Drinks">The lineup, by slug.</param>
/// <param name="Value">What the aim counts for it; null without an aim.</param>
/// <param name="Bound">What no lineup can better; null where that is not known yet.</param>
public sealed record LineupProgress(Aim? Aim, IReadOnlyList<Slug> Drinks, decimal? Value, decimal? Bound);
