using System.IO.Compression;
using System.IO.Hashing;

namespace Barshow.Data.Archive;

/// <summary>Unpacks the entries of an archive file into memory, within bounds, whatever the file says of itself.</summary>
internal static class ZipEntries
{
    private const string NotWhole = "The file is no archive, or not all of it: it cannot be unpacked.";

    /// <exception cref="ArchiveRefusal">The file is too large, damaged, or holds what no archive has.</exception>
    public static IReadOnlyDictionary<string, byte[]> Read(Stream file)
    {
        if (file.Length > ArchiveFormat.LongestFile)
            throw new ArchiveRefusal($"The file holds {Megabytes(file.Length)} MB, and an archive at most {Megabytes(ArchiveFormat.LongestFile)}.");
        try
        {
            using var zip = new ZipArchive(file, ZipArchiveMode.Read, leaveOpen: true);
            return Unpack(zip);
        }
        catch (Exception problem) when (problem is InvalidDataException or EndOfStreamException or IOException or NotSupportedException or ArgumentException or OverflowException)
        {
            throw new ArchiveRefusal(NotWhole);
        }
    }

    private static Dictionary<string, byte[]> Unpack(ZipArchive zip)
    {
        // Names first: nothing is unpacked from a file that is wrong already.
        if (zip.Entries.Count > ArchiveFormat.Entries.Count)
            throw new ArchiveRefusal($"The archive holds {zip.Entries.Count} entries, and there are only {ArchiveFormat.Entries.Count} that it may hold.");
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var entry in zip.Entries)
        {
            if (!ArchiveFormat.Entries.Contains(entry.FullName))
                throw new ArchiveRefusal($"The archive holds \"{Shown(entry.FullName)}\", which is not one of its entries.");
            if (!seen.Add(entry.FullName))
                throw new ArchiveRefusal($"The archive holds \"{entry.FullName}\" twice.");
            if (entry.Length > ArchiveFormat.LongestEntry)
                throw new ArchiveRefusal(TooLong(entry));
        }

        var unpacked = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var whole = 0L;
        foreach (var entry in zip.Entries)
        {
            var bytes = Unpack(entry);
            whole += bytes.Length;
            if (whole > ArchiveFormat.LongestWhole)
                throw new ArchiveRefusal($"The archive holds more than {Megabytes(ArchiveFormat.LongestWhole)} MB unpacked.");
            unpacked.Add(entry.FullName, bytes);
        }

        return unpacked;
    }

    private static byte[] Unpack(ZipArchiveEntry entry)
    {
        // What an entry says of its length is not believed: what comes out is counted.
        using var stream = entry.Open();
        using var memory = new MemoryStream();
        var buffer = new byte[81920];
        int read;
        while ((read = stream.Read(buffer)) > 0)
        {
            if (memory.Length + read > ArchiveFormat.LongestEntry)
                throw new ArchiveRefusal(TooLong(entry));
            memory.Write(buffer, 0, read);
        }

        var bytes = memory.ToArray();
        return bytes.LongLength == entry.Length && Crc32.HashToUInt32(bytes) == entry.Crc32
            ? bytes
            : throw new ArchiveRefusal($"The archive is damaged: \"{entry.FullName}\" does not match its checksum.");
    }

    private static string TooLong(ZipArchiveEntry entry) => $"The archive's \"{entry.FullName}\" holds more than {Megabytes(ArchiveFormat.LongestEntry)} MB unpacked.";

    private static long Megabytes(long bytes) => bytes >> 20;

    private static string Shown(string name)
    {
        var plain = new string([.. name.Take(60).Select(c => char.IsControl(c) ? '?' : c)]);
        return name.Length > 60 ? plain + "…" : plain;
    }
}
