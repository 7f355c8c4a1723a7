using Barshow.Engine.Callouts;
using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Tests.Callouts;

public class MentionTests
{
    private static readonly FilmSheet Sheet = new()
    {
        Drinks =
        [
            new("Lantern Sour",
            [
                new("white rum", Measure.Ounces(2)),
                new("lime juice", Measure.Ounces(3, 4)),
                new("1:1 syrup", Measure.Ounces(1, 2)),
                new("aromatic bitters", Measure.Of(2, Unit.Dash)),
            ]),
        ],
    };

    [Theory]
    [InlineData("The old book has three ounces of rum.")]
    [InlineData("The original calls for an ounce of lime juice.")]
    [InlineData("Most bars pour an ounce and a half of rum.")]
    [InlineData("Some people use a full ounce of syrup here.")]
    [InlineData("Back in the thirties they used two and a half ounces of rum.")]
    [InlineData("My grandmother put in three ounces of rum.")]
    [InlineData("Three ounces of rum is what the old book says.")]
    [InlineData("You'll see recipes with an ounce of lime.")]
    [InlineData("If you like it sweeter, use an ounce of syrup.")]
    [InlineData("You can go up to an ounce of lime juice.")]
    [InlineData("You could use an ounce of lemon instead.")]
    [InlineData("For a stronger drink, pour three ounces of rum.")]
    [InlineData("An ounce of syrup if you have a sweet tooth.")]
    [InlineData("Feel free to add another half ounce of rum.")]
    [InlineData("Add more if you want, as much as an ounce of lime.")]
    [InlineData("With an ounce of syrup it would be a dessert, so an ounce is too much.")]
    [InlineData("If your limes are small, take an ounce.")]
    [InlineData("To recap: three ounces of rum, an ounce of lime.")]
    [InlineData("One more time, that's three ounces of rum.")]
    [InlineData("For a jug of four, that's eight ounces of rum.")]
    [InlineData("I once had this with three ounces of rum.")]
    [InlineData("Last week we used an ounce of lime.")]
    [InlineData("Everyone says an ounce of lime.")]
    [InlineData("Don't use an ounce of syrup.")]
    [InlineData("And one ounce is thirty mil all the way through.")]
    [InlineData("I'd go down to a quarter ounce of syrup with ripe limes.")]
    public void An_amount_that_is_only_spoken_of_is_a_mention_and_never_compared(string sentence)
    {
        var report = Check(sentence);

        Assert.All(report.Callouts.Skip(4), callout => Assert.True(callout.Mention, callout.Text));
        Assert.NotEmpty(report.Callouts.Skip(4));
        Assert.Empty(report.Findings);
    }

    [Theory]
    [InlineData("The old book has two ounces, but I pour three ounces of rum.", "three ounces")]
    [InlineData("If you're following along, it's three ounces of rum.", "three ounces")]
    [InlineData("You can see it's three ounces of rum.", "three ounces")]
    [InlineData("Most people stop there, and we use three ounces of rum.", "three ounces")]
    [InlineData("So that's three ounces of rum.", "three ounces")]
    public void What_this_presenter_pours_is_compared(string sentence, string said)
    {
        var report = Check(sentence);

        var finding = Assert.Single(report.Findings, finding => finding.Kind.Name == "differs-from-spec");
        Assert.Equal(said, finding.Said);
    }

    private static CalloutReport Check(string sentence) => CalloutChecker.Check(CaptionReader.Read(
        $"0:10 The Lantern Sour. Two ounces, sixty mil, of white rum.\n0:15 Three quarters of an ounce, twenty-two and a half mil, of lime juice.\n0:20 Half an ounce, fifteen mil, of syrup. Two dashes of aromatic bitters.\n0:25 Shake it.\n0:30 {sentence}\n0:40 Strain it.\n"), Sheet);
}
