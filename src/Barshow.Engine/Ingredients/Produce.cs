using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Ingredients;

/// <summary>What one whole fruit, bunch or egg gives. Each figure is for one piece used for that alone.</summary>
public sealed record Produce
{
    /// <summary>The ingredient its juice is; empty when it is not pressed.</summary>
    public Slug Juice { get; init; }

    /// <summary>Millilitres of juice from one, pressed by hand; 0 when it is not pressed.</summary>
    public double JuiceMillilitres { get; init; }

    /// <summary>The share of its juice that muddling sets free, 0 to 1.</summary>
    public double MuddledShare { get; init; } = 0.5;

    /// <summary>How many of each cut one gives: wedges, wheels, slices, twists, leaves, sprigs.</summary>
    public IReadOnlyList<CutYield> Cuts { get; init; } = [];

    /// <summary>Where the figures come from.</summary>
    public string Source { get; init; } = "";
}

/// <summary>How many pieces of one cut a whole gives.</summary>
/// <param name="Cut">The cut, a unit that counts: wedge, wheel, twist, leaf.</param>
/// <param name="PerPiece">How many one whole gives, 1 or more.</param>
/// <param name="SparesJuice">Whether the juice can still be pressed after the cut, as after a peel.</param>
public sealed record CutYield(Unit Cut, int PerPiece, bool SparesJuice = false);
