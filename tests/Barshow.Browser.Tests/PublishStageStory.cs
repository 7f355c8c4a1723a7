using System.IO.Compression;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

/// <summary>From the film's address to a recorded version and the whole package, by hand.</summary>
[Collection(OneStage.Name)]
public sealed class PublishStageStory(Stage stage)
{
    private const string Filmed = "/episodes/six-drinks-one-bottle-of-gin/publish";

    [BrowserFact]
    public async Task The_description_follows_the_template_as_it_is_edited_and_undo_takes_it_back()
    {
        await using var window = await stage.OpenAsync();
        var page = window.Page;
        await window.GoAsync(Filmed);
        var text = page.GetByRole(AriaRole.Region, new() { Name = "Text of the description" });

        await page.GetByRole(AriaRole.Button, new() { Name = "Edit template" }).ClickAsync();
        var words = page.GetByLabel("Last words of every description");
        await words.FillAsync("See you at the Salt Lane bar.");
        await words.BlurAsync();
        await Assertions.Expect(text).ToContainTextAsync("See you at the Salt Lane bar.");

        var template = page.Locator("section", new() { Has = page.GetByRole(AriaRole.Heading, new() { Name = "Template" }) });
        await template.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(text).Not.ToContainTextAsync("See you at the Salt Lane bar.");
        Assert.Empty(window.Troubles);
    }

    [BrowserFact]
    public async Task A_version_is_recorded_once_its_stops_are_settled_and_kept_as_it_was()
    {
        // A server of its own: what is settled here would change what the other stories find.
        await using var server = await Server.StartAsync();
        await using var window = await stage.OpenAsync(address: server.Address);
        var page = window.Page;
        await window.GoAsync(Filmed);

        // The demo's film says two amounts wrong.
        var record = page.GetByRole(AriaRole.Button, new() { Name = "Record as published" });
        var accept = page.GetByRole(AriaRole.Button, new() { Name = "Accept, to the pick-up list" });
        await Assertions.Expect(accept).ToHaveCountAsync(2);
        await Assertions.Expect(record).ToBeDisabledAsync();
        await accept.First.ClickAsync();
        await Assertions.Expect(accept).ToHaveCountAsync(1);
        await Assertions.Expect(record).ToBeDisabledAsync();
        await accept.First.ClickAsync();
        await Assertions.Expect(accept).ToHaveCountAsync(0);

        await record.ClickAsync();
        await Assertions.Expect(page.GetByText("Version 1 is recorded.", new() { Exact = false })).ToBeVisibleAsync();
        await page.GetByText("Version 1", new() { Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Region, new() { Name = "Description of version 1" })).ToContainTextAsync("John Collins");

        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).First.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Record as published" })).ToBeVisibleAsync();
        Assert.Empty(window.Troubles);
    }

    [BrowserFact]
    public async Task The_package_is_made_with_its_progress_shown_and_downloaded()
    {
        await using var window = await stage.OpenAsync();
        var page = window.Page;
        await window.GoAsync(Filmed);

        var download = await page.RunAndWaitForDownloadAsync(
            () => page.GetByRole(AriaRole.Button, new() { Name = "Make and download the package" }).ClickAsync(),
            new() { Timeout = 180_000 });

        Assert.Equal("six-drinks-one-bottle-of-gin.zip", download.SuggestedFilename);
        using var zip = ZipFile.OpenRead(await download.PathAsync());
        var names = zip.Entries.Select(entry => entry.FullName).ToHashSet();
        Assert.Superset(new HashSet<string> { "description.txt", "chapters.vtt", "call-sheet.ics", "call-sheet.pdf", "mise.pdf", "site/index.html", "cards/cues.csv", "findings.json" }, names);
        await Assertions.Expect(page.GetByText(new Regex(@"^\d+ files made, [\d,]+ kB\.$"))).ToBeVisibleAsync();
        Assert.Empty(window.Troubles);
    }
}
