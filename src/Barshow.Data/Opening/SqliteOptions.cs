using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Opening;

/// <summary>How Barshow uses SQLite.</summary>
public static class SqliteOptions
{
    private const string Migrations = "Barshow.Migrations.Sqlite";
    private static readonly DurableConnections Durable = new();

    /// <summary>SQLite with Barshow's migrations, and every connection set so that an acknowledged save is on the disk.</summary>
    public static DbContextOptionsBuilder UseBarshowSqlite(this DbContextOptionsBuilder options, string connectionString)
    {
        ArgumentNullException.ThrowIfNull(options);
        return options.UseSqlite(connectionString, sqlite => sqlite.MigrationsAssembly(Migrations)).AddInterceptors(Durable);
    }

    /// <summary>The connection string of a database file.</summary>
    public static string ConnectionString(string file) => new SqliteConnectionStringBuilder { DataSource = file, ForeignKeys = true }.ConnectionString;
}
