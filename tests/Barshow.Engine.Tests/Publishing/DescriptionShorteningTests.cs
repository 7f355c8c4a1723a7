using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Descriptions;

namespace Barshow.Engine.Tests.Publishing;

public class DescriptionShorteningTests
{
    private static readonly DescriptionBlock Whole = SaltLane.Describe(SaltLane.Filmed);

    [Fact]
    public void A_description_of_exactly_the_limit_is_left_whole()
    {
        var block = Limited(Whole.Bytes);

        Assert.Empty(block.Shortened);
        Assert.Equal(Whole.Text, block.Text);
    }

    [Fact]
    public void One_byte_more_shortens_the_first_part_of_the_order_and_says_so()
    {
        var block = Limited(Whole.Bytes - 1);

        Assert.Equal([(DescriptionPart.Tools, Shortening.Short)], block.Shortened);
        Assert.Contains("Tools\nJigger, shaker, mixing glass and long spoon, strainer, fine sieve\n", block.Text, StringComparison.Ordinal);
        var finding = Assert.Single(block.Findings, finding => finding.Kind == FindingCatalogue.DescriptionShortened);
        Assert.Equal(FormattableString.Invariant($"The description was {Whole.Bytes:#,0} bytes and {Whole.Bytes - 1:#,0} are allowed, so the list of tools was shortened: it goes without what will do instead."), finding.Message);
    }

    [Fact]
    public void The_house_chooses_the_order()
    {
        var template = new DescriptionTemplate { ShortenFirst = [DescriptionPart.MakeAhead, DescriptionPart.Tools] };

        var block = SaltLane.Describe(SaltLane.Filmed, SaltLane.House with { Description = template, Limits = new() { DescriptionBytes = Whole.Bytes - 1 } });

        Assert.Equal([(DescriptionPart.MakeAhead, Shortening.Short)], block.Shortened);
        Assert.Contains("Rich syrup, ⅔ oz · 20 ml: 18 g white sugar, 9 g water. Best within 4 weeks, keep 90 days at most, cold and covered.\n", block.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Short_forms_come_before_anything_is_left_out_and_every_step_is_told()
    {
        var block = Limited(1200);

        var steps = block.Shortened.Select(step => step.Shortening).ToList();
        Assert.Equal(steps.Order(), steps);
        Assert.Contains(Shortening.LeftOut, steps);
        Assert.Equal(block.Shortened.Count, block.Findings.Count(finding => finding.Kind == FindingCatalogue.DescriptionShortened));
    }

    [Fact]
    public void Disclosure_hook_chapters_recipes_gifts_links_and_cautions_are_never_shortened()
    {
        var everything = Enum.GetValues<DescriptionPart>();
        var house = SaltLane.House with { Description = new() { ShortenFirst = everything }, Limits = new() { DescriptionBytes = 10 } };
        var episode = SaltLane.Filmed with
        {
            Sponsor = new() { Sponsor = "a rum maker", Disclosure = "Ad." },
            Gifts = ["six coupes"],
            Links = [new("Jiggers", "https://example.org/jiggers")],
        };

        var block = SaltLane.Describe(episode, house);

        Assert.Equal(
            [DescriptionPart.Disclosure, DescriptionPart.Hook, DescriptionPart.Chapters, DescriptionPart.Recipes, DescriptionPart.Links, DescriptionPart.Gifts, DescriptionPart.Cautions],
            block.Sections.Where(section => section.Part is not null).Select(section => section.Part!.Value));
        Assert.All(block.Sections, section => Assert.Equal(Shortening.None, section.Shortening));
        var finding = Assert.Single(block.Findings, finding => finding.Kind == FindingCatalogue.DescriptionTooLong);
        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal(FormattableString.Invariant($"The description is {block.Bytes:#,0} bytes ({block.Characters:#,0} characters) and 10 bytes are allowed; all that may be shortened is shortened, and the page would cut off the cautions."), finding.Message);
    }

    [Fact]
    public void What_is_shortened_next_is_told_before_it_is_needed() =>
        Assert.Equal(
            [DescriptionPart.Questions, DescriptionPart.Tools, DescriptionPart.StandIns, DescriptionPart.Shopping, DescriptionPart.MakeAhead],
            Whole.NextToShorten);

    private static DescriptionBlock Limited(int bytes) =>
        SaltLane.Describe(SaltLane.Filmed, SaltLane.House with { Limits = new() { DescriptionBytes = bytes } });
}
