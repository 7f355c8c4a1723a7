using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Data.Rows;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>What all stores have in common: each operation opens a context, works on one whole thing in one transaction, and closes it.</summary>
/// <typeparam name="TRow">How it is saved.</typeparam>
/// <typeparam name="T">What is saved.</typeparam>
public abstract class AggregateStore<TRow, T>(IDbContextFactory<BarshowDb> contexts, TimeProvider clock)
    where TRow : Row<T>, new()
    where T : class
{
    /// <summary>How many lines of its history a thing keeps.</summary>
    public const int LinesOfHistory = 100;

    private static readonly TRow Nameless = new();

    /// <summary>Opens a context; the caller closes it.</summary>
    protected Task<BarshowDb> OpenAsync(CancellationToken cancel) => contexts.CreateDbContextAsync(cancel);

    /// <summary>What is in the bin, last in first.</summary>
    public async Task<IReadOnlyList<Binned>> ListDeletedAsync(CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        return await db.Set<TRow>()
            .Where(row => row.DeletedAt != null)
            .OrderByDescending(row => row.DeletedAt)
            .Select(row => new Binned(row.Id, row.Slug, row.Name, row.DeletedAt!.Value, row.SavedBy))
            .ToListAsync(cancel);
    }

    /// <summary>Takes a thing out of the bin: a conflict when another of its name came meanwhile, gone when it is not in the bin.</summary>
    public async Task<SaveResult<T>> RestoreAsync(long id, string savedBy = "", CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var row = await db.Set<TRow>().SingleOrDefaultAsync(each => each.Id == id && each.DeletedAt != null, cancel);
        if (row is null)
            return new SaveResult<T>.Gone(null);
        if (await LiveAsync(db, row.Slug, cancel) is { } other)
            return new SaveResult<T>.Conflict(Read(other));
        if (await ObjectionAsync(db, row.Document, cancel) is { } objection)
            return new SaveResult<T>.Refused(objection);

        row.DeletedAt = null;
        Sign(db, row, Deed.Restored, row.Version + 1, savedBy, before: null);
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(CancellationToken.None);
        return new SaveResult<T>.Saved(Read(row));
    }

    /// <summary>Throws out everything in the bin, or only these rows of it. It cannot be undone.</summary>
    /// <returns>How many were thrown out.</returns>
    public async Task<int> EmptyBinAsync(IReadOnlyCollection<long>? ids = null, CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        var binned = db.Set<TRow>().Where(row => row.DeletedAt != null);
        if (ids is not null)
            binned = binned.Where(row => ids.Contains(row.Id));
        return await binned.ExecuteDeleteAsync(cancel);
    }

    /// <summary>Who changed it and when, latest first; at most <see cref="LinesOfHistory"/> lines.</summary>
    protected async Task<IReadOnlyList<HistoryLine<T>>> HistoryAsync(string slug, CancellationToken cancel)
    {
        await using var db = await OpenAsync(cancel);
        var lines = await HistoryOf(db, slug).OrderByDescending(line => line.Id).AsNoTracking().ToListAsync(cancel);
        return [.. lines.Select(line => new HistoryLine<T>(
            line.Version, line.Deed, line.At, line.By, line.Before is null ? null : JsonSerializer.Deserialize<T>(line.Before, DomainJson.Compact)))];
    }

    /// <summary>The thing of that name that is not in the bin.</summary>
    protected async Task<Stored<T>?> FindAsync(string slug, CancellationToken cancel)
    {
        await using var db = await OpenAsync(cancel);
        var row = await db.Set<TRow>().AsNoTracking().SingleOrDefaultAsync(each => each.Slug == slug && each.DeletedAt == null, cancel);
        return row is null ? null : Read(row);
    }

    /// <summary>Saves the thing kept under its own name.</summary>
    /// <param name="value">The new state.</param>
    /// <param name="expectedVersion">The version the change was made on; null or 0 for a new thing.</param>
    /// <param name="savedBy">Who saves; empty when nobody signs.</param>
    /// <param name="cancel">Stops before anything is written, never half-way.</param>
    public Task<SaveResult<T>> SaveAsync(T value, int? expectedVersion, string savedBy = "", CancellationToken cancel = default)
    {
        var slug = Nameless.SlugOf(value);
        return SaveAsync(value, db => LiveAsync(db, slug, cancel), slug, expectedVersion, savedBy, cancel);
    }

    /// <summary>Saves over the row that <paramref name="find"/> finds; <paramref name="slug"/> is the name it is looked for in the bin by.</summary>
    private protected async Task<SaveResult<T>> SaveAsync(T value, Func<BarshowDb, Task<TRow?>> find, string slug, int? expectedVersion, string savedBy, CancellationToken cancel)
    {
        await using var db = await OpenAsync(cancel);
        // SQLite takes the write lock here, so that nobody saves between the look and the save.
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var row = await find(db);
        if (row is null && expectedVersion is > 0)
            return new SaveResult<T>.Gone(await db.Set<TRow>().Where(each => each.Slug == slug && each.DeletedAt != null).MaxAsync(each => (long?)each.Id, cancel));
        if (row is not null && row.Version != expectedVersion)
            return new SaveResult<T>.Conflict(Read(row));

        var before = row is null ? null : JsonSerializer.Serialize(row.Document, DomainJson.Compact);
        if (before is not null && before == JsonSerializer.Serialize(value, DomainJson.Compact))
            return new SaveResult<T>.Saved(Read(row!));
        if (row is null || row.Slug != row.SlugOf(value))
        {
            if (await LiveAsync(db, Nameless.SlugOf(value), cancel) is { } other)
                return new SaveResult<T>.Conflict(Read(other));
        }

        if (await ObjectionAsync(db, value, cancel) is { } objection)
            return new SaveResult<T>.Refused(objection);

        var version = row is null ? await NextVersionAsync(db, slug, cancel) : row.Version + 1;
        var deed = row is null ? Deed.Made : Deed.Saved;
        row ??= db.Add(new TRow()).Entity;
        row.Take(value);
        Sign(db, row, deed, version, savedBy, before);
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(CancellationToken.None);
        if (version % LinesOfHistory == 0)
            await ForgetOldHistoryAsync(db, slug);
        return new SaveResult<T>.Saved(Read(row));
    }

    /// <summary>Puts the thing in the bin.</summary>
    /// <returns>Its row in the bin, to undo by; null when there was none.</returns>
    protected async Task<long?> DeleteAsync(string slug, string deletedBy, CancellationToken cancel)
    {
        await using var db = await OpenAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        if (await LiveAsync(db, slug, cancel) is not { } row)
            return null;
        row.DeletedAt = clock.GetUtcNow();
        Sign(db, row, Deed.Binned, row.Version + 1, deletedBy, before: null);
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(CancellationToken.None);
        return row.Id;
    }

    /// <summary>Why the thing must not be saved beside the others, a sentence; null when it may.</summary>
    private protected virtual Task<string?> ObjectionAsync(BarshowDb db, T value, CancellationToken cancel) => Task.FromResult<string?>(null);

    /// <summary>The thing of a row with its version and signature.</summary>
    protected static Stored<T> Read(TRow row) => new(row.Document, row.Version, row.SavedAt, row.SavedBy);

    private static Task<TRow?> LiveAsync(BarshowDb db, string slug, CancellationToken cancel) =>
        db.Set<TRow>().SingleOrDefaultAsync(row => row.Slug == slug && row.DeletedAt == null, cancel);

    private static IQueryable<Change> HistoryOf(BarshowDb db, string slug) => db.Changes.Where(line => line.Kind == Kind(db) && line.Slug == slug);

    private static string Kind(BarshowDb db) => db.Model.FindEntityType(typeof(TRow))!.GetTableName()!;

    // A name used again goes on counting, so that an old page never mistakes the new thing for the one it loaded.
    private static async Task<int> NextVersionAsync(BarshowDb db, string slug, CancellationToken cancel)
    {
        var binned = await db.Set<TRow>().Where(row => row.Slug == slug).MaxAsync(row => (int?)row.Version, cancel) ?? 0;
        var told = await HistoryOf(db, slug).MaxAsync(line => (int?)line.Version, cancel) ?? 0;
        return Math.Max(binned, told) + 1;
    }

    private void Sign(BarshowDb db, TRow row, Deed deed, int version, string by, string? before)
    {
        row.Version = version;
        row.SavedAt = clock.GetUtcNow();
        row.SavedBy = by;
        db.Add(new Change { Kind = Kind(db), Slug = row.Slug, Version = version, Deed = deed, At = row.SavedAt, By = by, Before = before });
    }

    private static async Task ForgetOldHistoryAsync(BarshowDb db, string slug)
    {
        var kept = await HistoryOf(db, slug).OrderByDescending(line => line.Id).Skip(LinesOfHistory).Select(line => (long?)line.Id).FirstOrDefaultAsync();
        if (kept is not null)
            await HistoryOf(db, slug).Where(line => line.Id <= kept).ExecuteDeleteAsync();
    }
}

/// <summary>One line of a thing's history.</summary>
/// <param name="Version">The version that came of it.</param>
/// <param name="Deed">What was done.</param>
/// <param name="At">When.</param>
/// <param name="By">By whom; empty when nobody signed.</param>
/// <param name="Before">The thing as it was before; null when it was new, or binned or restored unchanged.</param>
public sealed record HistoryLine<T>(int Version, Deed Deed, DateTimeOffset At, string By, T? Before)
    where T : class;
