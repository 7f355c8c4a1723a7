using System.Runtime.CompilerServices;

namespace Barshow.Web.Tests;

/// <summary>Where the repository lies, for tests that read its files.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find([CallerFilePath] string here = "")
    {
        var folder = new DirectoryInfo(Path.GetDirectoryName(here)!);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Barshow.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("The tests do not lie in the repository.");
    }
}
