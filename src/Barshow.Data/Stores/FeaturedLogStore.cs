using Barshow.Data.Rows;
using Barshow.Engine.Featured;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>The featured log: each drink that was shown, one row.</summary>
public sealed class FeaturedLogStore(IDbContextFactory<BarshowDb> contexts, TimeProvider clock) : AggregateStore<FeatureRow, Feature>(contexts, clock)
{
    /// <summary>All that was featured, oldest first.</summary>
    public async Task<FeaturedLog> LoadAsync(CancellationToken cancel = default) => new([.. (await ListAsync(cancel)).Select(feature => feature.Stored.Value)]);

    /// <summary>All that was featured, oldest first, each with its row.</summary>
    public async Task<IReadOnlyList<StoredFeature>> ListAsync(CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        var rows = await db.Features.AsNoTracking().Where(row => row.DeletedAt == null).OrderBy(row => row.Date).ThenBy(row => row.Id).ToListAsync(cancel);
        return [.. rows.Select(row => new StoredFeature(row.Id, Read(row)))];
    }

    /// <summary>Adds a feature; a conflict when the same drink is in the log for the same episode and day.</summary>
    public Task<SaveResult<Feature>> AddAsync(Feature feature, string savedBy = "", CancellationToken cancel = default) => SaveAsync(feature, null, savedBy, cancel);

    /// <summary>Saves over a feature of the log; its day, its episode and its drink may change.</summary>
    public Task<SaveResult<Feature>> SaveAsync(long id, Feature feature, int expectedVersion, string savedBy = "", CancellationToken cancel = default) =>
        SaveAsync(feature, db => db.Features.SingleOrDefaultAsync(row => row.Id == id && row.DeletedAt == null, cancel), FeatureRow.KeyOf(feature), expectedVersion, savedBy, cancel);

    /// <summary>Puts a feature in the bin.</summary>
    /// <returns>Its row in the bin, to undo by; null when it was not there.</returns>
    public async Task<long?> DeleteAsync(long id, string deletedBy = "", CancellationToken cancel = default)
    {
        string? key;
        await using (var db = await OpenAsync(cancel))
            key = await db.Features.Where(row => row.Id == id && row.DeletedAt == null).Select(row => row.Slug).SingleOrDefaultAsync(cancel);
        return key is null ? null : await DeleteAsync(key, deletedBy, cancel);
    }
}

/// <summary>A feature with its row.</summary>
/// <param name="Id">The row, to change or delete it by.</param>
/// <param name="Stored">The feature as it is saved.</param>
public sealed record StoredFeature(long Id, Stored<Feature> Stored);
