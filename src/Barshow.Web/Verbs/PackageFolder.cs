using Barshow.Engine.Publishing.Packaging;

namespace Barshow.Web.Verbs;

/// <summary>Writes a package into a folder.</summary>
internal static class PackageFolder
{
    // Files of an earlier run that are not made this time would speak of what is no longer so.
    private static readonly string[] MayGo =
    [
        "description.txt", "chapters.vtt", "callouts.vtt", "mise.csv", "mise.pdf", "running-order.csv", "shopping.csv", "viewer-shopping.txt",
        "call-sheet.html", "call-sheet.pdf", "call-sheet.ics", "pick-ups.csv", "corrections.txt",
    ];
    private static readonly string[] FoldersOfItsOwn = ["cards", "recipes", "site"];

    /// <summary>Writes the files, each whole or not at all, and takes away what an earlier run wrote and this one does not; nothing else in the folder is touched.</summary>
    public static async Task WriteAsync(string folder, IReadOnlyList<PackageFile> files, CancellationToken cancel)
    {
        Directory.CreateDirectory(folder);
        var kept = files.Select(file => file.Path).ToHashSet(StringComparer.Ordinal);
        foreach (var gone in MayGo.Where(name => !kept.Contains(name)))
            File.Delete(Path.Combine(folder, gone));
        foreach (var own in FoldersOfItsOwn.Select(name => Path.Combine(folder, name)).Where(Directory.Exists))
            foreach (var file in Directory.EnumerateFiles(own, "*", SearchOption.AllDirectories).Where(path => !kept.Contains(Path.GetRelativePath(folder, path).Replace('\\', '/'))).ToList())
                File.Delete(file);
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
