using System.IO.Compression;
using Barshow.Engine.Publishing.Packaging;

namespace Barshow.Web.Hosting;

/// <summary>Packs the files of a package into one.</summary>
internal static class PackageZip
{
    /// <summary>Writes the zip; the stream stays open.</summary>
    public static async Task WriteAsync(EpisodePackage package, Stream stream, CancellationToken cancel)
    {
        await using var zip = await ZipArchive.CreateAsync(stream, ZipArchiveMode.Create, leaveOpen: true, entryNameEncoding: null, cancel);
        foreach (var part in package.Files)
        {
            // Pictures and papers are packed already.
            var level = part.Path.EndsWith(".png", StringComparison.Ordinal) || part.Path.EndsWith(".pdf", StringComparison.Ordinal) ? CompressionLevel.NoCompression : CompressionLevel.Optimal;
            await using var entry = await zip.CreateEntry(part.Path, level).OpenAsync(cancel);
            await entry.WriteAsync(part.Bytes, cancel);
        }
    }
}
