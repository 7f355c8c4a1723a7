using System.Diagnostics;
using System.Text;

namespace Barshow.Web.Tests.Verbs;

/// <summary>Runs the executable as a person would, with a data folder of its own.</summary>
public sealed class Executable : IDisposable
{
    /// <summary>A folder for this run alone.</summary>
    public string Folder { get; } = Directory.CreateTempSubdirectory("barshow-verb-").FullName;

    /// <summary>A path inside it.</summary>
    public string At(string name) => Path.Combine(Folder, name);

    /// <summary>Runs a verb to its end.</summary>
    public Outcome Run(string? input, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            WorkingDirectory = Folder,
        };
        start.ArgumentList.Add(Path.Combine(AppContext.BaseDirectory, "Barshow.Web.dll"));
        foreach (var arg in args)
            start.ArgumentList.Add(arg);
        start.Environment["BARSHOW_DATA"] = At("data");
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, output, errors.Result);
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

/// <summary>What came of a run.</summary>
public sealed record Outcome(int ExitCode, string Output, string Errors);
