using Barshow.Data.Rows;
using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>The episodes.</summary>
public sealed class EpisodeStore(IDbContextFactory<BarshowDb> contexts, TimeProvider clock) : SluggedStore<EpisodeRow, Episode>(contexts, clock)
{
    /// <summary>The episodes outside the bin: those without a shoot date first, then the latest shoot first, then by title.</summary>
    public async Task<IReadOnlyList<EpisodeSummary>> ListAsync(CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        var rows = await db.Episodes
            .Where(row => row.DeletedAt == null)
            .OrderByDescending(row => row.ShootDate == null)
            .ThenByDescending(row => row.ShootDate)
            .ThenBy(row => row.Name)
            .Select(row => new { row.Slug, row.Name, row.Number, row.ShootDate, row.PublishDate, row.DrinkCount, row.Bottle, row.Version, row.SavedAt, row.SavedBy })
            .ToListAsync(cancel);
        return [.. rows.Select(row => new EpisodeSummary(
            Slug.Parse(row.Slug), row.Name, row.Number, row.ShootDate, row.PublishDate, row.DrinkCount, row.Bottle, row.Version, row.SavedAt, row.SavedBy))];
    }
}

/// <summary>An episode as lists show it.</summary>
/// <param name="Slug">The name it is kept under.</param>
/// <param name="Title">Its title.</param>
/// <param name="Number">Its number in the channel's count; null when it is not numbered.</param>
/// <param name="ShootDate">The day of the shoot; null when it is not fixed.</param>
/// <param name="PublishDate">The day it is published; null when it is not fixed.</param>
/// <param name="DrinkCount">How many drinks are in the lineup.</param>
/// <param name="Bottle">The bottle it is about; empty for none.</param>
/// <param name="Version">Counts its saves from 1.</param>
/// <param name="SavedAt">When it was saved.</param>
/// <param name="SavedBy">Who saved it.</param>
public sealed record EpisodeSummary(
    Slug Slug, string Title, int? Number, DateOnly? ShootDate, DateOnly? PublishDate, int DrinkCount, string Bottle, int Version, DateTimeOffset SavedAt, string SavedBy);
