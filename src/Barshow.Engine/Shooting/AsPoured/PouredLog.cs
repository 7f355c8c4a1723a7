namespace Barshow.Engine.Shooting.AsPoured;

/// <summary>What the bench really did, from all devices, each entry once.</summary>
public sealed class PouredLog
{
    private PouredLog(IReadOnlyList<PouredEntry> entries, IReadOnlyList<PouredEntry> refused)
    {
        Entries = entries;
        Refused = refused;
    }

    /// <summary>Nothing yet.</summary>
    public static PouredLog Empty { get; } = new([], []);

    /// <summary>The entries as they happened: each device's in its own order, the devices woven together by their clocks.</summary>
    public IReadOnlyList<PouredEntry> Entries { get; }

    /// <summary>Entries that say something else under a device and sequence already taken: a device that lost its log and began again. They are kept here, not dropped.</summary>
    public IReadOnlyList<PouredEntry> Refused { get; }

    /// <summary>A log of these entries; of two alike one is kept.</summary>
    public static PouredLog Of(IEnumerable<PouredEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        Dictionary<(string, long), PouredEntry> kept = [];
        List<PouredEntry> refused = [];
        foreach (var entry in entries)
            if (!kept.TryAdd((entry.Device, entry.Sequence), entry) && kept[(entry.Device, entry.Sequence)] != entry && !refused.Contains(entry))
                refused.Add(entry);
        return new(Woven(kept.Values), refused);
    }

    /// <summary>This log and another, each entry once however often it was handed over. Which side is asked does not change what is kept where both agree.</summary>
    public PouredLog Merge(PouredLog other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Of(Entries.Concat(Refused).Concat(other.Entries).Concat(other.Refused));
    }

    /// <summary>The sequence up to which a device has handed over without a gap; 0 when nothing has come.</summary>
    public long HandedOver(string device)
    {
        var sequence = 0L;
        foreach (var entry in Entries.Where(entry => entry.Device == device).OrderBy(entry => entry.Sequence))
        {
            if (entry.Sequence != sequence + 1)
                break;
            sequence++;
        }

        return sequence;
    }

    /// <summary>The mise tasks that are ticked, each with the entry that ticked it.</summary>
    public IReadOnlyDictionary<string, PouredEntry> Ticks()
    {
        Dictionary<string, PouredEntry> ticks = new(StringComparer.Ordinal);
        foreach (var entry in Entries)
        {
            if (entry.Kind is PouredKind.Ticked)
                ticks[entry.Task] = entry;
            else if (entry.Kind is PouredKind.Unticked)
                ticks.Remove(entry.Task);
        }

        return ticks;
    }

    // A device's clock may be set back in the middle of the day; its own order holds all the same.
    private static List<PouredEntry> Woven(IEnumerable<PouredEntry> entries) =>
        [.. entries.GroupBy(entry => entry.Device)
            .SelectMany(device =>
            {
                var latest = DateTimeOffset.MinValue;
                return device.OrderBy(entry => entry.Sequence).Select(entry => (Entry: entry, At: latest = entry.At > latest ? entry.At : latest)).ToList();
            })
            .OrderBy(pair => pair.At).ThenBy(pair => pair.Entry.Device, StringComparer.Ordinal).ThenBy(pair => pair.Entry.Sequence)
            .Select(pair => pair.Entry)];
}
