using Barshow.Engine.Findings;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Tests.Measures;

/// <summary>What is to be said of a callout.</summary>
public class CalloutCheckTests
{
    [Fact]
    public void Sides_that_disagree_are_a_stop_with_the_numbers_and_a_pair_that_agrees()
    {
        var finding = Assert.Single(Findings("3/4 oz", "25 ml"));

        Assert.Equal(FindingCatalogue.PairDisagrees, finding.Kind);
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal("¾ oz stands beside 25 ml, 11.1 % more than the 22.5 ml it makes.", Plain(finding.Message));
        Assert.Equal("Say 22.5 ml with ¾ oz.", Plain(finding.Remedy));
    }

    [Fact]
    public void The_millilitres_are_kept_where_other_ounces_agree_with_them()
    {
        var finding = Assert.Single(Findings("7/4 oz", "50 ml"));

        Assert.Equal("1¾ oz stands beside 50 ml, 4.8 % less than the 52.5 ml it makes.", Plain(finding.Message));
        Assert.Equal("Say 52.5 ml with 1¾ oz, or 1⅔ oz with 50 ml.", Plain(finding.Remedy));
    }

    [Fact]
    public void A_gap_just_beyond_the_limit_is_not_printed_as_the_limit()
    {
        var finding = Assert.Single(Findings("2 oz", "6181/100 ml"));

        Assert.Equal("2 oz stands beside 61.81 ml, 3.02 % more than the 60 ml it makes.", Plain(finding.Message));
    }

    [Theory]
    [InlineData("3/4 oz", "22 ml")]
    [InlineData("3/4 oz", null)]
    [InlineData("20 ml", null)]
    [InlineData("5 ml", null)]
    [InlineData("1 tsp", null)]
    [InlineData("8 leaf", null)]
    [InlineData("2 dash", null)]
    [InlineData("top", null)]
    [InlineData("top 75 ml", null)]
    public void A_callout_that_holds_is_passed_in_silence(string measure, string? beside) => Assert.Empty(Findings(measure, beside));

    [Fact]
    public void Ounces_between_the_marks_are_to_be_fixed()
    {
        var finding = Assert.Single(Findings("9/10 oz"));

        Assert.Equal(FindingCatalogue.NotPourable, finding.Kind);
        Assert.Equal("0.9 oz lies between the marks of a jigger, which go in quarters and thirds of an ounce.", Plain(finding.Message));
        Assert.Equal("Pour 1 oz · 30 ml.", Plain(finding.Remedy));
    }

    [Fact]
    public void Millilitres_between_the_marks_are_to_be_fixed()
    {
        var finding = Assert.Single(Findings("23 ml"));

        Assert.Equal("23 ml lies between the marks of a jigger, which go in steps of 2.5 ml.", Plain(finding.Message));
        Assert.Equal("Pour 22.5 ml · ¾ oz.", Plain(finding.Remedy));
    }

    [Theory]
    [InlineData("25 ml", "No quarter or third of an ounce comes within 3 % of 25 ml.", "Pour 22.5 ml · ¾ oz, 11.1 % away, or rescale the drink so that every line can be said in both units.")]
    [InlineData("35 ml", "No quarter or third of an ounce comes within 3 % of 35 ml.", "Pour 37.5 ml · 1¼ oz, 6.7 % away, or rescale the drink so that every line can be said in both units.")]
    public void A_metric_amount_that_no_ounces_say_is_to_be_rescaled(string measure, string message, string remedy)
    {
        var finding = Assert.Single(Findings(measure));

        Assert.Equal(FindingCatalogue.NoAgreeingPair, finding.Kind);
        Assert.Equal(message, Plain(finding.Message));
        Assert.Equal(remedy, Plain(finding.Remedy));
    }

    private static IReadOnlyList<Finding> Findings(string measure, string? beside = null) =>
        CalloutCheck.Findings(Callout.Of(Measure.Parse(measure), Convention.Bar, beside is null ? null : Measure.Parse(beside)), "lime juice");

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
