using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Episodes;

/// <summary>Where in the running order a drink is held.</summary>
public enum Pin
{
    /// <summary>Anywhere.</summary>
    None,

    /// <summary>First.</summary>
    Opener,

    /// <summary>Last.</summary>
    Closer,
}

/// <summary>One drink of a lineup, with its own copy of the spec: the library's stays as it was.</summary>
public sealed record LineupDrink
{
    /// <summary>The spec as this episode makes it.</summary>
    public required Spec Spec { get; init; }

    /// <summary>The drink of the library it was taken from; empty when it was typed into the brief.</summary>
    public Slug Library { get; init; }

    /// <summary>How many takes are planned, 1 or more; null for the episode's default.</summary>
    public int? Takes { get; init; }

    /// <summary>Doubles made ahead that someone tastes or that must be real.</summary>
    public int TastedSwapOuts { get; init; }

    /// <summary>Doubles made ahead that nobody tastes and that may hold water or cold tea.</summary>
    public int UntastedSwapOuts { get; init; }

    /// <summary>Where it is held in the shoot order.</summary>
    public Pin Pin { get; init; }

    /// <summary>Where it starts on film, in seconds; null until the film exists.</summary>
    public double? FilmSeconds { get; init; }

    /// <summary>Whether the technique is new to the presenter, which earns rehearsal.</summary>
    public bool NewTechnique { get; init; }

    /// <summary>The drink it is filmed beside for comparison; empty for none.</summary>
    public Slug BesideDrink { get; init; }

    /// <summary>Where on set it is made: "bar", "side table"; empty for the station its method implies.</summary>
    public string Station { get; init; } = "";

    /// <summary>What stands behind it in the picture; empty for the backdrop that is up.</summary>
    public string Backdrop { get; init; } = "";

    /// <summary>What must be said again or overlaid, because film and spec disagree; a sentence each.</summary>
    public IReadOnlyList<string> PickUps { get; init; } = [];

    /// <summary>The line of the brief its name stands on, counted from 1; null when it came from elsewhere.</summary>
    public int? BriefLine { get; init; }

    /// <summary>The drink's name.</summary>
    public string Name => Spec.Name;
}
