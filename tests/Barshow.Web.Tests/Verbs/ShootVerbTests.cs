using System.Text.Json;

namespace Barshow.Web.Tests.Verbs;

public sealed class ShootVerbTests : IDisposable
{
    private readonly Executable _barshow = new();

    public void Dispose() => _barshow.Dispose();

    [Fact]
    public void Shoot_prints_both_orders_with_what_is_proven()
    {
        var slug = AnEpisode();

        var outcome = _barshow.Run(null, "shoot", "--episode", slug, "--json");

        Assert.Empty(outcome.Errors);
        using var json = JsonDocument.Parse(outcome.Output);
        var blocks = json.RootElement.GetProperty("shoot_order").EnumerateArray().ToList();
        Assert.Equal("Introduction", blocks[0].GetProperty("block").GetString());
        Assert.All(blocks, block => Assert.True(string.CompareOrdinal(block.GetProperty("start").GetString(), block.GetProperty("end").GetString()) < 0));
        var filmed = blocks.Where(block => block.TryGetProperty("drink", out _)).Select(block => block.GetProperty("drink").GetString()).Distinct().Order();
        Assert.Equal(filmed, json.RootElement.GetProperty("viewer_order").EnumerateArray().Select(drink => drink.GetString()).Order());
        Assert.All(json.RootElement.GetProperty("levels").EnumerateArray(), level => Assert.True(level.GetProperty("proven").GetBoolean()));
        Assert.Equal(JsonValueKind.Array, json.RootElement.GetProperty("relax").ValueKind);
    }

    [Fact]
    public void Mise_prints_every_task_with_its_hours()
    {
        var outcome = _barshow.Run(null, "mise", "--episode", AnEpisode(), "--json");

        Assert.Empty(outcome.Errors);
        using var json = JsonDocument.Parse(outcome.Output);
        var tasks = json.RootElement.EnumerateArray().ToList();
        Assert.Contains(tasks, task => task.GetProperty("task").GetString() == "Press lime juice and strain it." && task.GetProperty("amount").GetString()!.Contains("ml", StringComparison.Ordinal));
        string[] keys = ["task", "start", "end", "hands", "amount", "not_before", "not_after", "for"];
        Assert.All(tasks, task => Assert.Equal(keys, task.EnumerateObject().Select(property => property.Name)));
    }

    [Fact]
    public void An_episode_that_is_not_kept_is_one_clear_sentence()
    {
        var outcome = _barshow.Run(null, "shoot", "--episode", "nowhere", "--json");

        Assert.Equal(1, outcome.ExitCode);
        Assert.Equal("barshow: no episode is kept under the name \"nowhere\".", outcome.Errors.Trim());
    }

    // Packaging a brief keeps it as an episode.
    private string AnEpisode()
    {
        File.WriteAllText(_barshow.At("brief.txt"), """
            Three drinks for a short evening
            Bottle: white rum, 700 ml, 40%
            Shoot: 2027-03-06, call 10:00

            Lantern Sour
            2 oz white rum
            3/4 oz lime juice, freshly pressed
            1/2 oz 1:1 syrup
            Shaken, coupe, lime wheel

            Lantern Long
            1 1/2 oz white rum
            1/2 oz lime juice
            Top with 3 oz ginger beer
            Built, highball, lime wedge

            Lantern Up
            2 oz white rum
            1 oz dry vermouth
            Stirred, coupe
            """);
        Assert.NotEqual(1, _barshow.Run(null, "package", _barshow.At("brief.txt"), "--out", _barshow.At("out")).ExitCode);
        return "three-drinks-for-a-short-evening";
    }
}
