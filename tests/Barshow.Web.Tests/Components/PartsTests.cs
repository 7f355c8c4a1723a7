using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Web.Components;
using Bunit;

namespace Barshow.Web.Tests.Components;

/// <summary>What a person sees of our own parts.</summary>
public class PartsTests : BunitContext
{
    private static readonly Finding Overfull = new(FindingCatalogue.WashLineOver, "Late Ferry", "Late Ferry comes to 175 ml, and the coupe holds 165 ml.", "Use the 210 ml coupe.");

    [Theory]
    [InlineData(Severity.Stop, "Stop", 2)]
    [InlineData(Severity.Fix, "Fix", 2)]
    [InlineData(Severity.Note, "Note", 1)]
    public void Severity_is_said_by_word_and_by_the_fill_of_a_small_measure(Severity severity, string word, int shapes)
    {
        var mark = Render<SeverityMark>(parameters => parameters.Add(part => part.Severity, severity).Add(part => part.WithWord, true));

        Assert.Equal(word, mark.Find(".severity").TextContent);
        Assert.Equal(shapes, mark.FindAll("path").Count);
    }

    [Fact]
    public void A_finding_says_what_is_wrong_and_what_mends_it_and_holds_the_button_that_does()
    {
        var pressed = false;
        var box = Render<FindingBox>(parameters => parameters
            .Add(part => part.Finding, Overfull)
            .Add(part => part.ChildContent, builder =>
            {
                builder.OpenElement(0, "button");
                builder.AddAttribute(1, "onclick", Microsoft.AspNetCore.Components.EventCallback.Factory.Create(this, () => pressed = true));
                builder.AddContent(2, "Use the 210 ml coupe");
                builder.CloseElement();
            }));

        Assert.Contains("Fix", box.Markup, StringComparison.Ordinal);
        Assert.Contains("comes to 175 ml", box.Find("p").TextContent, StringComparison.Ordinal);
        Assert.Contains("Use the 210 ml coupe.", box.Find(".remedy").TextContent, StringComparison.Ordinal);
        box.Find("button").Click();
        Assert.True(pressed);
    }

    [Fact]
    public void The_worst_findings_stand_first_and_a_stop_never_folds_away()
    {
        var stop = new Finding(FindingCatalogue.ClaimBroken, "Title", "Nine drinks are promised; the lineup has 8.", "Add one.");
        var notes = Enumerable.Range(1, 5).Select(i => new Finding(FindingCatalogue.ReadingRepaired, $"Line {i}", $"Line {i} was read as ounces.", "Nothing to do."));

        var list = Render<FindingList>(parameters => parameters.Add(part => part.Findings, [.. notes, stop]).Add(part => part.Most, 1));

        Assert.Contains("stop", list.Find(".finding").ClassList);
        Assert.Equal("5 more findings", list.Find("summary").TextContent);
    }

    [Theory]
    [InlineData(UnitOrder.OuncesFirst, "1½ oz·45 ml")]
    [InlineData(UnitOrder.MillilitresFirst, "45 ml·1½ oz")]
    public void A_callout_keeps_the_order_of_the_house(UnitOrder order, string expected)
    {
        var view = Render<CalloutView>(parameters => parameters.Add(part => part.Callout, Callout.Of(Measure.Ounces(3, 2), Convention.Bar)).Add(part => part.Order, order));

        Assert.Equal(expected, view.Find(".callout").TextContent.Replace('\u00A0', ' '));
    }

    [Fact]
    public void A_stacked_callout_is_read_aloud_whole()
    {
        var view = Render<CalloutView>(parameters => parameters.Add(part => part.Callout, Callout.Of(Measure.Ounces(3, 4), Convention.Bar)).Add(part => part.Kind, CalloutKind.Stacked));

        Assert.Equal("three quarters of an ounce, twenty-two and a half mil", view.Find("[role=img]").GetAttribute("aria-label"));
    }

    [Fact]
    public void A_third_is_drawn_but_copied_and_read_as_the_character()
    {
        var view = Render<FractionText>(parameters => parameters.Add(part => part.Text, "⅔ oz"));

        Assert.Equal("⅔", view.Find(".unseen").TextContent);
        Assert.Equal("true", view.Find(".fraction").GetAttribute("aria-hidden"));
        Assert.Equal("2⁄3", view.Find(".fraction").TextContent);
    }

    [Fact]
    public void The_stage_rule_fills_up_to_where_you_are_and_says_what_is_open()
    {
        StageTab[] tabs = [new("Plan", "plan", 4, Severity.Fix), new("Stock", "stock", 0, null), new("Prep", "prep", 1, Severity.Note)];

        var rule = Render<StageRule>(parameters => parameters.Add(part => part.Stages, tabs).Add(part => part.Current, 1));

        Assert.Equal(["Plan"], rule.FindAll("a.filled").Select(link => link.FirstChild!.TextContent.Trim()));
        Assert.Equal("stock", rule.Find("[aria-current=page]").GetAttribute("href"));
        Assert.Contains("4 open findings, worst Fix", rule.Find("a").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_length_meter_turns_when_the_limit_is_passed()
    {
        var under = Render<LengthMeter>(parameters => parameters.Add(part => part.Parts, [new("Recipes", 0, 5000)]).Add(part => part.Used, 5000).Add(part => part.Limit, 5000));
        var over = Render<LengthMeter>(parameters => parameters.Add(part => part.Parts, [new("Recipes", 0, 5001)]).Add(part => part.Used, 5001).Add(part => part.Limit, 5000));

        Assert.DoesNotContain("over", under.Find(".meter").ClassList);
        Assert.Contains("over", over.Find(".meter").ClassList);
    }

    [Theory]
    [InlineData("3/4 oz", "¾ oz·22.5 ml")]
    [InlineData("three quarters of an ounce", "¾ oz·22.5 ml")]
    public void An_amount_is_understood_while_it_is_typed(string typed, string heard)
    {
        var edit = Render<AmountEdit>();

        edit.Find("input").Input(typed);

        Assert.Equal(heard, edit.Find(".heard").TextContent.Trim().Replace('\u00A0', ' '));
        Assert.False(edit.Find("button[type=submit]").HasAttribute("disabled"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("lots")]
    [InlineData("2 oz gin")]
    public void What_is_no_amount_cannot_be_used(string typed)
    {
        var edit = Render<AmountEdit>(parameters => parameters.Add(part => part.Measure, Measure.Ounces(1)));

        edit.Find("input").Input(typed);

        Assert.True(edit.Find("button[type=submit]").HasAttribute("disabled"));
        Assert.NotEqual("", edit.Find(".field-error").TextContent.Trim());
    }
}
