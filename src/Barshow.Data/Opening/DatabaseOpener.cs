using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Opening;

/// <summary>Makes the database ready when the program starts.</summary>
public sealed class DatabaseOpener(IDbContextFactory<BarshowDb> contexts, TimeProvider clock)
{
    /// <summary>Makes the folder and the database where they are missing, and brings an older database up to date after backing it up.</summary>
    /// <returns>The backup that was made; null when the database was new or up to date.</returns>
    /// <exception cref="NewerDatabaseException">A newer version of the program has changed the database.</exception>
    public async Task<string?> OpenAsync(DataFolder folder, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(folder);
        Directory.CreateDirectory(folder.Path);
        var isNew = !File.Exists(folder.Database);
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var applied = await db.Database.GetAppliedMigrationsAsync(cancel);
        if (applied.Except(db.Database.GetMigrations()).FirstOrDefault() is { } unknown)
            throw new NewerDatabaseException($"The database in {folder.Path} was made by a newer Barshow (it has \"{unknown}\"). Use that version, or choose another data folder.");
        if (!(await db.Database.GetPendingMigrationsAsync(cancel)).Any())
            return null;
        var backup = isNew ? null : BackUp(folder);
        await db.Database.MigrateAsync(cancel);
        return backup;
    }

    private string BackUp(DataFolder folder)
    {
        Directory.CreateDirectory(folder.Backups);
        var file = Path.Combine(folder.Backups, string.Create(CultureInfo.InvariantCulture, $"before-upgrade-{clock.GetUtcNow():yyyyMMdd-HHmmss}.db"));
        using var from = new SqliteConnection(SqliteOptions.ConnectionString(folder.Database));
        using var to = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ConnectionString);
        from.Open();
        to.Open();
        from.BackupDatabase(to);
        return file;
    }
}

/// <summary>A newer version of the program has changed the database. The message is a sentence for the user.</summary>
public sealed class NewerDatabaseException(string message) : Exception(message);
