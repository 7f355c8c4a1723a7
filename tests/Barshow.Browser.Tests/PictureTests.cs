using Microsoft.Playwright;

namespace Barshow.Browser.Tests;

/// <summary>Takes the pictures of README; runs only when <c>BARSHOW_PICTURES</c> names a folder to write them to.</summary>
[Collection(OneStage.Name)]
public sealed class PictureTests(Stage stage)
{
    private const string Rum = "episodes/nine-drinks-one-bottle-of-white-rum";

    private const string Gin = "episodes/six-drinks-one-bottle-of-gin";

    private static readonly (string Name, string Path, int[] Widths)[] Shots =
    [
        ("home", "", [1440]), ("plan", Rum + "/plan", [1440, 820, 390]), ("stock", Rum + "/stock", [1440]), ("prep", Rum + "/prep", [1440, 390]), ("shoot", Rum + "/shoot", [1440, 390]),
        ("publish", Gin + "/publish", [1440]), ("drink", "drinks/late-ferry", [1440]),
    ];

    [PictureFact]
    public async Task Pictures_of_the_app_as_it_is()
    {
        var folder = Environment.GetEnvironmentVariable(PictureFactAttribute.Variable)!;
        Directory.CreateDirectory(folder);
        await using (var day = await stage.OpenAsync())
        {
            await day.GoAsync("/" + Rum + "/prep");
            await Assertions.Expect(day.Page.GetByRole(AriaRole.Checkbox).First).ToBeVisibleAsync(new() { Timeout = 120_000 });
        }

        foreach (var (name, path, widths) in Shots)
        {
            foreach (var width in widths)
            {
                await using var open = await stage.OpenAsync(width, width < 500 ? 844 : 900);
                await open.GoAsync("/" + path);
                await open.Page.WaitForTimeoutAsync(1200);
                await open.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, FormattableString.Invariant($"{name}-{width}.png")), FullPage = name is "home" or "plan" or "shoot" });
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
