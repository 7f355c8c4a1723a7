using System.Text.Json;

namespace Barshow.Web.Tests.Verbs;

/// <summary><c>plan</c> from the command line, on the demo bar.</summary>
public sealed class PlanVerbTests : IDisposable
{
    private readonly Executable _program = new();

    public void Dispose() => _program.Dispose();

    [Fact]
    public void A_plan_is_printed_as_one_JSON_object()
    {
        var outcome = _program.Run(null, "plan", "--episode", "nine-drinks-one-bottle-of-white-rum", "--count", "6", "--must", "Mojito", "--without", "ginger beer,daiquiri", "--max-buy", "9", "--aims", "variety,cost", "--json");

        Assert.Equal(0, outcome.ExitCode);
        using var json = JsonDocument.Parse(outcome.Output);
        var plan = json.RootElement;
        Assert.Equal(["lineup", "levels", "reasons", "replacements", "relax", "seconds_first", "seconds_proof"], plan.EnumerateObject().Select(member => member.Name));
        var lineup = plan.GetProperty("lineup").EnumerateArray().Select(drink => drink.GetString()!).ToList();
        Assert.Equal(6, lineup.Count);
        Assert.Contains("mojito", lineup);
        Assert.DoesNotContain("daiquiri", lineup);
        Assert.DoesNotContain("rum-buck", lineup);
        Assert.Equal(["variety", "cost"], plan.GetProperty("levels").EnumerateArray().Select(level => level.GetProperty("aim").GetString()));
        Assert.All(plan.GetProperty("levels").EnumerateArray(), level => Assert.True(level.GetProperty("proven").GetBoolean()));
        Assert.Equal(lineup, plan.GetProperty("reasons").EnumerateObject().Select(reason => reason.Name));
        Assert.Empty(plan.GetProperty("relax").EnumerateArray());
    }

    [Fact]
    public void What_to_relax_is_named_when_nothing_fits()
    {
        var outcome = _program.Run(null, "plan", "--episode", "nine-drinks-one-bottle-of-white-rum", "--max-buy", "1", "--json");

        using var json = JsonDocument.Parse(outcome.Output);
        Assert.Empty(json.RootElement.GetProperty("lineup").EnumerateArray());
        Assert.Equal(["at most 1 thing to buy"], json.RootElement.GetProperty("relax").EnumerateArray().Select(requirement => requirement.GetString()));
    }

    [Theory]
    [InlineData("barshow: no episode is kept under the name \"moon\".", "--episode", "moon")]
    [InlineData("barshow: there is no aim \"taste\"; there are cost, variety, freshness and effort.", "--episode", "nine-drinks-one-bottle-of-white-rum", "--aims", "taste")]
    [InlineData("barshow: the library has no drink \"moon punch\".", "--episode", "nine-drinks-one-bottle-of-white-rum", "--must", "moon punch")]
    [InlineData("barshow: the house has neither a drink nor an ingredient \"moon dust\".", "--episode", "nine-drinks-one-bottle-of-white-rum", "--without", "moon dust")]
    [InlineData("barshow: --count is 1 or more.", "--episode", "nine-drinks-one-bottle-of-white-rum", "--count", "0")]
    public void A_broken_call_is_refused_in_one_sentence(string sentence, params string[] args)
    {
        var outcome = _program.Run(null, ["plan", .. args]);

        Assert.Equal(1, outcome.ExitCode);
        Assert.Equal(sentence, outcome.Errors.Trim());
        Assert.Empty(outcome.Output);
    }
}
