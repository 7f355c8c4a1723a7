using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>What finishes a drink.</summary>
/// <param name="Text">As it is printed: "lime wheel".</param>
public sealed record Garnish(string Text)
{
    /// <summary>The ingredient it is cut from; empty when the house does not know it.</summary>
    public Slug Ingredient { get; init; }

    /// <summary>How many of which cut; null when it is not counted.</summary>
    public Measure? Measure { get; init; }

    /// <summary>Whether a spent shell or a leftover does, so that nothing more is bought.</summary>
    public bool FromLeftovers { get; init; }

    /// <summary>What stands beside it, each counted for itself; its text is part of this one's.</summary>
    public IReadOnlyList<Garnish> Beside { get; init; } = [];

    /// <summary>What will do instead, best first.</summary>
    public IReadOnlyList<Garnish> Instead { get; init; } = [];
}
