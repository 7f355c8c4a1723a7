using Barshow.Data.Archive.Import;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Archive;

/// <summary>Fills a house in which nothing was saved yet: with the stock library, or with the demo bar on top of it.</summary>
public sealed class StockLoader(IDbContextFactory<BarshowDb> contexts, HouseImport import, TimeProvider clock)
{
    /// <summary>Whether nothing has ever been saved here.</summary>
    public async Task<bool> IsEmptyAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return !await db.Changes.AnyAsync(cancel);
    }

    /// <summary>Loads the stock library: house, kit, ingredients, drinks.</summary>
    /// <param name="demoData">The folder that comes with the program, with <c>stock</c> and <c>demo</c> in it.</param>
    /// <param name="cancel">Stops before anything is written.</param>
    /// <returns>Whether it was loaded; false when the house is not empty.</returns>
    /// <exception cref="InvalidDataException">The folder does not hold a sound archive.</exception>
    public Task<bool> LoadStockAsync(string demoData, CancellationToken cancel = default) =>
        import.ApplyToEmptyAsync(Read(demoData, "stock"), "", cancel);

    /// <summary>Loads the stock library and the demo bar over it; its dates move so that the bar is as if opened today.</summary>
    /// <param name="demoData">The folder that comes with the program, with <c>stock</c> and <c>demo</c> in it.</param>
    /// <param name="cancel">Stops before anything is written.</param>
    /// <returns>Whether it was loaded; false when the house is not empty.</returns>
    /// <exception cref="InvalidDataException">A folder does not hold a sound archive.</exception>
    public Task<bool> LoadDemoAsync(string demoData, CancellationToken cancel = default) =>
        import.ApplyToEmptyAsync(Read(demoData, "stock").With(Read(demoData, "demo")), "", cancel);

    private HouseArchive Read(string demoData, string part)
    {
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        var reading = ArchiveReader.ReadFolder(Path.Combine(demoData, part), today);
        return reading.Archive ?? throw new InvalidDataException($"The folder {Path.Combine(demoData, part)} cannot be loaded. {reading.Refusal}");
    }
}
