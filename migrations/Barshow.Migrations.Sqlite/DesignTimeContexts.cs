using Barshow.Data;
using Barshow.Data.Opening;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Barshow.Migrations.Sqlite;

/// <summary>The context that <c>dotnet ef</c> compares the migrations with.</summary>
public sealed class DesignTimeContexts : IDesignTimeDbContextFactory<BarshowDb>
{
    /// <inheritdoc/>
    public BarshowDb CreateDbContext(string[] args) =>
        new((DbContextOptions<BarshowDb>)new DbContextOptionsBuilder<BarshowDb>().UseBarshowSqlite("Data Source=design-time.db").Options);
}
