using Barshow.Data.Backup;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Opening;

/// <summary>Makes the database ready when the program starts.</summary>
public sealed class DatabaseOpener(IDbContextFactory<BarshowDb> contexts, DataFolder folder, HouseBackup backup)
{
    /// <summary>Makes the folder and the database where they are missing, and brings an older database up to date after backing it up.</summary>
    /// <returns>The backup that was made; null when the database was new or up to date.</returns>
    /// <exception cref="DatabaseUnusableException">A newer version of the program has changed the database, or it is damaged, or the folder cannot be written to.</exception>
    public async Task<string?> OpenAsync(CancellationToken cancel = default)
    {
        try
        {
            return await OpenOrThrowAsync(cancel);
        }
        catch (SqliteException problem)
        {
            throw new DatabaseUnusableException($"The database {folder.Database} cannot be opened ({Reason(problem)}). Move it away and restore a backup, or choose another data folder.", problem);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new DatabaseUnusableException($"The data folder {folder.Path} cannot be used ({problem.Message.TrimEnd('.')}). Choose another.", problem);
        }
    }

    private async Task<string?> OpenOrThrowAsync(CancellationToken cancel)
    {
        Directory.CreateDirectory(folder.Path);
        var isNew = !File.Exists(folder.Database);
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var applied = (await db.Database.GetAppliedMigrationsAsync(cancel)).ToList();
        if (applied.Except(db.Database.GetMigrations()).FirstOrDefault() is { } unknown)
            throw new DatabaseUnusableException($"The database in {folder.Path} was made by a newer Barshow (it has \"{unknown}\"). Use that version, or choose another data folder.");
        if (!(await db.Database.GetPendingMigrationsAsync(cancel)).Any())
            return null;
        var copy = isNew ? null : await backup.BackUpAsync(occasion: "before-upgrade", cancel: cancel);
        await db.Database.MigrateAsync(cancel);
        return copy;
    }

    private static string Reason(SqliteException problem) => problem.SqliteErrorCode switch
    {
        26 => "it is no database",
        11 => "it is damaged",
        14 => "it cannot be opened or made",
        8 => "it cannot be written to",
        5 or 6 => "another program holds it",
        13 => "the disk is full",
        _ => problem.Message,
    };
}

/// <summary>The database cannot be used. The message is a sentence for the user.</summary>
public sealed class DatabaseUnusableException(string message, Exception? reason = null) : Exception(message, reason);
