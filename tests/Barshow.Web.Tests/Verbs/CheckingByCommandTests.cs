using System.Text.Json;

namespace Barshow.Web.Tests.Verbs;

public sealed class CheckingByCommandTests : IDisposable
{
    private const string Recipes = """
        {"convention":"bar","drinks":[{"name":"Lantern Sour","aliases":["Lantern"],"lines":[
          {"ingredient":"white rum","ml":60},{"ingredient":"lime juice","ml":22.5},{"ingredient":"mint","count":8,"unit":"leaves"},{"ingredient":"soda water","open":"top"}]}]}
        """;

    private const string Captions = "WEBVTT\n\n00:10.000 --> 00:12.000\nThe Lantern Sour. Six centilitres of white rum, two ounces.\n\n00:12.000 --> 00:14.000\nThree quarters of an ounce of lime, twenty-five mil.\n\n00:14.000 --> 00:16.000\nEight mint leaves, and top it with soda.\n";

    private readonly Executable _barshow = new();

    public void Dispose() => _barshow.Dispose();

    [Fact]
    public void Json_holds_callouts_findings_and_the_checks_not_made()
    {
        var outcome = Run(Captions, Recipes, "--json");

        Assert.Equal(2, outcome.ExitCode);
        using var json = JsonDocument.Parse(outcome.Output);
        var callouts = json.RootElement.GetProperty("callouts").EnumerateArray().ToList();
        Assert.Equal(4, callouts.Count);
        Assert.Equal((10, 60, 2), (callouts[0].GetProperty("time_s").GetDouble(), callouts[0].GetProperty("ml").GetDouble(), callouts[0].GetProperty("oz").GetDouble()));
        Assert.True(callouts[0].GetProperty("agree").GetBoolean());
        Assert.False(callouts[1].GetProperty("agree").GetBoolean());
        Assert.Equal((8, "leaf", "mint"), (callouts[2].GetProperty("count").GetDouble(), callouts[2].GetProperty("unit").GetString(), callouts[2].GetProperty("ingredient").GetString()));
        Assert.Equal(("top", "Lantern Sour"), (callouts[3].GetProperty("unit").GetString(), callouts[3].GetProperty("drink").GetString()));
        foreach (var member in new[] { "text", "retracted", "repeat", "mention" })
            Assert.All(callouts, callout => Assert.True(callout.TryGetProperty(member, out _), member));
        var finding = Assert.Single(json.RootElement.GetProperty("findings").EnumerateArray());
        Assert.Equal(("pair-disagrees", 12.0, "lime juice"), (finding.GetProperty("kind").GetString(), finding.GetProperty("time_s").GetDouble(), finding.GetProperty("ingredient").GetString()));
        Assert.NotEmpty(json.RootElement.GetProperty("not_made").EnumerateArray());
    }

    [Fact]
    public void Without_json_it_prints_a_summary_for_people()
    {
        var outcome = Run(Captions.Replace("twenty-five mil", "twenty-two and a half mil", StringComparison.Ordinal), Recipes);

        Assert.Equal(0, outcome.ExitCode);
        Assert.StartsWith("4 amounts heard, 4 of them poured; 0 to stop for, 0 to fix, 0 to note.", outcome.Output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_barshow.At("data")));
    }

    [Theory]
    [InlineData("{}", "barshow: \"recipes.json\" cannot be used. It holds no list named \"drinks\".")]
    [InlineData("{\"drinks\":[{}]}", "barshow: \"recipes.json\" cannot be used. Drink 1 has no name.")]
    [InlineData("{\"drinks\":[", "barshow: \"recipes.json\" cannot be used. It is no JSON: line 1.")]
    [InlineData("{\"convention\":\"metric\",\"drinks\":[]}", "barshow: \"recipes.json\" cannot be used. There is no convention \"metric\"; there are bar, us-exact and imperial-exact.")]
    public void Recipes_that_cannot_be_used_say_why(string recipes, string sentence)
    {
        var outcome = Run(Captions, recipes);

        Assert.Equal(1, outcome.ExitCode);
        Assert.Equal(sentence, outcome.Errors.Trim());
    }

    [Fact]
    public void A_missing_file_is_named()
    {
        File.WriteAllText(_barshow.At("recipes.json"), Recipes);

        var outcome = _barshow.Run(null, "check", "nowhere.vtt", "--recipes", "recipes.json");

        Assert.Equal((1, "barshow: There is no file \"nowhere.vtt\"."), (outcome.ExitCode, outcome.Errors.Trim()));
    }

    private Outcome Run(string captions, string recipes, params string[] more)
    {
        File.WriteAllText(_barshow.At("captions.vtt"), captions);
        File.WriteAllText(_barshow.At("recipes.json"), recipes);
        return _barshow.Run(null, ["check", "captions.vtt", "--recipes", "recipes.json", .. more]);
    }
}
