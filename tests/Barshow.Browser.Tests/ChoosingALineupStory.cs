using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

/// <summary>The demo's third episode, planned from three drinks to an order for the set. On a server of its own, because it changes the episode.</summary>
[Collection(OneStage.Name)]
public sealed class ChoosingALineupStory(Stage stage)
{
    [BrowserFact]
    public async Task The_third_demo_episode_is_chosen_by_the_planner_ordered_and_ticked()
    {
        await using var server = await Server.StartAsync();
        await using var window = await stage.OpenAsync(address: server.Address);
        var page = window.Page;
        await window.GoAsync("/episodes/eight-drinks-one-bottle-of-agave-spirit/plan");
        await page.GetByRole(AriaRole.Button, new() { Name = "Set requirements" }).ClickAsync();

        await page.GetByLabel("Things to buy, at most").FillAsync("1");
        await page.GetByRole(AriaRole.Button, new() { Name = "Choose the lineup" }).ClickAsync();
        await Assertions.Expect(page.GetByText("No lineup keeps every requirement")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(page.GetByText("At most 1 thing to buy")).ToBeVisibleAsync();

        await page.GetByLabel("Things to buy, at most").FillAsync("");
        await page.GetByRole(AriaRole.Button, new() { Name = "Choose the lineup" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make it the lineup" }).ClickAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(page.GetByText("Eight drinks, as the title says")).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText("one bottle, as the title says")).ToBeVisibleAsync();

        await page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^Stock") }).ClickAsync();
        await page.GetByLabel("Lime is in hand").CheckAsync();
        await Assertions.Expect(page.GetByText(new Regex("^1 of \\d+ in hand$"))).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByText(new Regex("kg of ice$"))).ToBeVisibleAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "CSV" }).ClickAsync());
        var order = Path.Combine(server.Folder, "order.csv");
        await download.SaveAsAsync(order);
        Assert.StartsWith("ingredient,buy,packs,need,need_unit", await File.ReadAllTextAsync(order), StringComparison.Ordinal);
        Assert.Empty(window.Troubles);
    }
}
