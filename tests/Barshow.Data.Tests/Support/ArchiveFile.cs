using System.IO.Compression;
using System.Text;

namespace Barshow.Data.Tests.Support;

/// <summary>An archive file made by hand, entry by entry.</summary>
public sealed class ArchiveFile
{
    public const string Manifest = """{ "format": "barshow-archive", "version": 1 }""";

    private readonly List<(string Name, byte[] Bytes)> _entries = [];

    public static ArchiveFile Sound() => new ArchiveFile().With("manifest.json", Manifest);

    public ArchiveFile With(string name, string text) => With(name, Encoding.UTF8.GetBytes(text));

    public ArchiveFile With(string name, byte[] bytes)
    {
        _entries.Add((name, bytes));
        return this;
    }

    public byte[] Bytes(CompressionLevel level = CompressionLevel.Fastest)
    {
        using var memory = new MemoryStream();
        using (var zip = new ZipArchive(memory, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in _entries)
            {
                using var into = zip.CreateEntry(name, level).Open();
                into.Write(bytes);
            }
        }

        return memory.ToArray();
    }
}
