using System.Globalization;
using Barshow.Data.Opening;
using Barshow.Data.Tests.Support;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Barshow.Data.Tests;

public sealed class OpeningTests
{
    [Theory]
    [InlineData("journal_mode", "wal")]
    [InlineData("synchronous", "2")] // FULL
    [InlineData("foreign_keys", "1")]
    [InlineData("busy_timeout", "10000")]
    public async Task Every_connection_is_set_so_that_an_acknowledged_save_stays(string pragma, string expected)
    {
        await using var house = await TestHouse.OpenAsync();
        for (var connection = 0; connection < 3; connection++)
        {
            await using var db = await house.OpenDbAsync();
            await db.Database.OpenConnectionAsync();
            await using var command = db.Database.GetDbConnection().CreateCommand();
            command.CommandText = $"PRAGMA {pragma}";

            Assert.Equal(expected, Convert.ToString(await command.ExecuteScalarAsync(), CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public async Task A_new_database_needs_no_backup()
    {
        await using var house = await TestHouse.OpenAsync();

        Assert.False(Directory.Exists(house.Folder.Backups));
    }

    [Fact]
    public async Task The_migrations_are_up_to_date_with_the_model()
    {
        await using var house = await TestHouse.OpenAsync();
        await using var db = await house.OpenDbAsync();

        Assert.False(db.Database.HasPendingModelChanges());
    }

    [Fact]
    public async Task A_database_of_a_newer_version_is_left_alone_with_a_sentence()
    {
        await using var house = await TestHouse.OpenAsync();
        await using (var db = await house.OpenDbAsync())
            await db.Database.ExecuteSqlAsync($"INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_FromTheFuture', '99.0')");

        var problem = await Assert.ThrowsAsync<DatabaseUnusableException>(() => house.Get<DatabaseOpener>().OpenAsync());

        Assert.Equal($"The database in {house.Folder.Path} was made by a newer Barshow (it has \"29990101000000_FromTheFuture\"). Use that version, or choose another data folder.", problem.Message);
    }

    [Fact]
    public async Task An_older_database_is_backed_up_and_brought_up_to_date_with_everything_in_it()
    {
        var folder = TestHouse.NewFolder();
        Directory.CreateDirectory(folder);
        var file = Path.Combine(folder, "barshow.db");
        // A database as the first version of the program left it.
        await using (var db = new BarshowDb((DbContextOptions<BarshowDb>)new DbContextOptionsBuilder<BarshowDb>().UseBarshowSqlite($"Data Source={file}").Options))
        {
            await db.GetService<IMigrator>().MigrateAsync("Start");
            await db.Database.ExecuteSqlAsync($$"""
                INSERT INTO Drinks (Folded, Family, Glass, Parent, Tags, Ingredients, Slug, Version, SavedAt, SavedBy, Name, Document)
                VALUES ('low tide', '', '', '', '[]', '[]', 'low-tide', 3, '2027-01-01T00:00:00.0000000Z', 'Noor', 'Low Tide', '{"slug":"low-tide","name":"Low Tide"}')
                """);
        }

        await using var house = await TestHouse.OpenAsync(folder);

        var drink = Assert.Single(await house.Drinks.ListAsync());
        Assert.Equal(("Low Tide", 3, "Noor"), (drink.Name, drink.Version, drink.SavedBy));
        var backup = Assert.Single(house.Get<Backup.HouseBackup>().List());
        Assert.Equal("before-upgrade-20270306-100000.db", backup.Name);
        using var old = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={backup.Path};Pooling=False");
        old.Open();
        using var command = old.CreateCommand();
        command.CommandText = "SELECT count(*) FROM Drinks WHERE Tags = '[]'";
        Assert.Equal(1L, command.ExecuteScalar());
    }

    [Fact]
    public async Task Every_migration_is_done_in_one_transaction_so_that_a_crash_leaves_none_half_done()
    {
        await using var house = await TestHouse.OpenAsync();
        await using var db = await house.OpenDbAsync();
        var generator = db.GetService<IMigrationsSqlGenerator>();
        var assembly = db.GetService<IMigrationsAssembly>();

        foreach (var (name, type) in assembly.Migrations)
        {
            var migration = assembly.CreateMigration(type, db.Database.ProviderName!);
            Assert.All(generator.Generate(migration.UpOperations, migration.TargetModel), command => Assert.False(command.TransactionSuppressed, name));
        }
    }

    [Fact]
    public async Task A_database_that_is_up_to_date_is_not_backed_up_again()
    {
        await using var house = await TestHouse.OpenAsync();

        Assert.Null(await house.Get<DatabaseOpener>().OpenAsync());
    }

    [Theory]
    [InlineData("/given", "/from/environment", "/given")]
    [InlineData(null, "/from/environment", "/from/environment")]
    [InlineData("", "/from/environment", "/from/environment")]
    public void The_folder_is_the_given_one_else_the_one_the_environment_names(string? given, string? variable, string expected) =>
        Assert.Equal(Path.GetFullPath(expected), DataFolder.Resolve(given, variable).Path);

    [Fact]
    public void Without_either_the_folder_is_the_users_own()
    {
        var folder = DataFolder.Resolve(null, null);

        Assert.StartsWith(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), folder.Path, StringComparison.Ordinal);
        Assert.EndsWith("Barshow", folder.Path, StringComparison.Ordinal);
    }
}

public sealed class DatabasesThatCannotBeUsedTests
{
    [Fact]
    public async Task A_file_that_is_no_database_stops_the_start_with_a_sentence()
    {
        var folder = TestHouse.NewFolder();
        Directory.CreateDirectory(folder);
        var file = Path.Combine(folder, "barshow.db");
        await File.WriteAllTextAsync(file, new string('x', 5000));

        var problem = await Assert.ThrowsAsync<DatabaseUnusableException>(() => TestHouse.OpenAsync(folder));

        Assert.Equal($"The database {file} cannot be opened (it is no database). Move it away and restore a backup, or choose another data folder.", problem.Message);
        Assert.Equal(5000, new FileInfo(file).Length);
    }

    [Fact]
    public async Task A_folder_that_is_a_file_stops_the_start_with_a_sentence()
    {
        var folder = Path.GetTempFileName();

        var problem = await Assert.ThrowsAsync<DatabaseUnusableException>(() => TestHouse.OpenAsync(folder));

        Assert.StartsWith($"The data folder {folder} cannot be used (", problem.Message, StringComparison.Ordinal);
        File.Delete(folder);
    }
}
