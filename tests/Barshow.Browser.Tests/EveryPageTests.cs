using Deque.AxeCore.Playwright;

namespace Barshow.Browser.Tests;

[Collection(OneStage.Name)]
public sealed class EveryPageTests(Stage stage)
{
    private const string Episode = "/episodes/nine-drinks-one-bottle-of-white-rum";

    public static TheoryData<string> Pages =>
    [
        "/", "/episodes", "/episodes/new",
        $"{Episode}/plan", $"{Episode}/stock", $"{Episode}/prep", $"{Episode}/shoot", $"{Episode}/publish", "/episodes/six-drinks-one-bottle-of-gin/publish",
        "/drinks", "/drinks/new", "/drinks/late-ferry", "/drinks/irish-coffee", "/ingredients", "/ingredients/honey-syrup", "/ingredients/lime", "/kit", "/featured", "/house",
    ];

    [BrowserTheory]
    [MemberData(nameof(Pages))]
    public async Task Nobody_is_kept_out_by_either_theme(string path)
    {
        foreach (var theme in new[] { "paper", "bench" })
        {
            await using var window = await stage.OpenAsync(theme: theme);
            await window.GoAsync(path);

            var found = await window.Page.RunAxe();

            Assert.True(found.Violations.Length == 0, $"{theme}: {string.Join("; ", found.Violations.Select(violation => $"{violation.Id} at {string.Join(", ", violation.Nodes.Take(3).Select(node => node.Target))}"))}");
            Assert.Empty(window.Troubles);
        }
    }

    [BrowserTheory]
    [MemberData(nameof(Pages))]
    public async Task Nothing_is_wider_than_the_window(string path)
    {
        foreach (var width in new[] { 1440, 820, 390, 360 })
        {
            await using var window = await stage.OpenAsync(width, 900);
            await window.GoAsync(path);

            Assert.True(await window.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") <= width, $"{path} is wider than {width} px");
        }
    }

    [BrowserFact]
    public async Task The_first_stop_of_the_keyboard_is_seen()
    {
        await using var window = await stage.OpenAsync();
        await window.GoAsync("/episodes");

        await window.Page.Keyboard.PressAsync("Tab");

        var outline = await window.Page.EvaluateAsync<string>("() => getComputedStyle(document.activeElement).outlineStyle");
        Assert.NotEqual("none", outline);
    }
}
