using System.Globalization;
using System.Text;
using Barshow.Engine.Episodes;
using Barshow.Engine.Episodes.Briefs;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs;
using Barshow.Engine.Tests.Specs;

namespace Barshow.Engine.Tests.Episodes;

public class ReadingABriefTests
{
    public static TheoryData<string, string, string> Examples
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            string? brief = null;
            foreach (var (kind, text) in MarkdownExamples.Of("reading-a-brief.md"))
                if (kind == "brief")
                    brief = text;
                else
                    data.Add(brief!, kind, text);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_of_the_grammar_is_read_as_the_page_says(string brief, string kind, string expected)
    {
        var read = BriefReader.Read(brief, SmallBar.Bar);

        var got = kind == "expected"
            ? Told(read.Episode!)
            : string.Join('\n', read.Findings.Select(finding => string.Create(CultureInfo.InvariantCulture, $"{finding.Line} {finding.Kind}")));
        Assert.Equal(expected, got);
    }

    [Fact]
    public void An_empty_brief_says_how_to_begin()
    {
        var read = BriefReader.Read("  \n\n", SmallBar.Bar);

        Assert.Null(read.Episode);
        var finding = Assert.Single(read.Findings);
        Assert.Equal("The brief is empty.", finding.Message);
        Assert.Equal("Begin with a title, then the bottle, then a blank line and the first drink.", finding.Remedy);
    }

    [Fact]
    public void A_brief_of_ten_megabytes_is_used_up_to_the_limit()
    {
        var brief = new StringBuilder("Long one\nBottle: white rum, 700 ml, 40%\n\nGarden Sour\n2 oz white rum\nShaken, coupe\n\n");
        while (brief.Length < 10_000_000)
            brief.Append("Note: and so on and so forth, line after line\n");

        var read = BriefReader.Read(Encoding.UTF8.GetBytes(brief.ToString()), SmallBar.Bar);

        Assert.Equal("Garden Sour", read.Episode!.Lineup[0].Name);
        Assert.Contains(read.Findings, finding => finding.Kind == FindingCatalogue.BriefTooLong && finding.Line > 5000);
    }

    [Fact]
    public void Binary_is_no_text_and_what_is_text_beside_it_is_used()
    {
        byte[] bytes = [.. "Odd file\n\nGarden Sour\n2 oz white rum\n"u8, 0, 1, 2, 0xFF, 0xFE, (byte)'\n', .. "Shaken, coupe\n"u8];

        var read = BriefReader.Read(bytes, SmallBar.Bar);

        Assert.Equal("Line 5 holds characters that are no text and was left out.", Assert.Single(read.Findings).Message);
        Assert.Equal(MethodKind.Shaken, read.Episode!.Lineup[0].Spec.Method!.Kind);
    }

    [Fact]
    public void A_file_in_Latin_1_is_read_as_it_was_meant_and_says_so()
    {
        var read = BriefReader.Read(Encoding.Latin1.GetBytes("Canchánchara for all\n\nGarden Sour\n2 oz white rum\nShaken, coupe\n"), SmallBar.Bar);

        Assert.Equal("Canchánchara for all", read.Episode!.Title);
        Assert.Equal("From line 1 on the file is no UTF-8; it was read as Western European text (Latin-1).", Assert.Single(read.Findings).Message);
    }

    [Fact]
    public void A_sign_that_slipped_into_the_title_does_not_make_the_next_line_the_title()
    {
        var read = BriefReader.Read("Garden\0 party\nBottle: white rum, 700 ml, 40%\n\nGarden Sour\n2 oz white rum\nShaken, coupe\n", SmallBar.Bar);

        Assert.Equal("Garden party", read.Episode!.Title);
        Assert.Equal("Line 1 holds control signs that are no text and was read without them.", Assert.Single(read.Findings).Message);
    }

    [Fact]
    public void What_a_brief_left_to_mend_stands_until_it_is_mended()
    {
        var episode = BriefReader.Read("T\nBottle: white rum\n\nA\n0 oz white rum\n1 oz lime juice\nShaken, coupe", SmallBar.Bar).Episode!;
        var drink = episode.Lineup[0];
        var mended = episode with
        {
            Bottle = episode.Bottle! with { Millilitres = 700 },
            Lineup = [drink with { Spec = drink.Spec with { Lines = [drink.Spec.Lines[0].With(AmountLayer.Episode, Measure.Ounces(2), "read anew"), drink.Spec.Lines[1]] } }],
        };

        Assert.Equal([FindingCatalogue.BottleSizeMissing, FindingCatalogue.AmountImpossible], StandingFindings.Of(episode, SmallBar.Bar).Select(finding => finding.Kind));
        Assert.Empty(StandingFindings.Of(mended, SmallBar.Bar));
    }

    [Theory]
    [InlineData("{")]
    [InlineData("{\"title\": ")]
    [InlineData("{\"title\": \"x\", \"drinks\": 5}")]
    [InlineData("[]")]
    [InlineData("{\"title\": 5}")]
    [InlineData("{\"title\": [[[[[[[[[[[[1]]]]]]]]]]]]}")]
    [InlineData("{\"title\": \"x\", \"drinks\": [{\"name\": \"a\", \"lines\": [1, true, {\"a\": {}}]}]}")]
    public void Broken_JSON_is_a_finding_and_never_a_crash(string json)
    {
        var read = BriefReader.Read(json, SmallBar.Bar);

        Assert.Contains(read.Findings, finding => finding.Kind == FindingCatalogue.BriefJsonBroken && finding.Line == 1);
    }

    [Fact]
    public void A_bottle_without_a_size_says_what_cannot_be_checked()
    {
        var read = BriefReader.Read("T\nBottle: white rum\n\nA\n1 oz white rum\nShaken, coupe", SmallBar.Bar);

        Assert.Equal("The bottle of white rum has no size, so \"one bottle\" cannot be checked.", Assert.Single(read.Findings).Message);
    }

    [Theory]
    [InlineData("0 ml")]
    [InlineData("-700 ml")]
    [InlineData("25 l")]
    [InlineData("19 ml")]
    public void A_bottle_of_a_size_that_no_bottle_has_is_left_out(string size)
    {
        var read = BriefReader.Read($"T\nBottle: white rum, {size}, 40%\n\nA\n1 oz white rum\nShaken, coupe", SmallBar.Bar);

        Assert.Null(read.Episode!.Bottle!.Millilitres);
        Assert.Equal($"A bottle of white rum cannot hold {size}; the size was left out.", Assert.Single(read.Findings).Message);
    }

    [Theory]
    [InlineData("700 ml", 700)]
    [InlineData("70 cl", 700)]
    [InlineData("0.7 l", 700)]
    [InlineData("20 ml", 20)]
    [InlineData("20 l", 20000)]
    public void A_bottle_size_is_read_in_any_metric_unit(string size, double millilitres)
    {
        var read = BriefReader.Read($"T\nBottle: white rum, {size}, 40%\n\nA\n1 oz white rum\nShaken, coupe", SmallBar.Bar);

        Assert.Equal(millilitres, read.Episode!.Bottle!.Millilitres);
        Assert.Empty(read.Findings);
    }

    [Fact]
    public void An_address_that_is_no_web_address_is_refused()
    {
        var read = BriefReader.Read("T\nLink: click, javascript://x\n\nA\n1 oz white rum\nShaken, coupe", SmallBar.Bar);

        Assert.Empty(read.Episode!.Links);
        Assert.Equal(FindingCatalogue.BriefValueUnreadable, Assert.Single(read.Findings).Kind);
    }

    [Fact]
    public void A_drink_without_a_closing_line_is_kept_with_its_ingredients()
    {
        var read = BriefReader.Read("T\n\nGarden Sour\n2 oz white rum\n1 oz lime juice", SmallBar.Bar);

        Assert.Equal(2, read.Episode!.Lineup[0].Spec.Lines.Count);
        Assert.Equal("Garden Sour does not say how it is made: no line names a method.", Assert.Single(read.Findings).Message);
    }

    [Fact]
    public void An_ingredient_that_holds_gas_tops_the_drink_whatever_its_line_says()
    {
        var read = BriefReader.Read("T\n\nA\n1 oz white rum\n3 oz soda water\nShaken, highball", SmallBar.Bar);

        Assert.Equal(LineUse.Topped, read.Episode!.Lineup[0].Spec.Lines[1].Use);
    }

    [Fact]
    public void The_same_brief_gives_the_same_episode_where_the_comma_parts_decimals()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo("de-DE");
        try
        {
            var read = BriefReader.Read("T\nBottle: white rum, 700 ml, 37.5%\n\nA\n22.5 ml white rum\nShaken, coupe", SmallBar.Bar);

            Assert.Equal(37.5, read.Episode!.Bottle!.Strength!.Value.Percent);
            Assert.Equal("45/2 ml", read.Episode.Lineup[0].Spec.Lines[0].Planned!.ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string Told(Episode episode)
    {
        var lines = new List<string> { $"title: {episode.Title}" };
        if (episode.Bottle is { } bottle)
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"bottle: {bottle.Name}, {bottle.Millilitres} ml, {bottle.Strength?.Percent} %"));
        if (episode.ShootDate is { } shoot)
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"shoot: {shoot:yyyy-MM-dd} {episode.CallTime:HH:mm}"));
        if (episode.PublishDate is { } publish)
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"publish: {publish:yyyy-MM-dd}"));
        lines.Add(string.Create(CultureInfo.InvariantCulture, $"takes: {episode.Takes}"));
        var sponsor = episode.Sponsor;
        if (sponsor.IsSponsored)
            lines.Add($"sponsor: {sponsor.Sponsor}");
        if (sponsor.Disclosure.Length > 0)
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"disclosure: {sponsor.Disclosure} (by {sponsor.DisclosureBySeconds} s)"));
        AddEach("must say", sponsor.MustSay);
        AddEach("avoid", sponsor.Avoid);
        AddEach("gifts", episode.Gifts);
        AddEach("links", [.. episode.Links.Select(link => $"{link.Label} <{link.Address}>")]);
        foreach (var drink in episode.Lineup)
        {
            var spec = drink.Spec;
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"drink: {spec.Name}, line {drink.BriefLine}, {spec.Method?.Name}, {spec.Serve.Glass}, {spec.Garnish?.Text}, {drink.FilmSeconds} s{(drink.Takes is { } takes ? $", takes {takes}" : "")}"));
            foreach (var line in spec.Lines)
                lines.Add($"  {line.Planned} {line.Name}{(line.Note is { } note ? $" ({note})" : "")}{(line.Amounts[0].Layer == AmountLayer.Source ? $", source {line.Amounts[0].Measure}" : "")}");
        }

        return string.Join('\n', lines);

        void AddEach(string key, IReadOnlyList<string> values)
        {
            if (values.Count > 0)
                lines.Add($"{key}: {string.Join(" | ", values)}");
        }
    }
}
