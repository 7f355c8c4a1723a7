using System.IO.Compression;
using System.Net;
using System.Text.RegularExpressions;

namespace Barshow.Web.Tests.Hosting;

/// <summary>Every page answers with its own heading, guarded by its headers, out of the demo bar.</summary>
[Collection("served")]
public partial class AnsweringTests(ServedBar bar)
{
    private const string Demo = "episodes/nine-drinks-one-bottle-of-white-rum";

    [Theory]
    [InlineData("episodes", "<h1>Episodes</h1>")]
    [InlineData("episodes/new", "<h1>New episode</h1>")]
    [InlineData(Demo, "Lineup</h2>")]
    [InlineData(Demo + "/stock", "To order for the set</h2>")]
    [InlineData(Demo + "/prep", "Mise list</h2>")]
    [InlineData(Demo + "/shoot", "Running order</h2>")]
    [InlineData(Demo + "/publish", "Description</h2>")]
    [InlineData("drinks", "<h1>Drinks</h1>")]
    [InlineData("drinks/new", "<h1>New drink</h1>")]
    [InlineData("drinks/daiquiri", "<h1>Daiquiri</h1>")]
    [InlineData("ingredients", "<h1>Ingredients</h1>")]
    [InlineData("ingredients/lime-juice", "<h1>Lime juice</h1>")]
    [InlineData("kit", "<h1>Bar kit</h1>")]
    [InlineData("featured", "<h1>Featured</h1>")]
    [InlineData("house", "<h1>House</h1>")]
    public async Task A_page_answers_with_its_heading(string address, string heading)
    {
        var answer = await bar.CreateClient().GetAsync(address);
        var page = ScopeOfStyles().Replace(await answer.Content.ReadAsStringAsync(), "");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(heading, page, StringComparison.Ordinal);
        Assert.DoesNotContain("This page broke", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nothing-here")]
    [InlineData("episodes/no-such-film")]
    [InlineData("episodes/No Such Slug!")]
    [InlineData(Demo + "/seventh")]
    [InlineData("drinks/no-such-drink")]
    [InlineData("ingredients/no-such-thing")]
    [InlineData("episodes/no-such-film/package.zip")]
    [InlineData("episodes/..%2f..%2fetc/package.zip")]
    public async Task What_is_not_there_is_said_to_be_so(string address)
    {
        var answer = await bar.CreateClient().GetAsync(address);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("There is no such page", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_page_forbids_scripts_from_elsewhere_and_frames()
    {
        var headers = (await bar.CreateClient().GetAsync("episodes")).Headers;

        var policy = string.Join(';', headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(headers.GetValues("X-Content-Type-Options")));
        Assert.False(headers.Contains("Server"));
    }

    [Fact]
    public async Task A_name_of_another_site_that_points_here_is_refused()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "episodes");
        request.Headers.Host = "evil.example";

        Assert.Equal(HttpStatusCode.BadRequest, (await bar.CreateClient().SendAsync(request)).StatusCode);
    }

    [Fact]
    public async Task The_dark_theme_is_drawn_from_its_cookie()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "episodes");
        request.Headers.Add("Cookie", "barshow-theme=bench");

        var page = await (await bar.CreateClient().SendAsync(request)).Content.ReadAsStringAsync();

        Assert.Contains("data-theme=\"bench\"", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_package_of_an_episode_is_a_zip_of_its_files()
    {
        var answer = await bar.CreateClient().GetAsync("episodes/eight-drinks-one-bottle-of-agave-spirit/package.zip");
        await using var stream = await answer.Content.ReadAsStreamAsync();
        using var zip = new ZipArchive(stream);

        var names = zip.Entries.Select(entry => entry.FullName).ToList();
        Assert.Contains("description.txt", names);
        Assert.Contains("call-sheet.html", names);
        Assert.Contains("findings.json", names);
        Assert.Equal(3, names.Count(name => name.StartsWith("recipes/", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task The_archive_of_the_house_can_be_downloaded()
    {
        var answer = await bar.CreateClient().GetAsync("house/archive.zip");
        await using var stream = await answer.Content.ReadAsStreamAsync();
        using var zip = new ZipArchive(stream);

        Assert.Contains("drinks.json", zip.Entries.Select(entry => entry.FullName));
    }

    // The build marks elements with the style sheet that applies to them.
    [GeneratedRegex(" b-[a-z0-9]+(?=[ >])")]
    private static partial Regex ScopeOfStyles();

    [Fact]
    public async Task It_is_well() => Assert.Equal("Healthy", await bar.CreateClient().GetStringAsync("health"));
}
