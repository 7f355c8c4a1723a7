using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>The ice in the served glass.</summary>
public enum IceKind
{
    /// <summary>None: served up.</summary>
    None,

    /// <summary>Cubes.</summary>
    Cubed,

    /// <summary>Crushed or pebble ice.</summary>
    Crushed,

    /// <summary>One large piece.</summary>
    Large,
}

/// <summary>How the liquid leaves the tin.</summary>
public enum Straining
{
    /// <summary>Not strained: built, or poured with its ice.</summary>
    None,

    /// <summary>Through one strainer.</summary>
    Single,

    /// <summary>Through a strainer and a fine sieve.</summary>
    Fine,

    /// <summary>Poured with its ice.</summary>
    Open,
}

/// <summary>How a drink is served.</summary>
public sealed record Serve
{
    /// <summary>The glass; empty when none is named.</summary>
    public Slug Glass { get; init; }

    /// <summary>Glasses that will do instead, best first.</summary>
    public IReadOnlyList<Slug> GlassesInstead { get; init; } = [];

    /// <summary>Whether the glass is chilled.</summary>
    public bool Chilled { get; init; }

    /// <summary>The ice in the glass, fresh.</summary>
    public IceKind Ice { get; init; }

    /// <summary>How it is strained.</summary>
    public Straining Strain { get; init; }

    /// <summary>Whether it is drunk through a straw.</summary>
    public bool Straw { get; init; }

    /// <summary>How full the glass should be, as a share of its brim, 0 to 1; null for the glass's own habit.</summary>
    public double? WashLine { get; init; }
}
