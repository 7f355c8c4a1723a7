using Barshow.Engine.Measures;

namespace Barshow.Engine.Tests.Measures;

/// <summary>A measure shown and said in both units.</summary>
public class CalloutTests
{
    [Theory]
    [InlineData("3/2 oz", "1½ oz · 45 ml", "one and a half ounces, forty-five mil", "1 1/2 oz / 45 ml")]
    [InlineData("3/4 oz", "¾ oz · 22.5 ml", "three quarters of an ounce, twenty-two and a half mil", "3/4 oz / 22.5 ml")]
    [InlineData("1/2 oz", "½ oz · 15 ml", "half an ounce, fifteen mil", "1/2 oz / 15 ml")]
    [InlineData("1 oz", "1 oz · 30 ml", "one ounce, thirty mil", "1 oz / 30 ml")]
    [InlineData("20 ml", "⅔ oz · 20 ml", "two thirds of an ounce, twenty mil", "2/3 oz / 20 ml")]
    [InlineData("6 cl", "2 oz · 60 ml", "two ounces, sixty mil", "2 oz / 60 ml")]
    [InlineData("1..2 oz", "1–2 oz · 30–60 ml", "one to two ounces, thirty to sixty mil", "1 to 2 oz / 30 to 60 ml")]
    [InlineData("1 tsp", "1 tsp · 5 ml", "one teaspoon, five mil", "1 tsp / 5 ml")]
    [InlineData("5 ml", "1 tsp · 5 ml", "one teaspoon, five mil", "1 tsp / 5 ml")]
    [InlineData("25 ml", "0.83 oz · 25 ml", "zero point eight three ounces, twenty-five mil", "0.83 oz / 25 ml")]
    [InlineData("top 75 ml", "top with 2½ oz · 75 ml", "top with two and a half ounces, seventy-five mil", "top with 2 1/2 oz / 75 ml")]
    public void A_volume_is_shown_and_said_in_both_units(string measure, string shown, string said, string plain)
    {
        var callout = Callout.Of(Measure.Parse(measure), Convention.Bar);

        Assert.Equal(shown, callout.Show().Replace('\u00A0', ' '));
        Assert.Equal(said, callout.Say());
        Assert.Equal(plain, callout.Plain());
    }

    [Theory]
    [InlineData("8 leaf", "8 leaves", "eight leaves")]
    [InlineData("6..8 leaf", "6–8 leaves", "six to eight leaves")]
    [InlineData("2 dash", "2 dashes", "two dashes")]
    [InlineData("1 barspoon", "1 barspoon", "one barspoon")]
    [InlineData("1/2", "½", "half")]
    [InlineData("top", "top", "top")]
    [InlineData("to-taste", "to taste", "to taste")]
    public void A_count_a_dash_and_an_open_measure_are_shown_as_themselves(string measure, string shown, string said)
    {
        var callout = Callout.Of(Measure.Parse(measure), Convention.Bar);

        Assert.False(callout.HasBothUnits);
        Assert.Equal(shown, callout.Show().Replace('\u00A0', ' '));
        Assert.Equal(said, callout.Say());
    }

    [Fact]
    public void Millilitres_come_first_where_the_house_wants_them_so() =>
        Assert.Equal("45\u00A0ml\u00A0·\u00A01½\u00A0oz", Callout.Of(Measure.Ounces(3, 2), Convention.Bar).Show(ouncesFirst: false));

    [Fact]
    public void Nothing_in_a_shown_callout_can_break_over_two_lines() =>
        Assert.DoesNotContain(' ', Callout.Of(Measure.Parse("top 75 ml"), Convention.Bar).Show());

    [Theory]
    [InlineData("3/2 oz", Convention.UsExact, "1½ oz · 45 ml")]
    [InlineData("3/4 oz", Convention.ImperialExact, "¾ oz · 21 ml")]
    [InlineData("2 oz", Convention.ImperialExact, "2 oz · 57 ml")]
    [InlineData("50 ml", Convention.ImperialExact, "1¾ oz · 50 ml")]
    public void The_convention_decides_what_an_ounce_holds(string measure, Convention convention, string shown) =>
        Assert.Equal(shown, Callout.Of(Measure.Parse(measure), convention).Show().Replace('\u00A0', ' '));

    // The three pairs of the design: 22 ml with ¾ oz agrees (2.2 %), 25 ml with ¾ oz does not (11.1 %), 50 ml with 1¾ oz does not (4.8 %).
    [Theory]
    [InlineData("3/4 oz", "22 ml", true)]
    [InlineData("3/4 oz", "25 ml", false)]
    [InlineData("7/4 oz", "50 ml", false)]
    [InlineData("1 oz", "30.9 ml", true)]
    [InlineData("1 oz", "30.91 ml", false)]
    [InlineData("1 oz", "29.1 ml", true)]
    [InlineData("1 oz", "29.09 ml", false)]
    public void Two_sides_agree_up_to_three_percent_of_the_ounces(string ounces, string millilitres, bool agrees)
    {
        var beside = Barshow.Engine.Measures.Reading.LineReader.Read($"{millilitres} gin").Measure;

        Assert.Equal(agrees, Callout.Of(Measure.Parse(ounces), Convention.Bar, beside).Agrees);
        Assert.Equal(agrees, Callout.Of(beside!, Convention.Bar, Measure.Parse(ounces)).Agrees);
    }

    [Theory]
    [InlineData("3/4 oz", true)]
    [InlineData("2/3 oz", true)]
    [InlineData("1/8 oz", false)]
    [InlineData("9/10 oz", false)]
    [InlineData("45/2 ml", true)]
    [InlineData("20 ml", true)]
    [InlineData("22 ml", false)]
    [InlineData("5 ml", true)]
    public void The_grid_is_quarters_and_thirds_of_an_ounce_and_steps_of_two_and_a_half_millilitres(string measure, bool isPourable)
    {
        var callout = Callout.Of(Measure.Parse(measure), Convention.Bar);

        Assert.Equal(isPourable, callout.Measure.Unit == Unit.Ounce ? callout.OuncesPourable : callout.MillilitresPourable);
    }

    [Fact]
    public void Single_millilitres_can_be_poured_where_a_jigger_shows_them()
    {
        var fine = PourableGrid.For(Convention.Bar, jiggerShowsMillilitres: true);

        Assert.True(Callout.Of(Measure.Millilitres(22), Convention.Bar, grid: fine).MillilitresPourable);
        Assert.False(Callout.Of(Measure.Millilitres(22), Convention.Bar).MillilitresPourable);
        Assert.True(Callout.Of(Measure.Millilitres(22), Convention.ImperialExact).MillilitresPourable);
    }
}
