using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

/// <summary>Takes the pictures of README; runs only when <c>BARSHOW_PICTURES</c> names a folder to write them to.</summary>
[Collection(OneStage.Name)]
public sealed class PictureTests(Stage stage)
{
    private const string Rum = "episodes/nine-drinks-one-bottle-of-white-rum";

    private static readonly (string Name, string Path)[] Shots =
    [
        ("episodes", "episodes"), ("plan", Rum + "/plan"), ("stock", Rum + "/stock"), ("prep", Rum + "/prep"), ("shoot", Rum + "/shoot"), ("publish", "episodes/six-drinks-one-bottle-of-gin/publish"),
        ("drink", "drinks/late-ferry"), ("drinks", "drinks"), ("kit", "kit"), ("featured", "featured"), ("house", "house"), ("new-episode", "episodes/new"),
    ];

    [PictureFact]
    public async Task Pictures_of_every_page_at_three_widths()
    {
        var folder = Environment.GetEnvironmentVariable(PictureFactAttribute.Variable)!;
        Directory.CreateDirectory(folder);
        await using (var day = await stage.OpenAsync())
        {
            await day.GoAsync("/" + Rum + "/prep");
            await Assertions.Expect(day.Page.GetByRole(AriaRole.Checkbox).First).ToBeVisibleAsync(new() { Timeout = 120_000 });
        }

        foreach (var (name, path) in Shots)
        {
            foreach (var width in new[] { 1440, 820, 390 })
            {
                await using var open = await stage.OpenAsync(width, width < 500 ? 844 : 900);
                await open.GoAsync("/" + path);
                await open.Page.WaitForTimeoutAsync(1200);
                await open.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{width}.png"), FullPage = name != "drinks" });
            }
        }

        await using var dark = await stage.OpenAsync(theme: "bench");
        await dark.GoAsync("/" + Rum + "/plan");
        await dark.Page.WaitForTimeoutAsync(1200);
        await dark.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, "plan-dark-1440.png"), FullPage = true });
    }
}

/// <summary>Runs when a folder for pictures is named and there is a browser.</summary>
public sealed class PictureFactAttribute : FactAttribute
{
    public const string Variable = "BARSHOW_PICTURES";

    public PictureFactAttribute() => Skip = Environment.GetEnvironmentVariable(Variable) is null ? $"Set {Variable} to a folder to take the pictures." : Chromium.Path is null ? Chromium.Missing : null;
}
