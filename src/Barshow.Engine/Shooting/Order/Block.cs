using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting.Order;

/// <summary>What happens in a block of the shoot day.</summary>
public enum BlockKind
{
    /// <summary>The introduction to camera.</summary>
    Intro,

    /// <summary>The sponsor's read.</summary>
    SponsorRead,

    /// <summary>Talk to camera that belongs to no drink.</summary>
    Talk,

    /// <summary>One making of a drink on camera.</summary>
    Take,

    /// <summary>Tasting and verdict.</summary>
    Taste,

    /// <summary>Pour and beauty close-ups.</summary>
    CloseUps,

    /// <summary>Two drinks side by side.</summary>
    Comparison,

    /// <summary>The turn-round between two takes, with whatever of the set-up changes.</summary>
    Reset,

    /// <summary>Glasses washed, dried and polished.</summary>
    WashUp,

    /// <summary>A further batch of a house prep.</summary>
    Batch,

    /// <summary>A short break.</summary>
    Break,

    /// <summary>A meal.</summary>
    Meal,

    /// <summary>Waiting for glasses to chill or a prep to rest.</summary>
    Wait,

    /// <summary>Signing off.</summary>
    Outro,
}

/// <summary>What must be in place for a take: changing it costs time.</summary>
/// <param name="Station">Where it is made.</param>
/// <param name="Method">How; null when it was not said.</param>
/// <param name="Glass">In which glass; empty when none is named.</param>
/// <param name="Backdrop">Before what; empty for the backdrop that is up.</param>
public sealed record SetUp(string Station, MethodKind? Method, Slug Glass, string Backdrop);

/// <summary>One block of the running order.</summary>
public sealed record Block
{
    /// <summary>What happens.</summary>
    public required BlockKind Kind { get; init; }

    /// <summary>What it is called on the call sheet: "Take 2 of Salt Lane Sour".</summary>
    public required string Name { get; init; }

    /// <summary>The drink it belongs to; empty for none. A reset belongs to the drink that follows it.</summary>
    public Slug Drink { get; init; }

    /// <summary>The house prep a batch makes; empty for every other block.</summary>
    public Slug Prep { get; init; }

    /// <summary>Which take, counted from 1; 0 for every other block.</summary>
    public int Take { get; init; }

    /// <summary>When it starts, from the call.</summary>
    public required TimeSpan Start { get; init; }

    /// <summary>When it ends, from the call.</summary>
    public required TimeSpan End { get; init; }

    /// <summary>What must be in place; null for a block that is no take.</summary>
    public SetUp? SetUp { get; init; }

    /// <summary>Why it stands where it does.</summary>
    public string Reason { get; init; } = "";

    /// <summary>Whether it runs beside the next blocks on another pair of hands and takes no time of its own from the day.</summary>
    public bool Beside { get; init; }

    /// <summary>Whether it is filmed already.</summary>
    public bool Filmed { get; init; }
}
