namespace Barshow.Data.Rows;

/// <summary>One entry of an as-poured log. Rows are only ever added.</summary>
public sealed class BenchEntry
{
    /// <summary>Which row this is.</summary>
    public long Id { get; private set; }

    /// <summary>The episode it belongs to, by the name it was kept under when the entry came.</summary>
    public required string Episode { get; init; }

    /// <summary>The device that logged it.</summary>
    public required string Device { get; init; }

    /// <summary>Its place in that device's log, counted from 1.</summary>
    public required long Sequence { get; init; }

    /// <summary>The entry itself, as JSON.</summary>
    public required string Entry { get; init; }

    /// <summary>When it came in.</summary>
    public required DateTimeOffset CameAt { get; init; }
}
