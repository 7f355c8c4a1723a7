using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Shooting.Order;

/// <summary>How far one aim was met.</summary>
/// <param name="Aim">What was aimed at, in plain words.</param>
/// <param name="Value">What was reached.</param>
/// <param name="Bound">What no order could better.</param>
/// <param name="Unit">What both count: "minutes", "points".</param>
/// <param name="Proven">Whether value and bound are known to be one.</param>
public sealed record Level(string Aim, long Value, long Bound, string Unit, bool Proven);

/// <summary>One part of what the order costs.</summary>
/// <param name="What">In plain words: "changes of set-up".</param>
/// <param name="Amount">How much.</param>
/// <param name="Unit">"minutes" or "points".</param>
/// <param name="Reason">Where it arises.</param>
public sealed record OrderCost(string What, int Amount, string Unit, string Reason);

/// <summary>A stretch of the day in which one batch looks and tastes right.</summary>
/// <param name="Prep">The house prep or pressed juice.</param>
/// <param name="Name">Its name.</param>
/// <param name="Batch">Which batch, counted from 1.</param>
/// <param name="From">When it is ready, from the call.</param>
/// <param name="Until">When it no longer looks right, from the call.</param>
/// <param name="Drinks">The drinks that are filmed with it.</param>
public sealed record FreshStretch(Slug Prep, string Name, int Batch, TimeSpan From, TimeSpan Until, IReadOnlyList<Slug> Drinks);

/// <summary>What the user's own order costs beside the planner's.</summary>
/// <param name="MoreMinutes">By how many minutes the day is longer; below nought when it is shorter because a rule is broken.</param>
/// <param name="MorePalatePoints">By how many points it is harder on the palate.</param>
/// <param name="Broken">The rules it breaks that the planner's order keeps.</param>
public sealed record OverrideCost(int MoreMinutes, int MorePalatePoints, IReadOnlyList<Requirement> Broken);

/// <summary>The timed list of blocks of a shoot day.</summary>
public sealed record RunningOrder
{
    /// <summary>The clock its offsets are read by.</summary>
    public required ShootClock Clock { get; init; }

    /// <summary>The blocks, by start.</summary>
    public IReadOnlyList<Block> Blocks { get; init; } = [];

    /// <summary>The drinks as they are filmed.</summary>
    public IReadOnlyList<Slug> ShootOrder { get; init; } = [];

    /// <summary>When the day ends, from the call.</summary>
    public TimeSpan Wrap => Blocks.Count == 0 ? TimeSpan.Zero : Blocks.Max(block => block.End);

    /// <summary>How far each aim was met, in the order they were pursued.</summary>
    public IReadOnlyList<Level> Levels { get; init; } = [];

    /// <summary>What the order costs, part by part.</summary>
    public IReadOnlyList<OrderCost> Costs { get; init; } = [];

    /// <summary>When each batch looks right, for drawing behind the blocks.</summary>
    public IReadOnlyList<FreshStretch> Fresh { get; init; } = [];

    /// <summary>The rules that had to be let go, the fewest that would do.</summary>
    public IReadOnlyList<Requirement> Relaxed { get; init; } = [];

    /// <summary>What the user's own order costs; null when the planner chose.</summary>
    public OverrideCost? Override { get; init; }

    /// <summary>What the planner has to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Whether it was stopped before it was done; a stopped plan promises no repeat.</summary>
    public bool Stopped { get; init; }

    /// <summary>Whether every level is proven.</summary>
    public bool Proven => !Stopped && Levels.All(level => level.Proven);
}

/// <summary>How far the planner is.</summary>
/// <param name="Doing">What it is at, in plain words.</param>
/// <param name="Step">Which step, counted from 1.</param>
/// <param name="Steps">Of how many.</param>
public sealed record PlanningProgress(string Doing, int Step, int Steps);
