using Microsoft.Data.Sqlite;

namespace Barshow.Data.Backup;

/// <summary>A file that is said to be a backup: opened and looked through before it is believed.</summary>
internal static class BackupFile
{
    private const string NoBackup = "The file is no Barshow backup: ";

    /// <summary>Whether a copy that was made here is whole. The file must lie where it may be written beside.</summary>
    /// <returns>Why it is not believed, a sentence; null when it is sound.</returns>
    public static string? CheckWhole(string path) => Look(path, Whole);

    /// <summary>Whether a file that came from anywhere is a backup that this version of the program can restore.</summary>
    /// <param name="path">The file, where it may be written beside.</param>
    /// <param name="known">The migrations that this version of the program knows.</param>
    /// <returns>Why it is not believed, a sentence; null when it is sound.</returns>
    public static string? CheckForeign(string path, IEnumerable<string> known) => Look(path, connection => Whole(connection) ?? Ours(connection, known));

    private static string? Look(string path, Func<SqliteConnection, string?> look)
    {
        try
        {
            using var connection = Open(path);
            // What a foreign file defines is never run while it is looked through.
            Ask(connection, "PRAGMA trusted_schema=OFF");
            return look(connection);
        }
        catch (SqliteException)
        {
            return $"{NoBackup}it cannot be opened as a database, or is damaged.";
        }
    }

    private static string? Whole(SqliteConnection connection) =>
        Ask(connection, "PRAGMA integrity_check") is not ["ok"] ? "The backup is damaged: its integrity check finds errors."
        : Ask(connection, "PRAGMA foreign_key_check").Count > 0 ? "The backup is damaged: it refers to rows that are not in it."
        : null;

    private static string? Ours(SqliteConnection connection, IEnumerable<string> known)
    {
        if (Ask(connection, "SELECT name FROM sqlite_schema WHERE type IN ('trigger', 'view') OR sql LIKE 'CREATE VIRTUAL%'") is [var foreign, ..])
            return $"{NoBackup}it holds \"{foreign}\", which Barshow never makes.";
        if (Ask(connection, "SELECT name FROM sqlite_schema WHERE type = 'table' AND name = '__EFMigrationsHistory'").Count == 0)
            return $"{NoBackup}it has none of its tables.";
        if (Ask(connection, "PRAGMA page_size") is not ["4096"])
            return $"{NoBackup}its pages are not of 4096 bytes.";
        var applied = Ask(connection, "SELECT MigrationId FROM __EFMigrationsHistory");
        if (applied.Count == 0)
            return $"{NoBackup}it has none of its tables.";
        return applied.Except(known).FirstOrDefault() is { } unknown
            ? $"A newer Barshow made this backup (it has \"{unknown}\"): restore it with that version."
            : null;
    }

    /// <summary>A connection of its own to a database file.</summary>
    public static SqliteConnection Open(string path)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false, Mode = SqliteOpenMode.ReadWrite }.ConnectionString);
        connection.Open();
        return connection;
    }

    private static List<string> Ask(SqliteConnection connection, string question)
    {
        using var command = connection.CreateCommand();
        command.CommandText = question;
        using var reader = command.ExecuteReader();
        var answers = new List<string>();
        while (reader.Read())
            answers.Add(reader.GetValue(0).ToString() ?? "");
        return answers;
    }
}
