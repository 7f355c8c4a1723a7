using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>A drink that may be chosen, with all that the rules and the aims ask about it.</summary>
internal sealed record Candidate
{
    /// <summary>The spec as it would be made, the base swapped where that was needed.</summary>
    public required Spec Spec { get; init; }

    /// <summary>Whether its base was swapped for the bottle.</summary>
    public bool Swapped { get; init; }

    /// <summary>What it takes of each thing to buy.</summary>
    public required IReadOnlyList<Use> Uses { get; init; }

    /// <summary>The things it needs, each once, as places in the book.</summary>
    public required IReadOnlyList<int> Things { get; init; }

    /// <summary>Thousandths of a millilitre of the bottle in one drink.</summary>
    public long Bottle { get; init; }

    public bool AlcoholFree { get; init; }

    /// <summary>What makes it different: places in the book's list of features.</summary>
    public required IReadOnlyList<int> Features { get; init; }

    /// <summary>The house preps it needs: places in the book's list of preps.</summary>
    public required IReadOnlyList<int> Preps { get; init; }

    /// <summary>The glasses of the kit it may be served in, as places in the kit.</summary>
    public required IReadOnlyList<int> Glasses { get; init; }

    /// <summary>Points for having been featured lately: 0 for never or long ago.</summary>
    public int Staleness { get; init; }

    /// <summary>Minutes of making one, house preps apart.</summary>
    public int Minutes { get; init; }

    /// <summary>The requirements it breaks by itself, as places in the book's list of requirements.</summary>
    public required IReadOnlyList<int> Breaks { get; init; }

    /// <summary>For each floor requirement it counts towards, its place in the book's list of requirements.</summary>
    public required IReadOnlyList<int> Floors { get; init; }

    public Slug Slug => Spec.Slug;
}

/// <summary>What one drink takes of one thing.</summary>
/// <param name="Thing">The thing, by its place in the book.</param>
/// <param name="Facet">For a fruit 0 is juice, 1 spent shells, from 2 its cuts; else 0.</param>
/// <param name="Amount">Thousandths of the unit the thing is bought in, of a millilitre of juice, or of a piece.</param>
internal readonly record struct Use(int Thing, int Facet, long Amount);
