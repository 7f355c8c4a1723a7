using System.IO.Compression;

namespace Barshow.Web.Tests.Verbs;

/// <summary>export, import, backup and restore from the command line: what they do, and one clear sentence where they cannot.</summary>
public sealed class KeepingVerbTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("barshow-verbs").FullName;

    private string Data => Path.Combine(_folder, "data");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task An_archive_goes_in_and_comes_out_and_goes_in_elsewhere()
    {
        var archive = Archive("""[{"slug":"low-tide","name":"Low Tide"}]""");

        var imported = await BarshowProgram.RunAsync("import", archive, "--data", Data);
        Assert.Equal((0, ""), (imported.ExitCode, imported.Errors));
        Assert.Equal(
            "Adds 1, changes 0, leaves 0 as they are, adds 0 to the bin. 0 that the archive does not have stay.\n  adds    drinks      Low Tide\nDone.\n",
            imported.Output.ReplaceLineEndings("\n"));

        var exported = await BarshowProgram.RunAsync("export", File("out.zip"), "--data", Data);
        Assert.Equal((0, $"Everything is in {File("out.zip")}.\n"), (exported.ExitCode, exported.Output.ReplaceLineEndings("\n")));

        var again = await BarshowProgram.RunAsync("import", File("out.zip"), "--data", File("other"));
        Assert.Equal(0, again.ExitCode);
        Assert.Contains("adds    drinks      Low Tide", again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_dry_run_says_and_does_nothing()
    {
        var archive = Archive("""[{"slug":"low-tide","name":"Low Tide"}]""");

        await BarshowProgram.RunAsync("import", archive, "--dry-run", "--data", Data);
        var second = await BarshowProgram.RunAsync("import", archive, "--dry-run", "--data", Data);

        Assert.StartsWith("Adds 1,", second.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Done.", second.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bad_archive_is_refused_with_one_sentence_and_code_1()
    {
        var archive = Archive("""[{"slug":"Low Tide","name":"Low Tide"}]""");

        var ran = await BarshowProgram.RunAsync("import", archive, "--data", Data);

        Assert.Equal(1, ran.ExitCode);
        Assert.Equal($"barshow: {archive} was refused, and nothing was changed. The archive's drinks.json cannot be read at line 1, $[0].slug: \"Low Tide\" is no slug.\n", ran.Errors.ReplaceLineEndings("\n"));
        Assert.Equal("", ran.Output);
    }

    [Fact]
    public async Task A_backup_is_made_and_put_back()
    {
        await BarshowProgram.RunAsync("import", Archive("""[{"slug":"low-tide","name":"Low Tide"}]"""), "--data", Data);

        var backup = await BarshowProgram.RunAsync("backup", File("kept.db"), "--data", Data);
        Assert.Equal((0, $"Backed up to {File("kept.db")}, which was opened and is sound.\n"), (backup.ExitCode, backup.Output.ReplaceLineEndings("\n")));

        var restored = await BarshowProgram.RunAsync("restore", File("kept.db"), "--data", Data);
        Assert.Equal(0, restored.ExitCode);
        Assert.StartsWith($"Restored. The database as it was before lies in {Path.Combine(Data, "backups", "before-restore-")}", restored.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("export")]
    [InlineData("backup")]
    public async Task A_folder_without_a_database_is_not_made_into_one(string verb)
    {
        var ran = await BarshowProgram.RunAsync(verb, File("out"), "--data", Data);

        Assert.Equal((1, $"barshow: There is no database in {Data}. Name its folder with --data.\n"), (ran.ExitCode, ran.Errors.ReplaceLineEndings("\n")));
        Assert.False(Directory.Exists(Data));
    }

    [Fact]
    public async Task A_file_that_is_no_backup_is_not_restored()
    {
        System.IO.File.WriteAllText(File("letter.db"), "Dear reader");

        var ran = await BarshowProgram.RunAsync("restore", File("letter.db"), "--data", Data);

        Assert.Equal((1, "barshow: Nothing was restored. The file is no Barshow backup: it cannot be opened as a database, or is damaged.\n"), (ran.ExitCode, ran.Errors.ReplaceLineEndings("\n")));
    }

    [Fact]
    public async Task An_export_does_not_overwrite_a_file_unasked()
    {
        await BarshowProgram.RunAsync("import", Archive("[]"), "--data", Data);
        System.IO.File.WriteAllText(File("out.zip"), "mine");

        var ran = await BarshowProgram.RunAsync("export", File("out.zip"), "--data", Data);

        Assert.Equal((1, $"barshow: There is a file {File("out.zip")} already: choose another name, or add --overwrite.\n"), (ran.ExitCode, ran.Errors.ReplaceLineEndings("\n")));
        Assert.Equal("mine", System.IO.File.ReadAllText(File("out.zip")));
        Assert.Equal(0, (await BarshowProgram.RunAsync("export", File("out.zip"), "--overwrite", "--data", Data)).ExitCode);
    }

    private string File(string name) => Path.Combine(_folder, name);

    private string Archive(string drinks)
    {
        var path = File("in.zip");
        using var zip = ZipFile.Open(path, ZipArchiveMode.Create);
        Write("manifest.json", """{"format":"barshow-archive","version":1}""");
        Write("drinks.json", drinks);
        return path;

        void Write(string name, string text)
        {
            using var writer = new StreamWriter(zip.CreateEntry(name).Open());
            writer.Write(text);
        }
    }
}
