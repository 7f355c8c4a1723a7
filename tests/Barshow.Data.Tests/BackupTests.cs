using Barshow.Data.Backup;
using Barshow.Data.Opening;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Names;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Tests;

public sealed class BackupTests : IAsyncLifetime
{
    private static readonly Slug Sour = Slug.Of("Tide Pool Sour");
    private TestHouse _house = null!;
    private HouseBackup _backup = null!;

    public async Task InitializeAsync()
    {
        _house = await TestHouse.OpenAsync();
        _backup = _house.Get<HouseBackup>();
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "sharp" }, null);
    }

    public async Task DisposeAsync() => await _house.DisposeAsync();

    [Fact]
    public async Task A_backup_is_a_whole_database_of_its_own()
    {
        var path = await _backup.BackUpAsync();

        Assert.Equal(Path.Combine(_house.Folder.Backups, "backup-20270306-100000.db"), path);
        using var connection = new SqliteConnection($"Data Source={path};Mode=ReadOnly;Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT Document FROM Drinks";
        Assert.Contains("\"taste\":\"sharp\"", (string)command.ExecuteScalar()!, StringComparison.Ordinal);
        Assert.Equal([path], _backup.List().Select(kept => kept.Path));
    }

    [Fact]
    public async Task Two_backups_of_one_second_do_not_overwrite_one_another()
    {
        await _backup.BackUpAsync();

        Assert.EndsWith("backup-20270306-100000-2.db", await _backup.BackUpAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_restore_brings_back_what_was_and_keeps_what_is_aside()
    {
        var path = await _backup.BackUpAsync();
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "soft" }, 1);
        await _house.Drinks.SaveAsync(Make.Drink("Low Tide"), null);

        var result = await _backup.RestoreAsync(path);

        Assert.Null(result.Refusal);
        Assert.Equal("sharp", (await _house.Drinks.FindAsync(Sour))!.Value.Taste);
        Assert.Null(await _house.Drinks.FindAsync(Slug.Of("Low Tide")));
        Assert.Equal(Path.Combine(_house.Folder.Backups, "before-restore-20270306-100000.db"), result.KeptAside);
        await _backup.RestoreAsync(result.KeptAside!);
        Assert.NotNull(await _house.Drinks.FindAsync(Slug.Of("Low Tide")));
    }

    [Fact]
    public async Task What_is_restored_still_writes_ahead_and_is_still_there_after_a_restart()
    {
        var path = await _backup.BackUpAsync();
        await _backup.RestoreAsync(path);

        await using var db = await _house.OpenDbAsync();
        Assert.Equal("wal", (await db.Database.SqlQuery<string>($"SELECT journal_mode AS Value FROM pragma_journal_mode").SingleAsync()));
        Assert.Equal("ok", (await db.Database.SqlQuery<string>($"SELECT integrity_check AS Value FROM pragma_integrity_check").SingleAsync()));
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "salty" }, 1);
        await using var again = await TestHouse.OpenAsync(_house.Folder.Path, keepFolder: true);
        Assert.Equal("salty", (await again.Drinks.FindAsync(Sour))!.Value.Taste);
    }

    [Fact]
    public async Task The_bar_in_memory_is_not_mistaken_for_the_restored_one()
    {
        await _house.Ingredients.SaveAsync(Make.Ingredient() with { Class = "first" }, null);
        var path = await _backup.BackUpAsync();
        await _house.Ingredients.SaveAsync(Make.Ingredient() with { Class = "second" }, 1);
        Assert.Equal("second", (await _house.Bar.LoadAsync()).Ingredients.All[0].Class);

        await _backup.RestoreAsync(path);
        _house.Clock.Now = _house.Clock.Now.AddMinutes(1);
        await _house.Ingredients.SaveAsync(Make.Ingredient() with { Class = "third" }, 1);

        Assert.Equal("third", (await _house.Bar.LoadAsync()).Ingredients.All[0].Class);
    }

    [Fact]
    public async Task A_restore_into_an_empty_folder_needs_no_copy_aside()
    {
        var path = await _backup.BackUpAsync();
        await using var other = await TestHouse.OpenAsync();
        SqliteConnection.ClearAllPools();
        foreach (var file in Directory.GetFiles(other.Folder.Path))
            File.Delete(file);

        Assert.Equal(new RestoreResult(null, null), await other.Get<HouseBackup>().RestoreAsync(path));

        Assert.NotNull(await other.Drinks.FindAsync(Sour));
    }

    [Fact]
    public async Task A_database_that_is_broken_beyond_reading_is_moved_aside()
    {
        var path = await _backup.BackUpAsync();
        await using var other = await TestHouse.OpenAsync();
        SqliteConnection.ClearAllPools();
        File.Delete(other.Folder.Database + "-wal");
        await File.WriteAllTextAsync(other.Folder.Database, new string('x', 5000));

        var result = await other.Get<HouseBackup>().RestoreAsync(path);

        Assert.Equal(Path.Combine(other.Folder.Backups, "damaged-20270306-100000.db"), result.KeptAside);
        Assert.Equal(5000, new FileInfo(result.KeptAside!).Length);
        Assert.NotNull(await other.Drinks.FindAsync(Sour));
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_refused() =>
        Assert.Equal("There is no file /nowhere/at-all.db.", (await _backup.RestoreAsync("/nowhere/at-all.db")).Refusal);

    [Fact]
    public async Task A_file_that_is_no_database_is_refused() =>
        await RefusedAsync("The file is no Barshow backup: it cannot be opened as a database, or is damaged.", path => File.WriteAllText(path, "Dear reader, this is no database."));

    [Fact]
    public async Task An_empty_file_is_refused() =>
        await RefusedAsync("The file is no Barshow backup: it has none of its tables.", path => File.WriteAllBytes(path, []));

    [Fact]
    public async Task Another_programs_database_is_refused() =>
        await RefusedAsync("The file is no Barshow backup: it has none of its tables.", path => Execute(path, "CREATE TABLE Cars (Id INTEGER)"));

    [Fact]
    public async Task A_backup_with_something_to_run_in_it_is_refused()
    {
        var path = await _backup.BackUpAsync();
        Execute(path, "CREATE TRIGGER Trap AFTER INSERT ON Drinks BEGIN DELETE FROM Episodes; END");

        Assert.Equal("The file is no Barshow backup: it holds \"Trap\", which Barshow never makes.", (await _backup.RestoreAsync(path)).Refusal);
    }

    [Fact]
    public async Task A_newer_versions_backup_is_refused()
    {
        var path = await _backup.BackUpAsync();
        Execute(path, "INSERT INTO __EFMigrationsHistory VALUES ('29990101000000_FromTheFuture', '99.0')");

        Assert.Equal("A newer Barshow made this backup (it has \"29990101000000_FromTheFuture\"): restore it with that version.", (await _backup.RestoreAsync(path)).Refusal);
    }

    [Fact]
    public async Task A_damaged_backup_is_refused_and_the_database_stays()
    {
        for (var count = 0; count < 200; count++)
            await _house.Drinks.SaveAsync(Make.Drink($"Drink {count}"), null);
        var path = await _backup.BackUpAsync();
        var bytes = await File.ReadAllBytesAsync(path);
        for (var page = 4096 * 8; page + 100 < bytes.Length; page += 4096)
            Array.Fill(bytes, (byte)0xFF, page, 100);
        await File.WriteAllBytesAsync(path, bytes);

        var result = await _backup.RestoreAsync(path);

        Assert.NotNull(result.Refusal);
        Assert.Equal(201, (await _house.Drinks.ListAsync()).Count);
    }

    [Fact]
    public async Task Nothing_unfinished_is_left_lying_about()
    {
        var path = await _backup.BackUpAsync();
        await _backup.RestoreAsync(path);
        await _backup.RestoreAsync("/nowhere/at-all.db");

        Assert.All(Directory.GetFiles(_house.Folder.Backups), file => Assert.EndsWith(".db", file, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_backup_never_overwrites_the_database_it_is_made_of() =>
        Assert.Equal("A backup cannot take the place of the database it is made of: choose another file.",
            (await Assert.ThrowsAsync<DatabaseUnusableException>(() => _backup.BackUpAsync(_house.Folder.Database))).Message);

    private async Task RefusedAsync(string sentence, Action<string> write)
    {
        var path = Path.Combine(_house.Folder.Path, "foreign.db");
        write(path);

        Assert.Equal(sentence, (await _backup.RestoreAsync(path)).Refusal);
        Assert.NotNull(await _house.Drinks.FindAsync(Sour));
    }

    private static void Execute(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
