using System.CommandLine;
using Barshow.Data;
using Barshow.Data.Opening;

namespace Barshow.Web.Verbs;

/// <summary>The house of a data folder just as it is, without the demo, and what stops it turned into one sentence.</summary>
internal static class BareHouse
{
    /// <summary>Does something with the house in the folder that the call names, its database opened and up to date.</summary>
    /// <param name="parsed">The call.</param>
    /// <param name="mustExist">Whether a folder without a database is refused instead of made.</param>
    /// <param name="work">What is done; its exit code is the verb's.</param>
    /// <param name="cancel">Stops it.</param>
    public static Task<int> RunAsync(ParseResult parsed, bool mustExist, Func<IServiceProvider, CancellationToken, Task<int>> work, CancellationToken cancel)
    {
        return RunUnopenedAsync(parsed, mustExist, OpenedAsync, cancel);

        async Task<int> OpenedAsync(IServiceProvider services, CancellationToken stop)
        {
            await services.GetRequiredService<DatabaseOpener>().OpenAsync(stop);
            return await work(services, stop);
        }
    }

    /// <summary>Does something with the house in the folder that the call names, in whatever state its database is.</summary>
    public static async Task<int> RunUnopenedAsync(ParseResult parsed, bool mustExist, Func<IServiceProvider, CancellationToken, Task<int>> work, CancellationToken cancel)
    {
        var folder = DataFolder.Resolve(parsed.GetValue(CommandLine.Data));
        if (mustExist && !File.Exists(folder.Database))
            return CommandLine.Refuse($"There is no database in {folder.Path}. Name its folder with --data.");
        await using var services = new ServiceCollection().AddBarshowData(folder).BuildServiceProvider();
        try
        {
            return await work(services, cancel);
        }
        catch (Exception problem) when (problem is DatabaseUnusableException or InvalidDataException or IOException or UnauthorizedAccessException)
        {
            return CommandLine.Refuse(problem.Message);
        }
        catch (OperationCanceledException)
        {
            return CommandLine.Refuse("Stopped; nothing was changed.");
        }
    }
}
