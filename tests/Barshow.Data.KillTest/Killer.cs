using System.Diagnostics;
using System.Globalization;
using Barshow.Data.Opening;
using Barshow.Data.Stores;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Barshow.Data.KillTest;

/// <summary>Kills a saver again and again in the middle of its hundred saves, and looks each time at what is left.</summary>
internal static class Killer
{
    /// <summary>Runs it.</summary>
    /// <returns>0 when no acknowledged save was lost and the file was sound each time, 2 when not, 1 when the check could not be made.</returns>
    public static async Task<int> RunAsync(string folder, int kills, bool dropOne)
    {
        var acknowledged = new Dictionary<string, int>();
        var saves = 0;
        for (var kill = 1; kill <= kills; kill++)
        {
            // The kill falls after another number of acknowledged saves each time, and then at another moment within the next one.
            var after = 1 + kill * 37 % (Saver.Saves - 10);
            if (await KillOneAsync(folder, dropOne, after, kill, acknowledged) is not { } made)
                return 1;
            saves += made;
            if (await WrongAsync(folder, acknowledged) is { } wrong)
            {
                Console.WriteLine($"kill {kill}: {wrong}");
                return 2;
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{kills} kills, {saves} acknowledged saves, none lost; the file was sound each time."));
        return 0;
    }

    // The number of saves it acknowledged; null when it ended by itself.
    private static async Task<int?> KillOneAsync(string folder, bool dropOne, int after, int kill, Dictionary<string, int> acknowledged)
    {
        string[] arguments = [Path.Combine(AppContext.BaseDirectory, "Barshow.Data.KillTest.dll"), "save", folder, .. dropOne ? new[] { "--drop" } : []];
        using var saver = Process.Start(new ProcessStartInfo("dotnet", arguments) { RedirectStandardOutput = true })!;
        var made = 0;
        while (await saver.StandardOutput.ReadLineAsync() is { } line)
        {
            var words = line.Split(' ');
            // A line that the kill cut short was not acknowledged.
            if (words.Length != 2 || !int.TryParse(words[1], CultureInfo.InvariantCulture, out var version))
                break;
            acknowledged[words[0]] = version;
            if (++made == after)
            {
                Thread.SpinWait(kill * 4001 % 100_000);
                saver.Kill(); // SIGKILL: nothing of the saver's runs after it
            }
        }

        await saver.WaitForExitAsync();
        if (made >= after && saver.ExitCode != 0)
            return made;
        Console.WriteLine($"kill {kill}: the saver ended by itself after {made} saves with code {saver.ExitCode}.");
        return null;
    }

    private static async Task<string?> WrongAsync(string path, Dictionary<string, int> acknowledged)
    {
        var folder = DataFolder.Resolve(path);
        await using var services = new ServiceCollection().AddBarshowData(folder).BuildServiceProvider();
        await services.GetRequiredService<DatabaseOpener>().OpenAsync();
        var store = services.GetRequiredService<DrinkStore>();
        foreach (var (slug, version) in acknowledged)
        {
            var stored = await store.FindAsync(Engine.Names.Slug.Parse(slug));
            if (stored is null || stored.Version < version)
                return $"{slug} was acknowledged as version {version} and is {(stored is null ? "not there" : string.Create(CultureInfo.InvariantCulture, $"version {stored.Version}"))}.";
            // One more than was acknowledged may be there: saved, and killed before it was said.
            if (stored.Version > version + 1)
                return $"{slug} was acknowledged as version {version} and is version {stored.Version}.";
            if (stored.Value.Taste != Saver.TasteOf(stored.Value.Slug, stored.Version))
                return $"{slug} does not hold what its version {stored.Version} was saved with.";
        }

        return Sound(folder);
    }

    private static string? Sound(DataFolder folder)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = folder.Database, Pooling = false }.ConnectionString);
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        var answer = (string)command.ExecuteScalar()!;
        return answer == "ok" ? null : $"the file is not sound: {answer}";
    }
}
