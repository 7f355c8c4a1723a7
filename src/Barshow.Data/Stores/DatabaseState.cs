using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>Which state the database is in: every save, delete, restore and import adds a line to the history.</summary>
/// <param name="Change">The last line of the history; 0 when there is none.</param>
/// <param name="At">When that was, which tells a restored backup that counts its lines over again from the state before.</param>
internal readonly record struct DatabaseState(long Change, DateTimeOffset At)
{
    public static async Task<DatabaseState> ReadAsync(BarshowDb db, CancellationToken cancel) =>
        await db.Changes.OrderByDescending(line => line.Id).Select(line => new DatabaseState(line.Id, line.At)).FirstOrDefaultAsync(cancel);
}

/// <summary>What changed between a state and now.</summary>
internal sealed class ChangesSince
{
    /// <summary>The most changes that are told one by one.</summary>
    private const int Most = 200;

    private readonly ILookup<string, string> _slugs;

    private ChangesSince(IEnumerable<(string Table, string Slug)> changes) => _slugs = changes.ToLookup(each => each.Table, each => each.Slug);

    /// <summary>The changes; null when they cannot be told, or are too many: then everything is to be read again.</summary>
    public static async Task<ChangesSince?> ReadAsync(BarshowDb db, DatabaseState since, CancellationToken cancel)
    {
        // After a restored backup or much saving the line that the state is known by may be gone or another.
        if (!await db.Changes.AnyAsync(line => line.Id == since.Change && line.At == since.At, cancel))
            return null;
        var changes = await db.Changes.Where(line => line.Id > since.Change).Select(line => new { line.Kind, line.Slug }).Distinct().OrderBy(line => line.Kind).ThenBy(line => line.Slug).Take(Most + 1).ToListAsync(cancel);
        return changes.Count > Most ? null : new(changes.Select(line => (line.Kind, line.Slug)));
    }

    /// <summary>Whether anything in a table changed.</summary>
    public bool Touches(string table) => _slugs.Contains(table);

    /// <summary>The names of what changed in a table.</summary>
    public HashSet<string> In(string table) => [.. _slugs[table]];
}

/// <summary>A row at one state: a save changes its version, and a restored backup, which may count over again, its instant.</summary>
internal readonly record struct RowMark(long Id, int Version, DateTimeOffset SavedAt);
