using System.Diagnostics;

namespace Barshow.Web.Tests.Verbs;

/// <summary>The program itself, started as a person would from the command line.</summary>
internal static class BarshowProgram
{
    public static async Task<Ran> RunAsync(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Barshow.Web.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Path.GetTempPath(),
        };
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new(process.ExitCode, await output, await errors);
    }
}

/// <summary>How the program ended.</summary>
internal sealed record Ran(int ExitCode, string Output, string Errors);
