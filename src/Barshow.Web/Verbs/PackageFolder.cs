using Barshow.Engine.Publishing.Packaging;

namespace Barshow.Web.Verbs;

/// <summary>Writes a package into a folder.</summary>
internal static class PackageFolder
{
    private const string Chapters = "chapters.vtt";

    /// <summary>Writes the files, each whole or not at all; chapters of an earlier run are taken away when there are none now.</summary>
    public static async Task WriteAsync(string folder, IReadOnlyList<PackageFile> files, CancellationToken cancel)
    {
        Directory.CreateDirectory(folder);
        if (files.All(file => file.Path != Chapters))
            File.Delete(Path.Combine(folder, Chapters));
        foreach (var file in files)
        {
            var path = Path.Combine(folder, file.Path.Replace('/', Path.DirectorySeparatorChar));
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            var half = path + ".part";
            await File.WriteAllBytesAsync(half, file.Bytes, cancel);
            File.Move(half, path, overwrite: true);
        }
    }
}
