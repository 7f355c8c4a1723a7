using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Archive.Import;

/// <summary>Lays the things of an archive before a context, one kind after another, and writes down what each of them means.</summary>
internal sealed class ImportStaging(BarshowDb db, HouseArchive archive, DateTimeOffset now, string savedBy)
{
    private readonly ILookup<(string Kind, string Slug), Signature> _signatures = archive.Signatures.ToLookup(each => (each.Kind, each.Slug));
    private readonly ILookup<(string Kind, string Slug), ArchivedChange> _history = archive.History.ToLookup(each => (each.Kind, each.Slug));
    private readonly List<ImportLine> _lines = [];
    private int _untouched;

    public ImportPlan Plan => new([.. _lines], _untouched);

    public async Task StageAsync<TRow, T>(string kind, ArchiveSection<T> section, CancellationToken cancel)
        where TRow : Row<T>, new()
        where T : class
    {
        var rows = await db.Set<TRow>().ToListAsync(cancel);
        var live = rows.Where(row => row.DeletedAt is null).ToDictionary(row => row.Slug);
        var binned = rows.Where(row => row.DeletedAt is not null).Select(row => (row.Slug, row.DeletedAt!.Value)).ToHashSet();
        var table = ArchiveTables.Table(db, typeof(TRow));
        var told = (await db.Changes.Where(line => line.Kind == table).GroupBy(line => line.Slug).Select(group => new { group.Key, Version = group.Max(line => line.Version) }).ToListAsync(cancel))
            .ToDictionary(line => line.Key, line => line.Version);

        foreach (var value in section.Values)
        {
            var fresh = new TRow();
            fresh.Take(value);
            if (live.TryGetValue(fresh.Slug, out var row))
                Meet(kind, table, row, value);
            else
                Add(kind, table, fresh, told.GetValueOrDefault(fresh.Slug));
        }

        foreach (var thing in section.Bin)
        {
            var fresh = new TRow();
            fresh.Take(thing.Value);
            if (!binned.Add((fresh.Slug, thing.DeletedAt)))
                continue;
            fresh.DeletedAt = thing.DeletedAt;
            fresh.SavedAt = thing.DeletedAt;
            fresh.SavedBy = thing.DeletedBy;
            fresh.Version = thing.Version;
            db.Add(fresh);
            AddHistory(kind, table, fresh, told.ContainsKey(fresh.Slug));
            told.TryAdd(fresh.Slug, fresh.Version);
            _lines.Add(new(kind, fresh.Slug, fresh.Name, ImportStep.AddToBin, 0));
        }

        var coming = section.Values.Select(new TRow().SlugOf).ToHashSet();
        _untouched += live.Keys.Count(slug => !coming.Contains(slug));
    }

    private void Meet<T>(string kind, string table, Row<T> row, T value)
        where T : class
    {
        var before = JsonSerializer.Serialize(row.Document, DomainJson.Compact);
        var same = before == JsonSerializer.Serialize(value, DomainJson.Compact);
        _lines.Add(new(kind, row.Slug, row.Name, same ? ImportStep.Leave : ImportStep.Change, row.Version));
        if (same)
            return;
        row.Take(value);
        row.Version++;
        row.SavedAt = now;
        row.SavedBy = savedBy;
        Tell(table, row, Deed.Saved, before);
    }

    private void Add<T>(string kind, string table, Row<T> row, int told)
        where T : class
    {
        var signature = _signatures[(kind, row.Slug)].LastOrDefault();
        row.Version = Math.Max(signature?.Version ?? 1, told == 0 ? 1 : told + 1);
        row.SavedAt = signature?.At ?? now;
        row.SavedBy = signature?.By ?? savedBy;
        db.Add(row);
        AddHistory(kind, table, row, told != 0);
        _lines.Add(new(kind, row.Slug, row.Name, ImportStep.Add, 0));
    }

    // A history is taken over whole or, where there is one under that name already, not at all: two cannot be told apart.
    private void AddHistory<T>(string kind, string table, Row<T> row, bool hasOne)
        where T : class
    {
        var lines = _history[(kind, row.Slug)].ToList();
        if (hasOne || lines.Count == 0)
        {
            Tell(table, row, row.DeletedAt is null ? Deed.Made : Deed.Binned, null);
            return;
        }

        foreach (var line in lines)
            db.Add(new Change { Kind = table, Slug = line.Slug, Version = line.Version, Deed = line.Deed, At = line.At, By = line.By, Before = line.Before?.GetRawText() });
    }

    private void Tell<T>(string table, Row<T> row, Deed deed, string? before)
        where T : class =>
        db.Add(new Change { Kind = table, Slug = row.Slug, Version = row.Version, Deed = deed, At = row.SavedAt, By = row.SavedBy, Before = before });
}
