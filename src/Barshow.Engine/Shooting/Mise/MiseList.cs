using Barshow.Engine.Findings;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>Everything to be ready before the first take, each at its hour.</summary>
public sealed record MiseList
{
    /// <summary>The clock its offsets are read by.</summary>
    public required ShootClock Clock { get; init; }

    /// <summary>Pairs of hands that prepare.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>The tasks, by start.</summary>
    public IReadOnlyList<MiseTask> Tasks { get; init; } = [];

    /// <summary>How far each aim of the hours was met.</summary>
    public IReadOnlyList<Level> Levels { get; init; } = [];

    /// <summary>What the planner has to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Whether it was stopped before it was done; a stopped plan promises no repeat.</summary>
    public bool Stopped { get; init; }

    /// <summary>Whether every level is proven.</summary>
    public bool Proven => !Stopped && Levels.All(level => level.Proven);
}
