using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>A drink's recipe as data.</summary>
public sealed record Spec
{
    /// <summary>The name it is kept under.</summary>
    public required Slug Slug { get; init; }

    /// <summary>The name that is shown.</summary>
    public required string Name { get; init; }

    /// <summary>Other names of the same drink.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>The family: "sour", "highball", "spirit-forward"; empty when none is named.</summary>
    public string Family { get; init; } = "";

    /// <summary>Flavour tags: "herbal", "bitter", "tropical".</summary>
    public IReadOnlyList<string> Tags { get; init; } = [];

    /// <summary>What goes in, in order.</summary>
    public IReadOnlyList<SpecLine> Lines { get; init; } = [];

    /// <summary>How it is made; null when it was not said.</summary>
    public Method? Method { get; init; }

    /// <summary>How it is served.</summary>
    public Serve Serve { get; init; } = new();

    /// <summary>What finishes it; null for no garnish.</summary>
    public Garnish? Garnish { get; init; }

    /// <summary>What is done, step by step, in whole sentences; empty when the method says it all.</summary>
    public IReadOnlyList<string> Steps { get; init; } = [];

    /// <summary>Where the spec comes from; "common practice" where none is published.</summary>
    public IReadOnlyList<string> Sources { get; init; } = [];

    /// <summary>Stories told beside it.</summary>
    public IReadOnlyList<Story> Stories { get; init; } = [];

    /// <summary>How it tastes and feels.</summary>
    public string Taste { get; init; } = "";

    /// <summary>What must not replace what.</summary>
    public IReadOnlyList<NotInstead> NotInstead { get; init; } = [];

    /// <summary>Base ingredients that will do instead of the base.</summary>
    public IReadOnlyList<Slug> BaseSwaps { get; init; } = [];

    /// <summary>The drink it is a variation of; empty for none.</summary>
    public Slug Parent { get; init; }

    /// <summary>Hazards that the ingredients do not show: flame, dry ice.</summary>
    public IReadOnlyList<Hazard> Hazards { get; init; } = [];

    /// <summary>Notes for the bench and the description.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
