using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>When in the preparation a task is done.</summary>
public enum MiseSession
{
    /// <summary>The day before: what keeps.</summary>
    DayBefore,

    /// <summary>The morning of the shoot, before the call.</summary>
    BeforeTheCall,

    /// <summary>Between takes.</summary>
    DuringTheShoot,
}

/// <summary>One thing to be ready before it is filmed.</summary>
public sealed record MiseTask
{
    /// <summary>Its name for ticks, the same however often the list is made: "juice:lime-juice".</summary>
    public required string Key { get; init; }

    /// <summary>What is done, a sentence: "Press lime juice."</summary>
    public required string Text { get; init; }

    /// <summary>How it is done, step by step.</summary>
    public IReadOnlyList<string> Steps { get; init; } = [];

    /// <summary>Where it is done.</summary>
    public required string Station { get; init; }

    /// <summary>How much, in both units where it is measured: "480 ml · 16 oz from 19 limes"; empty where nothing is counted.</summary>
    public string Amount { get; init; } = "";

    /// <summary>How much, as a measure; null where nothing is counted.</summary>
    public Measure? Quantity { get; init; }

    /// <summary>Pairs of hands it keeps busy, 1 or more.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>How long hands are busy with it.</summary>
    public required TimeSpan Duration { get; init; }

    /// <summary>The equipment that only one task can use at a time; empty for none.</summary>
    public string Equipment { get; init; } = "";

    /// <summary>The earliest start, from the call, so that it is still fresh when it is last filmed.</summary>
    public required TimeSpan NotBefore { get; init; }

    /// <summary>The latest end, from the call.</summary>
    public required TimeSpan NotAfter { get; init; }

    /// <summary>When it starts, from the call.</summary>
    public TimeSpan Start { get; init; }

    /// <summary>When it ends, from the call.</summary>
    public TimeSpan End { get; init; }

    /// <summary>When in the preparation it is done.</summary>
    public MiseSession Session { get; init; } = MiseSession.BeforeTheCall;

    /// <summary>How much it matters that it is not done early; 0 where it does not.</summary>
    public int Perishes { get; init; }

    /// <summary>The drinks it is for; empty when it is for the whole day.</summary>
    public IReadOnlyList<Slug> For { get; init; } = [];

    /// <summary>Tasks that must be done before it, by key.</summary>
    public IReadOnlyList<string> After { get; init; } = [];

    /// <summary>Why it is done at its hour, a sentence.</summary>
    public string Reason { get; init; } = "";

    /// <summary>The house prep or juice it makes; empty for none.</summary>
    public Slug Makes { get; init; }
}
