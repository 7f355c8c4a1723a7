using Barshow.Engine.Measures;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Specs;

/// <summary>A variation says what it does otherwise than the drink it grew from.</summary>
public class SpecDifferenceTests
{
    private static readonly Spec Sour = TestBar.Drink(MethodKind.Shaken, "Coupe", TestBar.Ml(60, "White rum"), TestBar.Ml(22.5, "Lime juice"), TestBar.Ml(22.5, "Simple syrup")) with { Garnish = new("lime wheel") };

    private static string[] Say(Spec variation) => [.. SpecDifference.Sentences(Sour, variation, TestBar.Shelf, TestBar.Kit).Select(sentence => sentence.Replace('\u00A0', ' '))];

    [Fact]
    public void Names_and_words_are_no_difference() => Assert.Empty(Say(Sour with { Name = "Other", Taste = "tart", Lines = [.. Sour.Lines.Reverse()] }));

    [Fact]
    public void An_amount_of_the_same_ingredient() =>
        Assert.Equal(["Lime juice: 30 ml instead of 22.5 ml."], Say(Sour with { Lines = [Sour.Lines[0], TestBar.Ml(30, "Lime juice"), Sour.Lines[2]] }));

    [Fact]
    public void An_ingredient_for_one_of_its_kind_is_an_exchange() =>
        Assert.Equal(["50 ml gin instead of 60 ml white rum."], Say(Sour with { Lines = [TestBar.Ml(50, "Gin"), Sour.Lines[1], Sour.Lines[2]] }));

    [Fact]
    public void What_is_added_and_what_is_left_out() => Assert.Equal(
        ["Adds 1 dash aromatic bitters.", "Leaves out 22.5 ml simple syrup."],
        Say(Sour with { Lines = [Sour.Lines[0], Sour.Lines[1], TestBar.Line(Measure.Of(1, Unit.Dash), "Aromatic bitters")] }));

    [Fact]
    public void Method_glass_ice_and_garnish() => Assert.Equal(
        ["Stirred instead of shaken.", "Rocks instead of coupe.", "One large piece in the glass instead of no ice.", "Garnish: none instead of lime wheel."],
        Say(Sour with { Method = new(MethodKind.Stirred), Serve = Sour.Serve with { Glass = Engine.Names.Slug.Of("Rocks"), Ice = IceKind.Large }, Garnish = null }));

    [Fact]
    public void Seconds_of_the_same_method() => Assert.Equal(["Shaken 15 s instead of without a count."], Say(Sour with { Method = new(MethodKind.Shaken, 15) }));
}
