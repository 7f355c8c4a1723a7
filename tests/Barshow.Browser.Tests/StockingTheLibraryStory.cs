using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Barshow.Browser.Tests;

/// <summary>A drink is pasted and varied, an ingredient is filled in.</summary>
[Collection(OneStage.Name)]
public sealed class StockingTheLibraryStory(Stage stage)
{
    private const string Page = """
        <!doctype html><html><script type="application/ld+json">{"@context":"https://schema.org","@graph":[{"@type":"Recipe","name":"Harbour Fizz",
        "recipeIngredient":["45 ml gin","20 ml lemon juice","1 oz moon milk"],"recipeInstructions":[{"@type":"HowToStep","text":"Shake with ice for 10 seconds."},{"@type":"HowToStep","text":"Strain into a coupe."}]}]}</script></html>
        """;

    [BrowserFact]
    public async Task A_page_is_pasted_confirmed_line_by_line_made_and_varied()
    {
        await using var window = await OpenAsync("/drinks/new");
        var page = window.Page;

        await page.GetByLabel("Recipe, or the source of a page").FillAsync(Page);
        await Expect(page.GetByText("Read from the page's recipe data.")).ToBeVisibleAsync();
        await Expect(page.Locator("mark")).ToHaveTextAsync("moon milk");
        await page.GetByLabel("Line 4 is").SelectOptionAsync("Note");
        await Expect(page.Locator("mark")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the drink" }).PressAsync("Enter");

        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Harbour Fizz", Level = 1 })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a variation" }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Otherwise than Harbour Fizz" })).ToBeVisibleAsync();
        await page.GetByLabel("Garnish").FillAsync("lemon twist");
        await page.GetByLabel("Garnish").BlurAsync();
        await Expect(page.GetByText("Garnish: lemon twist instead of none.")).ToBeVisibleAsync();
        Assert.Empty(window.Troubles);
    }

    [BrowserFact]
    public async Task An_ingredient_gets_a_stand_in_and_a_name_elsewhere_and_half_a_row_is_not_saved()
    {
        await using var window = await OpenAsync("/ingredients/gin");
        var page = window.Page;

        await page.GetByRole(AriaRole.Button, new() { Name = "Add name" }).PressAsync("Enter");
        await page.GetByLabel("Warning, if it means something else").Last.FillAsync("means a card game there");
        await page.GetByLabel("Warning, if it means something else").Last.BlurAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true })).ToHaveCountAsync(0);
        await page.GetByLabel("Name there").Last.FillAsync("Juniper spirit");
        await page.GetByLabel("Name there").Last.BlurAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Undo", Exact = true })).ToBeVisibleAsync();

        await page.GetByLabel("How it came").SelectOptionAsync("Gift");
        await Expect(page.GetByText("What was not bought needs a disclosure wherever it is shown.")).ToBeVisibleAsync();
        await page.GetByLabel("Disclosure to print and to say").FillAsync("This bottle was given to us.");
        await page.GetByLabel("Disclosure to print and to say").BlurAsync();
        await Expect(page.GetByText("What was not bought needs a disclosure wherever it is shown.")).ToHaveCountAsync(0);

        await page.ReloadAsync();
        await Expect(page.GetByLabel("Name there").Last).ToHaveValueAsync("Juniper spirit");
        await Expect(page.GetByLabel("Disclosure to print and to say")).ToHaveValueAsync("This bottle was given to us.");
        Assert.Empty(window.Troubles);
    }

    [BrowserFact]
    public async Task A_prep_that_would_be_made_of_itself_is_refused_with_the_loop_named()
    {
        await using var window = await OpenAsync("/ingredients/gin");
        var page = window.Page;

        await page.GetByRole(AriaRole.Button, new() { Name = "It is made in the house" }).PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add input" }).PressAsync("Enter");
        await page.GetByLabel("Amount and ingredient").FillAsync("700 ml gin");
        await page.GetByLabel("Amount and ingredient").BlurAsync();

        await Expect(page.GetByText("Not saved: Dry gin cannot be made this way: Dry gin, which needs Dry gin. Take one of them out of the inputs.")).ToBeVisibleAsync();
        Assert.Empty(window.Troubles);
    }

    private async Task<Window> OpenAsync(string path)
    {
        var window = await stage.OpenAsync();
        await window.GoAsync(path);
        // The page shows before the line to the server is up and hears clicks only afterwards.
        await window.Page.WaitForTimeoutAsync(600);
        return window;
    }
}
