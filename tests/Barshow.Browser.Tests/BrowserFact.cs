namespace Barshow.Browser.Tests;

/// <summary>A test in a real browser; skipped, with the reason, where there is none.</summary>
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute() => Skip = Chromium.Path is null ? Chromium.Missing : null;
}

/// <summary>The same for a test with data.</summary>
public sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = Chromium.Path is null ? Chromium.Missing : null;
}

/// <summary>The browser of this machine.</summary>
public static class Chromium
{
    public const string Missing = "No Chromium is installed here; as root on Debian, tests/run installs one.";

    /// <summary>Where it lies; null when there is none.</summary>
    public static string? Path { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(System.IO.Path.PathSeparator)
        .SelectMany(folder => new[] { "chromium", "chromium-browser", "google-chrome", "google-chrome-stable" }.Select(name => System.IO.Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);
}
