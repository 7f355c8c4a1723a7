using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;

namespace Barshow.Browser.Tests;

/// <summary>The real program on a data folder of its own, as the README's command starts it.</summary>
public sealed partial class Server : IAsyncDisposable
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory.Replace("Barshow.Browser.Tests", "Barshow.Web", StringComparison.Ordinal).Replace($"{Path.DirectorySeparatorChar}tests{Path.DirectorySeparatorChar}", $"{Path.DirectorySeparatorChar}src{Path.DirectorySeparatorChar}", StringComparison.Ordinal), "Barshow.Web.dll");

    private readonly Process _process;

    private Server(Process process, string address, string folder) => (_process, Address, Folder) = (process, address, folder);

    /// <summary>Where it is open, without a slash at the end.</summary>
    public string Address { get; }

    /// <summary>Its data folder.</summary>
    public string Folder { get; }

    /// <summary>Starts it and waits until it says where it is open.</summary>
    public static async Task<Server> StartAsync(string? folder = null)
    {
        folder ??= Directory.CreateTempSubdirectory("barshow-browser-").FullName;
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true };
        foreach (var arg in new[] { Program, "--data", folder, "--port", FreePort().ToString(System.Globalization.CultureInfo.InvariantCulture) })
            start.ArgumentList.Add(arg);
        var process = Process.Start(start)!;
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(2));
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
            if (Opened().Match(line) is { Success: true } match)
                return new(process, match.Groups[1].Value, folder);
        throw new InvalidOperationException("The program ended before it was open.");
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    [GeneratedRegex(@"open at (http://\S+?)\.(?:\s|$)")]
    private static partial Regex Opened();
}
