using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Barshow.Data.Opening;

/// <summary>Sets every connection so that an acknowledged save survives a crash and a loss of power, and writers wait for one another.</summary>
internal sealed class DurableConnections : DbConnectionInterceptor
{
    // Ten seconds are longer than any transaction here, import of a whole archive included.
    internal const string Settings = "PRAGMA busy_timeout=10000; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Set(connection);

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Set(connection);
        return Task.CompletedTask;
    }

    private static void Set(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Settings;
        command.ExecuteNonQuery();
    }
}
