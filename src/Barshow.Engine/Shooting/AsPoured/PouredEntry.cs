using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Shooting.AsPoured;

/// <summary>What an entry of the as-poured log says.</summary>
public enum PouredKind
{
    /// <summary>A line of the spec was poured, in the amount given.</summary>
    Poured,

    /// <summary>Another ingredient was poured for a line of the spec.</summary>
    Swapped,

    /// <summary>Something the spec does not hold was poured.</summary>
    Added,

    /// <summary>A line of the spec was left out.</summary>
    LeftOut,

    /// <summary>The take was judged.</summary>
    Judged,

    /// <summary>Verdict and texture in a word.</summary>
    Remark,

    /// <summary>A mise task was ticked.</summary>
    Ticked,

    /// <summary>A mise task's tick was taken back.</summary>
    Unticked,
}

/// <summary>How a take was judged.</summary>
public enum TakeVerdict
{
    /// <summary>Good: it is what the film shows.</summary>
    Good,

    /// <summary>To be repeated.</summary>
    Repeat,
}

/// <summary>One entry of the as-poured log. Entries are only ever appended; a later entry of the same device on the same line of the same take corrects the earlier.</summary>
public sealed record PouredEntry
{
    /// <summary>The device that logged it.</summary>
    public required string Device { get; init; }

    /// <summary>Its place in that device's log, counted from 1 without gaps.</summary>
    public required long Sequence { get; init; }

    /// <summary>When it was logged, by the device's clock.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>What it says.</summary>
    public required PouredKind Kind { get; init; }

    /// <summary>The drink; empty for a tick that belongs to none.</summary>
    public Slug Drink { get; init; }

    /// <summary>Which take, counted from 1; 0 where none is meant.</summary>
    public int Take { get; init; }

    /// <summary>The line of the spec, counted from 0; null where none is meant.</summary>
    public int? Line { get; init; }

    /// <summary>What was poured; null where no amount is meant.</summary>
    public Measure? Measure { get; init; }

    /// <summary>The ingredient as it was named, for a swapped or added line; empty elsewhere.</summary>
    public string Name { get; init; } = "";

    /// <summary>The ingredient it is; empty when the house does not know it.</summary>
    public Slug Ingredient { get; init; }

    /// <summary>How the take was judged; null elsewhere.</summary>
    public TakeVerdict? Verdict { get; init; }

    /// <summary>Verdict and texture in a word, or the reason of a change; empty for none.</summary>
    public string Remark { get; init; } = "";

    /// <summary>The key of the mise task; empty elsewhere.</summary>
    public string Task { get; init; } = "";
}
