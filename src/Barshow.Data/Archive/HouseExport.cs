using System.Text.Json;
using Barshow.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Archive;

/// <summary>Writes everything the house has into one archive file.</summary>
public sealed class HouseExport(IDbContextFactory<BarshowDb> contexts, TimeProvider clock)
{
    /// <summary>Writes the archive to a file, which appears only when it is whole.</summary>
    public async Task ExportAsync(string path, CancellationToken cancel = default)
    {
        var full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var unfinished = full + ".unfinished";
        try
        {
            await using (var file = new FileStream(unfinished, FileMode.Create, FileAccess.ReadWrite))
            {
                await ExportAsync(file, cancel);
                file.Flush(flushToDisk: true);
            }

            File.Move(unfinished, full, overwrite: true);
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    /// <summary>Writes the archive to a stream.</summary>
    public async Task ExportAsync(Stream stream, CancellationToken cancel = default) =>
        ArchiveWriter.Write(await ReadAsync(cancel), clock.GetUtcNow(), stream);

    /// <summary>Everything the house has at one instant.</summary>
    public async Task<HouseArchive> ReadAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var held = await db.HoldStateAsync(cancel);
        var signatures = new List<Signature>();
        return new()
        {
            House = await SectionAsync<HouseRow, Engine.Episodes.House>(ArchiveFormat.House),
            Kit = await SectionAsync<KitRow, Engine.Specs.BarKit>(ArchiveFormat.Kit),
            Ingredients = await SectionAsync<IngredientRow, Engine.Ingredients.Ingredient>(ArchiveFormat.Ingredients),
            Drinks = await SectionAsync<DrinkRow, Engine.Specs.Spec>(ArchiveFormat.Drinks),
            Episodes = await SectionAsync<EpisodeRow, Engine.Episodes.Episode>(ArchiveFormat.Episodes),
            Featured = await SectionAsync<FeatureRow, Engine.Featured.Feature>(ArchiveFormat.Featured),
            Signatures = signatures,
            History = await HistoryAsync(db, cancel),
        };

        async Task<ArchiveSection<T>> SectionAsync<TRow, T>(string kind)
            where TRow : Row<T>
            where T : class
        {
            var rows = await db.Set<TRow>().AsNoTracking().OrderBy(row => row.Slug).ThenBy(row => row.Id).ToListAsync(cancel);
            var live = rows.Where(row => row.DeletedAt is null).ToList();
            signatures.AddRange(live.Select(row => new Signature(kind, row.Slug, row.Version, row.SavedAt, row.SavedBy)));
            return new(
                [.. live.Select(row => row.Document)],
                [.. rows.Where(row => row.DeletedAt is not null).Select(row => new BinnedThing<T>(row.Document, row.Version, row.DeletedAt!.Value, row.SavedBy))]);
        }
    }

    private static async Task<IReadOnlyList<ArchivedChange>> HistoryAsync(BarshowDb db, CancellationToken cancel)
    {
        var kinds = ArchiveTables.KindsByTable(db);
        var lines = new List<ArchivedChange>();
        var bytes = 0L;
        await foreach (var line in db.Changes.AsNoTracking().OrderByDescending(line => line.Id).AsAsyncEnumerable().WithCancellation(cancel))
        {
            // Three bytes is the most that a character of text takes; indenting at most doubles it.
            bytes += 200 + (line.Before?.Length ?? 0) * 2L;
            if (bytes > ArchiveFormat.LongestHistory)
                break;
            lines.Add(new(kinds[line.Kind], line.Slug, line.Version, line.Deed, line.At, line.By, line.Before is null ? null : JsonElement.Parse(line.Before)));
        }

        lines.Reverse();
        return lines;
    }
}
