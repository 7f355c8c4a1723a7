using Barshow.Web.Look;

namespace Barshow.Web.Tests.Look;

public class SoftHyphensTests
{
    [Theory]
    [InlineData("Grapefruit", "Gra|pe|fruit")]
    [InlineData("Aromatic bitters", "Aro|ma|tic bitters")]
    [InlineData("Dry vermouth", "Dry ver|mouth")]
    [InlineData("Cucumber", "Cucum|ber")]
    [InlineData("Lime juice", "Lime juice")]
    public void Long_words_may_break_before_the_consonant_that_opens_a_syllable(string text, string expected) =>
        Assert.Equal(expected, SoftHyphens.In(text).Replace('\u00AD', '|'));
}
