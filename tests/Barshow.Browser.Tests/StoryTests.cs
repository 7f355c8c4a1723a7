using System.IO.Compression;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Barshow.Browser.Tests;

/// <summary>What a newcomer does with the demo bar, in a real browser on a real server and database.</summary>
[Collection(OneStage.Name)]
public sealed class StoryTests(Stage stage)
{
    // The shoot day is solved before its mise list is there.
    private const float Patience = 120_000;

    [BrowserFact]
    public async Task A_brief_of_ones_own_becomes_an_episode_and_its_package_is_downloaded()
    {
        await using var open = await OpenAsync("episodes/new");
        var page = open.Page;
        var brief = page.GetByLabel("Brief");

        await brief.FillAsync("Two on a bottle of gin\nBottle: gin, 700 ml, 41%\n\nGin Sour\n2 oz gin\ntwelvety ml lemon juice\n3/4 oz 1:1 syrup\nShaken, coupe, lemon twist");
        await Expect(page.GetByText("Line 6:")).ToBeVisibleAsync();
        await brief.FillAsync("Two on a bottle of gin\nBottle: gin, 700 ml, 41%\n\nGin Sour\n2 oz gin\n3/4 oz lemon juice\n3/4 oz 1:1 syrup\nShaken, coupe, lemon twist");
        await Expect(page.GetByText("Line 6:")).ToBeHiddenAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the episode" }).ClickAsync();

        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Two on a bottle of gin", Level = 1 })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Stages" }).GetByRole(AriaRole.Link, new() { Name = "Publish" }).ClickAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Make and download the package" }).ClickAsync(), new() { Timeout = Patience });
        using var zip = await ZipFile.OpenReadAsync(await download.PathAsync());
        Assert.Contains("recipes/gin-sour.json", zip.Entries.Select(entry => entry.FullName));
    }

    [BrowserFact]
    public async Task An_amount_is_changed_for_the_film_with_the_keyboard_alone_and_taken_back()
    {
        await using var open = await OpenAsync("episodes/eight-drinks-one-bottle-of-agave-spirit/plan");
        var page = open.Page;
        var first = page.Locator("button.pick").First;
        await first.FocusAsync();
        if (await first.GetAttributeAsync("aria-expanded") == "false")
            await page.Keyboard.PressAsync("Enter");
        var change = page.GetByRole(AriaRole.Button, new() { Name = "Change the amount of" }).First;
        await Expect(change).ToBeVisibleAsync();

        await change.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        var amount = page.GetByLabel("Amount for this film");
        await amount.FocusAsync();
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("1 1/4 oz");
        await Expect(page.Locator(".heard")).ToContainTextAsync("37.5");
        await page.Keyboard.PressAsync("Enter");

        await Expect(page.GetByText("For this film; before:")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToBeVisibleAsync();
        await page.WaitForTimeoutAsync(600);
        if (await page.Locator("button.pick").First.GetAttributeAsync("aria-expanded") == "false")
            await page.Locator("button.pick").First.ClickAsync();
        await Expect(page.GetByText("For this film; before:")).ToBeVisibleAsync();
    }

    [BrowserFact]
    public async Task Two_windows_that_change_one_drink_end_with_both_sides_shown()
    {
        await using var mine = await OpenAsync("drinks/negroni");
        await using var theirs = await OpenAsync("drinks/negroni");

        await theirs.Page.GetByLabel("Family").FillAsync("bitter and stirred");
        await theirs.Page.GetByLabel("Family").BlurAsync();
        await Expect(theirs.Page.GetByText("version 2")).ToBeVisibleAsync();
        await mine.Page.GetByLabel("Family").FillAsync("aperitif");
        await mine.Page.GetByLabel("Family").BlurAsync();

        await Expect(mine.Page.GetByRole(AriaRole.Heading, new() { Name = "Someone else saved this meanwhile" })).ToBeVisibleAsync();
        await Expect(mine.Page.GetByRole(AriaRole.Alertdialog)).ToContainTextAsync("bitter and stirred");
        await mine.Page.GetByRole(AriaRole.Button, new() { Name = "Save what is chosen" }).ClickAsync();
        await Expect(mine.Page.GetByText("version 3")).ToBeVisibleAsync();
    }

    [BrowserFact]
    public async Task The_theme_is_switched_and_kept()
    {
        await using var open = await OpenAsync("drinks");

        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Dark theme" }).ClickAsync();
        await Expect(open.Page.Locator("html")).ToHaveAttributeAsync("data-theme", "bench");

        await open.GoAsync("/kit");
        await Expect(open.Page.Locator("html")).ToHaveAttributeAsync("data-theme", "bench");
    }

    private async Task<Window> OpenAsync(string path)
    {
        var window = await stage.OpenAsync();
        await window.GoAsync("/" + path);
        // The page shows before the line to the server is up and hears clicks only afterwards.
        await window.Page.WaitForTimeoutAsync(600);
        return window;
    }
}
