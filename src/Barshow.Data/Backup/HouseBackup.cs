using System.Globalization;
using Barshow.Data.Opening;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Backup;

/// <summary>Copies the whole database while it is in use, and puts such a copy back.</summary>
public sealed class HouseBackup(IDbContextFactory<BarshowDb> contexts, DataFolder folder, TimeProvider clock)
{
    private const string Unfinished = ".unfinished";

    /// <summary>The backups in the data folder, latest first.</summary>
    public IReadOnlyList<KeptBackup> List() => Directory.Exists(folder.Backups)
        ? [.. new DirectoryInfo(folder.Backups).EnumerateFiles("*.db").OrderByDescending(file => file.LastWriteTimeUtc).ThenByDescending(file => file.Name, StringComparer.Ordinal).Select(file => new KeptBackup(file.FullName, file.LastWriteTimeUtc, file.Length))]
        : [];

    /// <summary>Backs the database up, and opens the backup to see that it is sound.</summary>
    /// <param name="path">Where to; null for a name of its own in the data folder. A file that is there is replaced by the finished backup.</param>
    /// <param name="occasion">The first words of that name.</param>
    /// <param name="cancel">Stops before the copy.</param>
    /// <returns>The full path of the backup.</returns>
    /// <exception cref="DatabaseUnusableException">The copy is not sound, which means that the database is not.</exception>
    public async Task<string> BackUpAsync(string? path = null, string occasion = "backup", CancellationToken cancel = default)
    {
        var full = path is null ? NewName(occasion) : Path.GetFullPath(path);
        if (string.Equals(full, folder.Database, StringComparison.OrdinalIgnoreCase))
            throw new DatabaseUnusableException("A backup cannot take the place of the database it is made of: choose another file.");
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var unfinished = full + Unfinished;
        try
        {
            File.Delete(unfinished);
            await using var db = await contexts.CreateDbContextAsync(cancel);
            await db.Database.OpenConnectionAsync(cancel);
            await using (var to = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = unfinished, Pooling = false }.ConnectionString))
            {
                await to.OpenAsync(cancel);
                ((SqliteConnection)db.Database.GetDbConnection()).BackupDatabase(to);
            }

            if (BackupFile.CheckWhole(unfinished) is { } problem)
                throw new DatabaseUnusableException($"No backup was made. {problem}");
            await OnDiskAsync(unfinished, cancel);
            File.Move(unfinished, full, overwrite: true);
            return full;
        }
        finally
        {
            File.Delete(unfinished);
        }
    }

    /// <summary>Puts a backup in the place of the database, which is kept aside, and brings it up to date if an older version of the program made it.</summary>
    /// <remarks>Others may have the database open meanwhile: they see the old state, then the new one. A crash leaves one of the two.</remarks>
    public async Task<RestoreResult> RestoreAsync(string path, CancellationToken cancel = default)
    {
        if (!File.Exists(path))
            return new(null, $"There is no file {path}.");
        Directory.CreateDirectory(folder.Backups);
        var copy = Path.Combine(folder.Backups, $"{Path.GetRandomFileName()}{Unfinished}");
        try
        {
            // A copy, so that what was looked through is what is restored.
            File.Copy(path, copy);
            await using var db = await contexts.CreateDbContextAsync(cancel);
            if (BackupFile.CheckForeign(copy, db.Database.GetMigrations()) is { } problem)
                return new(null, problem);
            var aside = File.Exists(folder.Database) ? await KeepAsideAsync(cancel) : null;
            await db.Database.OpenConnectionAsync(cancel);
            await using (var from = BackupFile.Open(copy))
                from.BackupDatabase((SqliteConnection)db.Database.GetDbConnection());
            await db.Database.MigrateAsync(CancellationToken.None);
            return new(aside, null);
        }
        finally
        {
            foreach (var left in new[] { copy, copy + "-wal", copy + "-shm", copy + "-journal" })
                File.Delete(left);
        }
    }

    // A database that cannot be copied any more is moved as it lies, its unfinished writes with it.
    private async Task<string> KeepAsideAsync(CancellationToken cancel)
    {
        try
        {
            return await BackUpAsync(occasion: "before-restore", cancel: cancel);
        }
        catch (Exception problem) when (problem is SqliteException or DatabaseUnusableException)
        {
            SqliteConnection.ClearAllPools();
            var aside = NewName("damaged");
            foreach (var part in new[] { "", "-wal", "-shm" }.Where(part => File.Exists(folder.Database + part)))
                File.Move(folder.Database + part, aside + part);
            return aside;
        }
    }

    private string NewName(string occasion)
    {
        var stem = Path.Combine(folder.Backups, string.Create(CultureInfo.InvariantCulture, $"{occasion}-{clock.GetUtcNow():yyyyMMdd-HHmmss}"));
        var free = stem + ".db";
        for (var count = 2; File.Exists(free); count++)
            free = string.Create(CultureInfo.InvariantCulture, $"{stem}-{count}.db");
        return free;
    }

    private static async Task OnDiskAsync(string path, CancellationToken cancel)
    {
        await using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite);
        await file.FlushAsync(cancel);
        file.Flush(flushToDisk: true);
    }
}

/// <summary>A backup in the data folder.</summary>
/// <param name="Path">Its full path.</param>
/// <param name="MadeAt">When it was made.</param>
/// <param name="Bytes">How long it is.</param>
public sealed record KeptBackup(string Path, DateTimeOffset MadeAt, long Bytes)
{
    /// <summary>The name of the file.</summary>
    public string Name => System.IO.Path.GetFileName(Path);
}

/// <summary>How a restore went.</summary>
/// <param name="KeptAside">Where the database that was replaced lies now; null when there was none.</param>
/// <param name="Refusal">Why nothing was restored, a sentence; null when it was.</param>
public sealed record RestoreResult(string? KeptAside, string? Refusal);
