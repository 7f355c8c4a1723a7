using System.IO.Compression;
using System.Text;
using System.Text.Json;

namespace Barshow.Browser.Tests;

/// <summary>What is published, read back by programs that are not ours.</summary>
[Collection(OneStage.Name)]
public sealed class ReadByOthersTests(Stage stage)
{
    private const string Filmed = "six-drinks-one-bottle-of-gin";

    [BrowserFact]
    public async Task The_browsers_own_track_reader_finds_every_chapter()
    {
        var track = await FileAsync("chapters.vtt");
        await using var window = await stage.OpenAsync();
        await window.Page.GotoAsync("about:blank");

        var read = await window.Page.EvaluateAsync<string[]>("""
            text => new Promise((done, fail) => {
                const video = document.body.appendChild(document.createElement('video'));
                const track = video.appendChild(document.createElement('track'));
                track.kind = 'chapters';
                track.onload = () => done([...track.track.cues].map(cue => `${cue.startTime} ${cue.endTime} ${cue.text}`));
                track.onerror = () => fail('the track was refused');
                track.src = 'data:text/vtt;base64,' + text;
                track.track.mode = 'hidden';
            })
            """, Convert.ToBase64String(Encoding.UTF8.GetBytes(track)));

        var arrows = track.Split('\n').Count(line => line.Contains("-->", StringComparison.Ordinal));
        Assert.Equal(arrows, read.Length);
        Assert.True(arrows >= 6);
        Assert.StartsWith("0 ", read[0], StringComparison.Ordinal);
        for (var i = 1; i < read.Length; i++)
            Assert.Equal(read[i - 1].Split(' ')[1], read[i].Split(' ')[0]);
    }

    // jsonld.js 9.0.0 (BSD-3-Clause), an implementation of W3C JSON-LD 1.1, expands each recipe; the context is the vocabulary alone, so nothing is fetched.
    [BrowserFact]
    public async Task A_JSON_LD_processor_expands_every_recipe_to_terms_of_the_vocabulary()
    {
        await using var window = await stage.OpenAsync();
        await window.Page.GotoAsync("about:blank");
        await window.Page.AddScriptTagAsync(new() { Path = Path.Combine(AppContext.BaseDirectory, "Outside", "jsonld.min.js") });
        var recipes = (await PackageAsync()).Where(file => file.Key.StartsWith("recipes/", StringComparison.Ordinal)).ToList();

        Assert.Equal(6, recipes.Count);
        foreach (var (name, text) in recipes)
        {
            var expanded = await window.Page.EvaluateAsync<JsonElement>("""
                text => jsonld.expand(JSON.parse(text), { documentLoader: async url => ({ documentUrl: url, document: { '@context': { '@vocab': 'http://schema.org/' } } }) })
                """, text);
            var recipe = expanded[0];
            Assert.Equal("http://schema.org/Recipe", recipe.GetProperty("@type")[0].GetString());
            Assert.NotEmpty(recipe.GetProperty("http://schema.org/name")[0].GetProperty("@value").GetString()!);
            Assert.True(recipe.GetProperty("http://schema.org/recipeIngredient").GetArrayLength() >= 2, name);
            Assert.Equal("http://schema.org/HowToStep", recipe.GetProperty("http://schema.org/recipeInstructions")[0].GetProperty("@type")[0].GetString());
        }
    }

    private async Task<string> FileAsync(string name) => (await PackageAsync())[name];

    private async Task<Dictionary<string, string>> PackageAsync()
    {
        using var client = new HttpClient { Timeout = TimeSpan.FromMinutes(5) };
        await using var bytes = await client.GetStreamAsync($"{stage.Server.Address}/episodes/{Filmed}/package.zip");
        var copy = new MemoryStream();
        await bytes.CopyToAsync(copy);
        using var zip = new ZipArchive(copy);
        return zip.Entries.ToDictionary(entry => entry.FullName, entry =>
        {
            using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
            return reader.ReadToEnd();
        });
    }
}
