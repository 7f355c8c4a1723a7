using Barshow.Data.Rows;
using Barshow.Engine.Names;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>A store of things that are kept under a slug.</summary>
/// <typeparam name="TRow">How it is saved.</typeparam>
/// <typeparam name="T">What is saved.</typeparam>
public abstract class SluggedStore<TRow, T>(IDbContextFactory<BarshowDb> contexts, TimeProvider clock) : AggregateStore<TRow, T>(contexts, clock)
    where TRow : Row<T>, new()
    where T : class
{
    /// <summary>The thing of that slug; null when there is none outside the bin.</summary>
    public Task<Stored<T>?> FindAsync(Slug slug, CancellationToken cancel = default) => FindAsync(slug.Text, cancel);

    /// <summary>Puts the thing in the bin.</summary>
    /// <returns>Its row in the bin, to undo by; null when there was none.</returns>
    public Task<long?> DeleteAsync(Slug slug, string deletedBy = "", CancellationToken cancel = default) => DeleteAsync(slug.Text, deletedBy, cancel);

    /// <summary>Who changed it and when, latest first.</summary>
    public Task<IReadOnlyList<HistoryLine<T>>> HistoryAsync(Slug slug, CancellationToken cancel = default) => HistoryAsync(slug.Text, cancel);

    /// <summary>Every thing outside the bin whole, in the order of slugs.</summary>
    public async Task<IReadOnlyList<Stored<T>>> LoadAllAsync(CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        var rows = await db.Set<TRow>().AsNoTracking().Where(row => row.DeletedAt == null).OrderBy(row => row.Slug).ToListAsync(cancel);
        return [.. rows.Select(Read)];
    }

    /// <summary>A slug made of the name that nothing outside the bin has yet: "daiquiri", else "daiquiri-2" and so on.</summary>
    public async Task<Slug> FreeSlugAsync(string name, CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        var wanted = Slug.Of(name);
        var free = wanted;
        for (var count = 2; await db.Set<TRow>().AnyAsync(row => row.Slug == free.Text && row.DeletedAt == null, cancel); count++)
            free = Slug.Of($"{wanted.Text[..Math.Min(wanted.Text.Length, 70)]}-{count}");
        return free;
    }
}
