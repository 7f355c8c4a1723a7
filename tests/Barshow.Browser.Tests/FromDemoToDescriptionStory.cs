using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

[Collection(OneStage.Name)]
public sealed class FromDemoToDescriptionStory(Stage stage)
{
    [BrowserFact]
    public async Task A_newcomer_opens_the_demo_episode_sees_its_mise_list_and_copies_its_description()
    {
        await using var window = await stage.OpenAsync();
        var page = window.Page;
        await window.GoAsync("/");
        await page.GetByRole(AriaRole.Link, new() { Name = "Episodes" }).First.ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("Nine drinks, one bottle of white rum") }).First.ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Nine drinks, one bottle of white rum");

        await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^Prep") }).ClickAsync();
        await Assertions.Expect(page.GetByText("Make mint syrup, blanched").First).ToBeVisibleAsync(new() { Timeout = 120_000 });
        await Assertions.Expect(page.GetByText(new Regex("Press .*lime", RegexOptions.IgnoreCase)).First).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^Publish") }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy description" }).ClickAsync();
        await Assertions.Expect(page.GetByText(new Regex("Copied", RegexOptions.IgnoreCase)).First).ToBeVisibleAsync();
        var copied = await page.EvaluateAsync<string>("() => navigator.clipboard.readText()");
        Assert.Contains("2 oz · 60 ml white rum", copied, StringComparison.Ordinal);
        Assert.Contains("Cautions", copied, StringComparison.Ordinal);
        Assert.Empty(window.Troubles);
    }
}
