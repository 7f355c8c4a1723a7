using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.AsPoured;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>The as-poured logs: what comes in is added, each entry exactly once however often it is handed over, and nothing is ever changed.</summary>
public sealed class BenchLogStore(IDbContextFactory<BarshowDb> contexts, TimeProvider clock)
{
    /// <summary>Raised after entries came in, with the episode they belong to; on a thread of the caller's.</summary>
    public event Action<Slug>? Came;

    /// <summary>The log of an episode, from all devices.</summary>
    public async Task<PouredLog> LoadAsync(Slug episode, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        return await ReadAsync(db, episode, cancel);
    }

    /// <summary>Adds entries; those that are there already are left as they are. All of them come in, or none.</summary>
    /// <returns>The whole log after it.</returns>
    public async Task<PouredLog> AppendAsync(Slug episode, IReadOnlyList<PouredEntry> entries, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(entries);
        PouredLog log;
        await using (var db = await contexts.CreateDbContextAsync(cancel))
        {
            await using var transaction = await db.Database.BeginTransactionAsync(cancel);
            var known = (await db.BenchEntries.AsNoTracking().Where(row => row.Episode == episode.Text).Select(row => new { row.Device, row.Sequence, row.Entry }).ToListAsync(cancel))
                .Select(row => (row.Device, row.Sequence, row.Entry)).ToHashSet();
            foreach (var entry in entries)
            {
                var text = JsonSerializer.Serialize(entry, DomainJson.Compact);
                if (known.Add((entry.Device, entry.Sequence, text)))
                    db.BenchEntries.Add(new() { Episode = episode.Text, Device = entry.Device, Sequence = entry.Sequence, Entry = text, CameAt = clock.GetUtcNow() });
            }

            await db.SaveChangesAsync(cancel);
            log = await ReadAsync(db, episode, cancel);
            await transaction.CommitAsync(cancel);
        }

        Came?.Invoke(episode);
        return log;
    }

    private static async Task<PouredLog> ReadAsync(BarshowDb db, Slug episode, CancellationToken cancel)
    {
        var rows = await db.BenchEntries.AsNoTracking().Where(row => row.Episode == episode.Text).OrderBy(row => row.Id).Select(row => row.Entry).ToListAsync(cancel);
        return PouredLog.Of(rows.Select(text => JsonSerializer.Deserialize<PouredEntry>(text, DomainJson.Compact)!));
    }
}
