using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

[Collection(OneStage.Name)]
public sealed class FindingDrinksStory(Stage stage)
{
    [BrowserFact]
    public async Task A_drink_is_found_by_a_misspelled_name_and_by_its_strength()
    {
        await using var window = await stage.OpenAsync();
        var page = window.Page;
        await window.GoAsync("/drinks");
        var daiquiri = page.GetByRole(AriaRole.Link, new() { Name = "Daiquiri", Exact = true });

        await page.GetByLabel("Name, with or without accents").FillAsync("dacquiri");
        await Assertions.Expect(daiquiri).ToBeVisibleAsync();

        await page.GetByLabel("Strength to, %").FillAsync("5");
        await page.GetByLabel("Strength to, %").BlurAsync();
        await Assertions.Expect(page.GetByText("No drink fits all of that.")).ToBeVisibleAsync();
        Assert.Empty(window.Troubles);
    }
}
