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

/// <summary>A row at one state: a save changes its version, and a restored backup, which may count over again, its instant.</summary>
internal readonly record struct RowMark(long Id, int Version, DateTimeOffset SavedAt);
