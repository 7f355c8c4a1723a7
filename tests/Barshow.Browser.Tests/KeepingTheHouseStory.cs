using System.IO.Compression;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

/// <summary>Nothing is lost: the bin, the archive, backups, and two who save the same thing. On a server of its own, because it replaces the whole house.</summary>
[Collection(OneStage.Name)]
public sealed class KeepingTheHouseStory(Stage stage)
{
    [BrowserFact]
    public async Task What_was_deleted_is_put_back_from_the_bin()
    {
        await using var server = await Server.StartAsync();
        await using var window = await stage.OpenAsync(address: server.Address);
        var page = window.Page;
        await window.GoAsync("/episodes");
        var episodes = page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Delete ") });
        var first = (await episodes.First.GetAttributeAsync("aria-label"))!["Delete ".Length..];
        await episodes.First.ClickAsync();

        await window.GoAsync("/house");
        await page.GetByRole(AriaRole.Button, new() { Name = $"Put back {first}" }).ClickAsync();
        await Assertions.Expect(page.GetByText($"{first} is back.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("Nothing is in the bin.")).ToBeVisibleAsync();

        await window.GoAsync("/episodes");
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = first })).ToBeVisibleAsync();
        Assert.Empty(window.Troubles);
    }

    [BrowserFact]
    public async Task Everything_goes_out_in_one_file_and_what_a_file_brings_in_is_said_first()
    {
        await using var server = await Server.StartAsync();
        await using var window = await stage.OpenAsync(address: server.Address);
        var page = window.Page;
        await window.GoAsync("/house");
        var archive = Path.Combine(server.Folder, "archive.zip");
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Export everything" }).ClickAsync());
        await download.SaveAsAsync(archive);
        await using (var zip = await ZipFile.OpenReadAsync(archive))
            Assert.Contains("drinks.json", zip.Entries.Select(entry => entry.FullName));

        await page.GetByLabel("Name of the bar or channel").FillAsync("Another bar");
        await page.GetByLabel("Name of the bar or channel").BlurAsync();
        await Assertions.Expect(page.GetByText("version 2")).ToBeVisibleAsync();
        await page.GetByLabel("Import an archive").SetInputFilesAsync(archive);
        await Assertions.Expect(page.GetByText("Adds 0, changes 1,")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Import", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("Done: 0 added, 1 changed.")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByLabel("Name of the bar or channel")).ToHaveValueAsync("Salt Lane Bar");

        await File.WriteAllTextAsync(Path.Combine(server.Folder, "letter.zip"), "Dear reader");
        await page.GetByLabel("Import an archive").SetInputFilesAsync(Path.Combine(server.Folder, "letter.zip"));
        await Assertions.Expect(page.GetByText("The file is no archive, or not all of it: it cannot be unpacked.")).ToBeVisibleAsync();
        Assert.Empty(window.Troubles);
    }

    [BrowserFact]
    public async Task A_backup_is_made_and_put_back_and_what_was_there_is_kept_beside_it()
    {
        await using var server = await Server.StartAsync();
        await using var window = await stage.OpenAsync(address: server.Address);
        var page = window.Page;
        await window.GoAsync("/house");
        await page.GetByRole(AriaRole.Button, new() { Name = "Back up now" }).ClickAsync();
        await Assertions.Expect(page.GetByText("which was opened and is sound.")).ToBeVisibleAsync();
        await page.GetByLabel("Name of the bar or channel").FillAsync("Another bar");
        await page.GetByLabel("Name of the bar or channel").BlurAsync();
        await Assertions.Expect(page.GetByText("version 2")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Button, new() { NameRegex = new Regex("^Restore backup-") }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Put it back" }).ClickAsync();

        await Assertions.Expect(page.GetByText(new Regex("Restored. What was here before is in before-restore-"))).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByLabel("Name of the bar or channel")).ToHaveValueAsync("Salt Lane Bar");
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^before-restore-") })).ToBeVisibleAsync();
        Assert.Empty(window.Troubles);
    }

    [BrowserFact]
    public async Task Two_windows_that_change_one_setting_end_in_a_choice_and_not_in_silence()
    {
        await using var server = await Server.StartAsync();
        await using var one = await stage.OpenAsync(address: server.Address);
        await using var other = await stage.OpenAsync(address: server.Address);
        await one.GoAsync("/house");
        await other.GoAsync("/house");
        await RenameAsync(one.Page, "First name");
        await Assertions.Expect(one.Page.GetByText("version 2")).ToBeVisibleAsync();

        await RenameAsync(other.Page, "Second name");
        await Assertions.Expect(other.Page.GetByRole(AriaRole.Alertdialog)).ToContainTextAsync("Someone else saved this meanwhile");
        await other.Page.GetByRole(AriaRole.Radio, new() { Name = "First name" }).CheckAsync();
        await other.Page.GetByRole(AriaRole.Button, new() { Name = "Save what is chosen" }).ClickAsync();

        await Assertions.Expect(other.Page.GetByRole(AriaRole.Alertdialog)).Not.ToBeVisibleAsync();
        await Assertions.Expect(other.Page.GetByLabel("Name of the bar or channel")).ToHaveValueAsync("First name");
        Assert.Empty(one.Troubles);
        Assert.Empty(other.Troubles);
    }

    private static async Task RenameAsync(IPage page, string name)
    {
        await page.GetByLabel("Name of the bar or channel").FillAsync(name);
        await page.GetByLabel("Name of the bar or channel").BlurAsync();
    }
}
