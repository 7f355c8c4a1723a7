namespace Barshow.Data.Archive;

/// <summary>What came of reading an archive: all of it, or one sentence that says why it was refused whole.</summary>
public sealed record ArchiveReading
{
    private ArchiveReading(HouseArchive? archive, string? refusal)
    {
        Archive = archive;
        Refusal = refusal;
    }

    /// <summary>What it holds; null when it was refused.</summary>
    public HouseArchive? Archive { get; }

    /// <summary>Why it was refused, a sentence; null when it was read.</summary>
    public string? Refusal { get; }

    internal static ArchiveReading Of(HouseArchive archive) => new(archive, null);

    internal static ArchiveReading Refused(string sentence) => new(null, sentence);
}

/// <summary>Leaves the reading of an archive at the first thing that is wrong with it.</summary>
internal sealed class ArchiveRefusal(string sentence) : Exception(sentence);
