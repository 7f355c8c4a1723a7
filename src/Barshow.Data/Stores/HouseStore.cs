using Barshow.Data.Rows;
using Barshow.Engine.Episodes;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>The settings of the house.</summary>
public sealed class HouseStore(IDbContextFactory<BarshowDb> contexts, TimeProvider clock) : AggregateStore<HouseRow, House>(contexts, clock)
{
    /// <summary>The settings; those a house starts with, of version 0, until they are saved.</summary>
    public async Task<Stored<House>> LoadAsync(CancellationToken cancel = default) =>
        await FindAsync(HouseRow.Only, cancel) ?? new(new(), 0, default, "");

    /// <summary>Who changed them and when, latest first.</summary>
    public Task<IReadOnlyList<HistoryLine<House>>> HistoryAsync(CancellationToken cancel = default) => HistoryAsync(HouseRow.Only, cancel);
}
