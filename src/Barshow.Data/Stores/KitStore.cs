using Barshow.Data.Rows;
using Barshow.Engine.Specs;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>Glasses, jiggers and tools.</summary>
public sealed class KitStore(IDbContextFactory<BarshowDb> contexts, TimeProvider clock) : AggregateStore<KitRow, BarKit>(contexts, clock)
{
    /// <summary>The kit; an empty one of version 0 until it is saved.</summary>
    public async Task<Stored<BarKit>> LoadAsync(CancellationToken cancel = default) =>
        await FindAsync(KitRow.Only, cancel) ?? new(new(), 0, default, "");

    /// <summary>Who changed it and when, latest first.</summary>
    public Task<IReadOnlyList<HistoryLine<BarKit>>> HistoryAsync(CancellationToken cancel = default) => HistoryAsync(KitRow.Only, cancel);
}
