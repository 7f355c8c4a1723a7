using Barshow.Engine.Episodes.Claims;
using Barshow.Engine.Planning.Claims;
using Barshow.Engine.Specs;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

public sealed class ClaimTests
{
    [Theory]
    [InlineData("Nine drinks, one bottle", "Drinks 9 \"Nine drinks\"; Bottles 1 \"one bottle\"")]
    [InlineData("One bottle, 9 easy rum cocktails", "Bottles 1 \"One bottle\"; Drinks 9 \"9 easy rum cocktails\"")]
    [InlineData("Five ingredients and a single bottle", "Ingredients 5 \"Five ingredients\"; Bottles 1 \"single bottle\"")]
    [InlineData("Six drinks with three ingredients each", "Drinks 6 \"Six drinks\"; IngredientsEach 3 \"three ingredients\"")]
    [InlineData("Three-ingredient sours", "IngredientsEach 3 \"Three-ingredient\"")]
    [InlineData("All of summer in under ten minutes", "Minutes 10 \"ten minutes\"")]
    [InlineData("White rum at home", "")]
    [InlineData("Class of 1999: drinks", "")]
    [InlineData("", "")]
    [InlineData("Zero drinks", "")]
    public void Countable_promises_are_read_from_the_title(string title, string expected) =>
        Assert.Equal(expected, string.Join("; ", ClaimReader.Read(title).Select(claim => $"{claim.Kind} {claim.Number} \"{claim.Words}\"")));

    [Fact]
    public void A_kept_title_has_nothing_to_say()
    {
        var report = ClaimChecker.Check(Episode(Sour) with { Title = "One drink, one bottle, two ingredients" }, Of());

        Assert.All(report.Checks, check => Assert.True(check.Kept));
        Assert.Empty(report.Findings);
    }

    [Fact]
    public void Too_few_drinks_break_the_title()
    {
        var finding = ClaimChecker.Check(Episode(Sour) with { Title = "Nine drinks" }, Of()).Findings.Single();

        Assert.Equal("The title says \"Nine drinks\": the lineup has 1 drink.", finding.Message);
        Assert.Equal(Findings.Severity.Stop, finding.Severity);
    }

    [Fact]
    public void One_bottle_is_judged_by_the_viewers_budget()
    {
        Spec[] drinks = [.. Enumerable.Range(1, 12).Select(number => Drink($"Drink {number}", ("60 ml", "white-rum")))];

        var finding = ClaimChecker.Check(Episode(drinks) with { Title = "One bottle" }, Of()).Findings.Single();

        Assert.Equal("The title says \"One bottle\": each drink made once pours 720 ml of White rum, and one bottle holds 700 ml, 20 ml too little.", finding.Message);
    }

    [Fact]
    public void Takes_spill_and_rehearsal_break_no_claim()
    {
        Spec[] drinks = [.. Enumerable.Range(1, 11).Select(number => Drink($"Drink {number}", ("60 ml", "white-rum")))];

        Assert.Empty(ClaimChecker.Check(Episode(drinks) with { Title = "One bottle", Takes = 20 }, Of()).Findings);
    }

    [Fact]
    public void Ingredients_are_what_a_viewer_buys()
    {
        var finding = ClaimChecker.Check(Episode(Drink("Long sour", ("60 ml", "white-rum"), ("30 ml", "lime-juice"), ("20 ml", "sugar-syrup"), ("90 ml", "soda-water"))) with { Title = "Two ingredients" }, Of()).Findings.Single();

        Assert.Equal("The title says \"Two ingredients\": a viewer buys 3 things, staples left out.", finding.Message);
    }

    [Fact]
    public void Minutes_cannot_be_checked_before_the_film_exists()
    {
        var episode = Episode(Sour) with { Title = "Under ten minutes" };

        Assert.Equal("The title says \"ten minutes\", which was not checked: the film has no length yet.", ClaimChecker.Check(episode, Of()).Findings.Single().Message);
        Assert.True(ClaimChecker.Check(episode with { FilmLengthSeconds = 600 }, Of()).Checks.Single().Kept);
        Assert.Equal("The title says \"ten minutes\": the film runs 10:01.", ClaimChecker.Check(episode with { FilmLengthSeconds = 601 }, Of()).Findings.Single().Message);
    }
}
