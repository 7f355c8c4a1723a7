using System.Diagnostics;
using System.Globalization;
using Barshow.Data.Tests.Support;

namespace Barshow.Data.Tests;

/// <summary>The process is killed (SIGKILL) in the middle of a hundred saves. Five times here; fifty with BARSHOW_LONG_TESTS=1, or by tests/kill-test.sh.</summary>
public sealed class KillTests : IDisposable
{
    private readonly string _folder = TestHouse.NewFolder();

    private static int Kills => Environment.GetEnvironmentVariable("BARSHOW_LONG_TESTS") == "1" ? 50 : 5;

    public void Dispose()
    {
        if (Directory.Exists(_folder))
            Directory.Delete(_folder, recursive: true);
    }

    [Fact]
    public async Task No_acknowledged_save_is_lost_and_the_file_stays_sound()
    {
        var (code, output) = await RunAsync("run", _folder, Kills.ToString(CultureInfo.InvariantCulture));

        Assert.True(code == 0, output);
        Assert.StartsWith($"{Kills} kills, ", output, StringComparison.Ordinal);
        Assert.EndsWith("none lost; the file was sound each time.", output.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_save_that_is_acknowledged_and_dropped_is_seen()
    {
        var (code, output) = await RunAsync("run", _folder, "1", "--drop");

        Assert.Equal(2, code);
        Assert.StartsWith("kill 1: drink-3 ", output, StringComparison.Ordinal);
    }

    private static async Task<(int Code, string Output)> RunAsync(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "Barshow.Data.KillTest.dll"), .. arguments]) { RedirectStandardOutput = true })!;
        var output = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, output);
    }
}
