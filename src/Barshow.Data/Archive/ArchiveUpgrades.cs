namespace Barshow.Data.Archive;

/// <summary>Brings the entries of an older archive up to the version of today, one version at a time, before they are read.</summary>
/// <remarks>
/// When the format changes: raise <see cref="ArchiveFormat.Version"/>, add the step from the version before at the end of
/// the list, keep an archive of the older version among the tests, and describe the change in ARCHIVE.md.
/// </remarks>
internal static class ArchiveUpgrades
{
    // The step at index 0 makes version 2 of version 1.
    private static readonly IReadOnlyList<Func<IReadOnlyDictionary<string, byte[]>, IReadOnlyDictionary<string, byte[]>>> Steps = [];

    /// <summary>The entries as version <see cref="ArchiveFormat.Version"/> has them.</summary>
    /// <param name="entries">The entries as they were unpacked.</param>
    /// <param name="version">Their version, from 1 to the one of today.</param>
    public static IReadOnlyDictionary<string, byte[]> ToCurrent(IReadOnlyDictionary<string, byte[]> entries, int version) =>
        Steps.Skip(version - 1).Aggregate(entries, (current, step) => step(current));
}
