using System.Globalization;
using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using Barshow.Engine.Publishing.Escaping;
using CsvHelper;
using CsvHelper.Configuration;

namespace Barshow.Engine.Tests.Publishing;

public class EscapingTests
{
    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Plain_text_holds_no_control_character_no_turned_direction_and_no_half_character(string text)
    {
        var line = PlainText.Line(text);

        Assert.DoesNotContain(line, char.IsControl);
        Assert.DoesNotContain(line.EnumerateRunes(), rune => PlainText.TurnsDirection(rune.Value));
        Assert.True(line.IsNormalized(), "Half a pair cannot be normalised.");
        Assert.DoesNotContain('\u2028', line);
    }

    [Theory]
    [InlineData("two\nlines", "two lines")]
    [InlineData("tab\tand  spaces ", "tab and spaces")]
    [InlineData("\u202Egnp.exe\u202C", "gnp.exe")]
    [InlineData("Côte d’Or ½", "Côte d’Or ½")]
    [InlineData(null, "")]
    public void A_line_is_one_line_with_single_spaces(string? text, string expected) =>
        Assert.Equal(expected, PlainText.Line(text));

    [Fact]
    public void Emoji_joined_by_a_joiner_stay_joined() =>
        Assert.Equal("👩‍🍳", PlainText.Line("👩‍🍳"));

    [Fact]
    public void Several_lines_keep_their_breaks_as_line_feeds() =>
        Assert.Equal("a\nb\nc\n\nd", PlainText.Lines("a\r\nb\rc\n\nd\n"));

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void A_description_holds_no_angle_bracket(string text)
    {
        Assert.DoesNotContain(DescriptionText.Line(text), c => c is '<' or '>' or '\n');
        Assert.DoesNotContain(DescriptionText.Lines(text), c => c is '<' or '>' or '\r');
    }

    [Theory]
    [InlineData("gin -> glass", "gin → glass")]
    [InlineData("a --> b", "a → b")]
    [InlineData("<3 limes>", "‹3 limes›")]
    public void Brackets_become_what_they_look_like(string text, string expected) =>
        Assert.Equal(expected, DescriptionText.Line(text));

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Html_text_opens_no_tag_and_leaves_no_attribute_and_decodes_to_itself(string text)
    {
        var html = HtmlText.Of(text);

        Assert.DoesNotContain(html, c => c is '<' or '>' or '"' or '\'');
        Assert.Equal(PlainText.Line(text), WebUtility.HtmlDecode(html));
    }

    [Theory]
    [InlineData("https://example.org/a?b=1&c=2", "https://example.org/a?b=1&c=2")]
    [InlineData("http://example.org", "http://example.org/")]
    [InlineData("javascript:alert(1)", null)]
    [InlineData("data:text/html,x", null)]
    [InlineData("//example.org", null)]
    [InlineData("/drinks", null)]
    [InlineData("", null)]
    [InlineData("file:///etc/hosts", null)]
    public void Only_web_addresses_become_links(string text, string? expected) =>
        Assert.Equal(expected, WebAddress.TryRead(text, out var address) ? address : null);

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Json_in_a_script_element_cannot_end_it_and_reads_back_as_itself(string text)
    {
        var clean = PlainText.Line(text);

        var json = ScriptJson.Write(new JsonObject { ["name"] = clean });

        Assert.DoesNotContain(json, c => c is '<' or '>' or '&' or '\'' or '\u2028' or '\u2029');
        Assert.Equal(clean, JsonDocument.Parse(json).RootElement.GetProperty("name").GetString());
    }

    [Fact]
    public void The_end_tag_and_the_comment_of_the_standard_come_out_as_escapes()
    {
        // HTML Living Standard, restrictions for contents of script elements: "<!--", "<script" and "</script" must not appear.
        const string text = "</script><!-- & é";

        var json = ScriptJson.Write(new JsonObject { ["name"] = text });

        Assert.Contains("\\u003C/script\\u003E\\u003C!-- \\u0026", json, StringComparison.Ordinal);
        Assert.Equal(text, JsonDocument.Parse(json).RootElement.GetProperty("name").GetString());
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void A_csv_cell_is_read_back_by_another_reader_and_runs_in_no_spreadsheet(string text)
    {
        var table = new CsvTable("name", "count");
        table.Add(text, 3);

        var records = Read(table.Write());

        Assert.Equal(2, records.Count);
        Assert.Equal("3", records[1][1]);
        var cell = records[1][0];
        Assert.DoesNotContain(cell.TrimStart(' ').Take(1), c => "=+-@\t\r\n＝＋－＠".Contains(c, StringComparison.Ordinal));
        Assert.Equal(PlainText.Lines(text), cell.StartsWith('\'') && !text.StartsWith('\'') ? cell[1..] : cell);
    }

    [Fact]
    public void A_csv_table_is_written_as_rfc_4180_has_it()
    {
        // RFC 4180, section 2: records end in CRLF; fields with commas, quotes or line breaks are quoted; a quote inside is doubled.
        var table = new CsvTable("name", "ml", "price");
        table.Add("aaa", 22.5, 3m);
        table.Add("b\"bb", -3.0, null);
        table.Add("c,c", 1.0, 1234.5m);
        table.Add("two\nlines", 0.0, null);

        Assert.Equal("name,ml,price\r\naaa,22.5,3.00\r\n\"b\"\"bb\",-3,\r\n\"c,c\",1,1234.50\r\n\"two\nlines\",0,\r\n", table.Write());
    }

    [Fact]
    public void Numbers_are_written_with_a_point_whatever_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            var table = new CsvTable("ml");
            table.Add(22.5);

            Assert.Equal("ml\r\n22.5\r\n", table.Write());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_record_of_another_width_than_the_header_is_refused() =>
        Assert.Throws<ArgumentException>(() => new CsvTable("a", "b").Add("only one"));

    private static List<string[]> Read(string csv)
    {
        using var parser = new CsvParser(new StringReader(csv), new CsvConfiguration(CultureInfo.InvariantCulture) { IgnoreBlankLines = false });
        var records = new List<string[]>();
        while (parser.Read())
            records.Add(parser.Record!);
        return records;
    }
}
