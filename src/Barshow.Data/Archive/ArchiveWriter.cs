using System.IO.Compression;
using System.Text.Json;
using Barshow.Data.Json;

namespace Barshow.Data.Archive;

/// <summary>Writes an archive file of the version of today.</summary>
public static class ArchiveWriter
{
    /// <summary>Writes the archive as a zip; the same archive at the same instant gives the same bytes.</summary>
    public static void Write(HouseArchive archive, DateTimeOffset madeAt, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(archive);
        using var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true);
        Add("manifest", new ArchiveManifest { Format = ArchiveFormat.Name, Version = ArchiveFormat.Version, MadeAt = madeAt });
        if (archive.House.Values is [var house])
            Add(ArchiveFormat.House, house);
        if (archive.Kit.Values is [var kit])
            Add(ArchiveFormat.Kit, kit);
        Add(ArchiveFormat.Ingredients, archive.Ingredients.Values);
        Add(ArchiveFormat.Drinks, archive.Drinks.Values);
        Add(ArchiveFormat.Episodes, archive.Episodes.Values);
        Add(ArchiveFormat.Featured, archive.Featured.Values);
        Add(ArchiveFormat.Bin, new ArchiveBin { Ingredients = archive.Ingredients.Bin, Drinks = archive.Drinks.Bin, Episodes = archive.Episodes.Bin, Featured = archive.Featured.Bin });
        Add(ArchiveFormat.Saved, archive.Signatures);
        Add(ArchiveFormat.History, archive.History);

        void Add<T>(string kind, T value)
        {
            var entry = zip.CreateEntry(ArchiveFormat.Entry(kind), CompressionLevel.Optimal);
            entry.LastWriteTime = madeAt < ZipBegins ? ZipBegins : madeAt;
            using var into = entry.Open();
            JsonSerializer.Serialize(into, value, DomainJson.Readable);
        }
    }

    // A zip cannot tell an earlier day.
    private static DateTimeOffset ZipBegins { get; } = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
}
