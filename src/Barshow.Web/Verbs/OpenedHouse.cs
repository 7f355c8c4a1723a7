using Barshow.Data;
using Barshow.Data.Archive;
using Barshow.Data.Opening;

namespace Barshow.Web.Verbs;

/// <summary>The house a verb works on: its database open, and the demo bar in it when nothing was saved there yet.</summary>
internal sealed class OpenedHouse : IAsyncDisposable
{
    private readonly ServiceProvider _services;

    private OpenedHouse(ServiceProvider services) => _services = services;

    /// <summary>Opens the house of a data folder.</summary>
    /// <exception cref="DatabaseUnusableException">It cannot be used; the message is a sentence for the user.</exception>
    public static async Task<OpenedHouse> OpenAsync(string? dataFolder, CancellationToken cancel)
    {
        var services = new ServiceCollection().AddLogging().AddBarshowData(DataFolder.Resolve(dataFolder)).BuildServiceProvider();
        try
        {
            await services.GetRequiredService<DatabaseOpener>().OpenAsync(cancel);
            await services.GetRequiredService<StockLoader>().LoadDemoAsync(DemoData, cancel);
            return new(services);
        }
        catch
        {
            await services.DisposeAsync();
            throw;
        }
    }

    /// <summary>The folder that comes with the program.</summary>
    public static string DemoData => Path.Combine(AppContext.BaseDirectory, "demo-data");

    /// <summary>A store of it.</summary>
    public T Get<T>()
        where T : notnull => _services.GetRequiredService<T>();

    public ValueTask DisposeAsync() => _services.DisposeAsync();
}
