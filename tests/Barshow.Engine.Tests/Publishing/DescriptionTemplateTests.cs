using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Descriptions;

namespace Barshow.Engine.Tests.Publishing;

public class DescriptionTemplateTests
{
    [Fact]
    public void Own_text_stands_where_it_was_written()
    {
        var block = Described("{disclosure}\n{hook}\n\nSee you on Saturday!\n\n{chapters}\n\n== {recipes} ==\n\n{gifts}{links}\n\n{cautions}");

        Assert.Contains("millilitres.\n\nSee you on Saturday!\n\n0:00 Welcome", block.Text, StringComparison.Ordinal);
        Assert.Contains("== 1 oz = 30 ml", block.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(block.Findings, finding => finding.Kind == FindingCatalogue.TemplateSlotMissing);
    }

    [Fact]
    public void A_slot_that_does_not_exist_is_found_with_its_line_and_left_out()
    {
        var block = Described("{disclosure}\n{hook}\n\nThanks {subscribers}!\n\n" + DescriptionTemplate.Default.Text);

        Assert.Contains("Thanks !", block.Text, StringComparison.Ordinal);
        var finding = block.Findings.First(finding => finding.Kind == FindingCatalogue.TemplateSlotUnknown);
        Assert.Equal("Line 4 of the template holds {subscribers}, which is no part of a description; it was left out.", finding.Message);
        Assert.Equal(4, finding.Line);
        Assert.Contains("{make-ahead}", finding.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slot_that_stands_twice_is_printed_once()
    {
        var block = Described("{disclosure}\n{hook}\n{hook}\n\n" + "{chapters}\n\n{recipes}\n\n{gifts}\n\n{links}\n\n{cautions}");

        Assert.Equal("Line 3 of the template holds {hook} a second time; it was left out there.", Assert.Single(block.Findings, finding => finding.Kind == FindingCatalogue.TemplateSlotUnknown).Message);
        Assert.Equal(2, block.Text.Split("All 3 recipes").Length);
    }

    [Fact]
    public void What_is_never_left_out_is_added_when_the_template_has_no_slot_for_it()
    {
        var block = Described("Hello");

        Assert.Equal(6, block.Findings.Count(finding => finding.Kind == FindingCatalogue.TemplateSlotMissing));
        Assert.Equal("The template has no {cautions}, which is never left out; it was added.", block.Findings.Last(finding => finding.Kind == FindingCatalogue.TemplateSlotMissing).Message);
        Assert.Contains("For adults of legal drinking age.", block.Text, StringComparison.Ordinal);
        Assert.Contains("2 oz · 60 ml white rum", block.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_template_still_gives_what_must_be_said() =>
        Assert.Contains("For adults of legal drinking age.", Described("").Text, StringComparison.Ordinal);

    [Fact]
    public void Text_before_the_disclosure_is_found()
    {
        var episode = SaltLane.Filmed with { Sponsor = new() { Sponsor = "a rum maker", Disclosure = "Ad." } };

        var block = SaltLane.Describe(episode, SaltLane.House with { Description = new() { Text = "Hello!\n" + DescriptionTemplate.Default.Text } });

        Assert.Equal(
            "The template puts text before the disclosure, and viewers see only the first lines.",
            Assert.Single(block.Findings, finding => finding.Kind == FindingCatalogue.DisclosureNotFirst).Message);
        Assert.DoesNotContain(SaltLane.Describe(episode).Findings, finding => finding.Kind == FindingCatalogue.DisclosureNotFirst);
    }

    [Fact]
    public void Own_text_that_reads_as_a_chapter_is_found()
    {
        var block = Described(DescriptionTemplate.Default.Text + "\n\nNew film every Saturday at 18:30");

        Assert.StartsWith("\"18:30\" on line ", Assert.Single(block.Findings, finding => finding.Kind == FindingCatalogue.LooksLikeChapter).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(100, 0)]
    [InlineData(101, 1)]
    public void A_title_longer_than_the_page_takes_is_found(int characters, int findings)
    {
        var block = SaltLane.Describe(SaltLane.Evening with { Title = new string('t', characters) });

        Assert.Equal(findings, block.Findings.Count(finding => finding.Kind == FindingCatalogue.TitleTooLong));
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Hostile_names_leave_no_bracket_control_or_turned_direction_in_the_description(string name)
    {
        var drink = SaltLane.HarbourSour with { Spec = SaltLane.HarbourSour.Spec with { Name = name, Lines = [SaltLane.Line("2 oz", "white rum", name), new() { Name = name }] } };
        var episode = SaltLane.Filmed with { Title = name, Theme = name, Gifts = [name], Links = [new(name, name)], Lineup = [drink, .. SaltLane.Filmed.Lineup.Skip(1)] };

        var text = SaltLane.Describe(episode).Text;

        Assert.DoesNotContain(text, c => c is '<' or '>' || (char.IsControl(c) && c != '\n'));
        Assert.DoesNotContain(text.EnumerateRunes(), rune => Engine.Publishing.Escaping.PlainText.TurnsDirection(rune.Value));
        Assert.Contains("For adults of legal drinking age.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_episode_without_drinks_still_gets_a_description() =>
        Assert.StartsWith("Three drinks from one bottle of white rum.", SaltLane.Describe(SaltLane.Evening with { Lineup = [] }).Text, StringComparison.Ordinal);

    private static DescriptionBlock Described(string template) =>
        SaltLane.Describe(SaltLane.Filmed, SaltLane.House with { Description = new() { Text = template } });
}
