using System.Text;
using Barshow.Engine.Callouts.Captions;
using CsCheck;

namespace Barshow.Engine.Tests.Callouts;

public class ReadingCaptionsTests
{
    // W3C, WebVTT: The Web Video Text Tracks Format, section "WebVTT parser algorithm"; how the parser takes each line of times.
    [Theory]
    [InlineData("00:00.000 --> 00:01.000", 0, 1000)]
    [InlineData("0:00:00.000 --> 0:00:01.000", 0, 1000)]
    [InlineData("60:00:00.000 --> 60:00:01.000", 216_000_000, 216_001_000)]
    [InlineData("00:00.000-->00:01.000", 0, 1000)]
    [InlineData("  00:00.000\t-->\t00:01.000", 0, 1000)]
    [InlineData("00:00.000 --> 00:01.000 foo align:start bar:", 0, 1000)]
    [InlineData("00:01.000 --> 00:01.000", 1000, 1000)]
    [InlineData("123:00:00.000 --> 123:00:00.001", 442_800_000, 442_800_001)]
    public void The_standards_parser_takes(string line, long start, long end)
    {
        Assert.True(CueTiming.TryRead(line, out var timing));
        Assert.Equal((start, end), (timing.Start, timing.End));
    }

    [Theory]
    [InlineData("0:00.000 --> 0:01.000")]
    [InlineData("00:00:00,000 --> 00:00:01,000")]
    [InlineData("00:00.00 --> 00:01.000")]
    [InlineData("00:60:00.000 --> 00:60:01.000")]
    [InlineData("00:00:60.000 --> 00:00:61.000")]
    [InlineData("00:00.000 -> 00:01.000")]
    [InlineData("00:00.000 --> ")]
    [InlineData("00:00.0000 --> 00:01.000")]
    [InlineData("-00:00.000 --> 00:01.000")]
    public void The_standards_parser_drops(string line) => Assert.False(CueTiming.TryRead(line, out _));

    [Theory]
    [InlineData("00:00:01,500 --> 00:00:02,000", 1.5, "One line of times has a comma where the format has a full stop, first on line 3.")]
    [InlineData("0:01.500 --> 0:02.000", 1.5, "One line of times has minutes or seconds of one figure, first on line 3.")]
    [InlineData("00:01.5 --> 00:02.000", 1.5, "One line of times has a fraction of a second that has not three figures, first on line 3.")]
    [InlineData("00:01 --> 00:02", 1.0, "One line of times has no fraction of a second, first on line 3.")]
    [InlineData("00:02.000 --> 00:01.000", 2.0, "One cue does not end after the start, first on line 3.")]
    public void What_the_standard_drops_is_read_kindly_and_told(string line, double start, string sentence)
    {
        var read = CaptionReader.Read($"WEBVTT\n\n{line}\ntwo ounces\n");

        Assert.Equal(start, Assert.Single(read.Cues).StartSeconds);
        Assert.Equal(sentence, Assert.Single(read.Findings).Message);
    }

    [Fact]
    public void Times_that_nobody_can_read_are_told_and_the_next_cue_is_read()
    {
        var read = CaptionReader.Read("WEBVTT\n\n00:99:00.000 --> 00:99:01.000\nlost\n\n00:01.000 --> 00:02.000\nkept\n");

        Assert.Equal("kept", Assert.Single(read.Cues).Text);
        var finding = Assert.Single(read.Findings);
        Assert.Equal("cue-unreadable", finding.Kind.Name);
        Assert.Equal(3, finding.Line);
        Assert.Equal("The times \"00:99:00.000 --> 00:99:01.000\" cannot be read, so the words under them are not checked.", finding.Message);
    }

    // W3C, WebVTT, "collect a WebVTT block".
    [Fact]
    public void Two_cues_without_a_blank_line_between_are_two_cues()
    {
        var read = CaptionReader.Read("WEBVTT\n\n00:01.000 --> 00:02.000\none\n00:03.000 --> 00:04.000\ntwo\n");

        Assert.Equal(["one", "two"], read.Cues.Select(cue => cue.Text));
    }

    [Fact]
    public void Notes_styles_header_lines_and_identifiers_are_no_speech()
    {
        var read = CaptionReader.Read("WEBVTT - film 30\nKind: captions\nLanguage: en\n\nSTYLE\n::cue { color: red }\n\nNOTE made by hand\n\nintro\n00:01.000 --> 00:02.000 line:0 align:start\nhello\n\nNOTE again\n");

        Assert.Equal("hello", Assert.Single(read.Cues).Text);
        Assert.Empty(read.Findings);
    }

    [Fact]
    public void A_file_of_the_six_letters_alone_is_empty_and_says_so() =>
        Assert.Equal("captions-empty", Assert.Single(CaptionReader.Read("WEBVTT").Findings).Kind.Name);

    [Theory]
    [InlineData("WEBVTTX\n\n00:01.000 --> 00:02.000\nhello\n")]
    [InlineData("00:01.000 --> 00:02.000\nhello\n")]
    public void A_missing_signature_is_told(string text)
    {
        var read = CaptionReader.Read(text);

        Assert.Equal("hello", Assert.Single(read.Cues).Text);
        Assert.Equal("The first line does not say WEBVTT; the file was read as WebVTT all the same.", Assert.Single(read.Findings).Message);
    }

    [Theory]
    [InlineData("<v Wren>two <b>ounces</b> &amp; more", "‖ two ounces & more")]
    [InlineData("forty<00:00:01.500><c> five</c> mil", "forty five mil")]
    [InlineData("[music] one ounce", "one ounce")]
    [InlineData("&frac12; oz &lt;sic&gt;", "½ oz <sic>")]
    [InlineData("half <i an ounce", "half")]
    [InlineData("&gt;&gt; then gin", "‖  then gin")]
    public void Tags_references_and_sounds_are_taken_off(string text, string plain) =>
        Assert.Equal(plain, Assert.Single(CaptionReader.Read($"WEBVTT\n\n00:01.000 --> 00:02.000\n{text}\n").Cues).Text);

    [Fact]
    public void Subrip_is_read_with_its_tolerances()
    {
        const string Srt = "\n1\r\n00:00:01,000 --> 00:00:02,000 X1:1 X2:2\r\n{\\an8}<font color=\"#fff\">forty-</font>\r\n\r\n2\r\n0:00:02,000 --> 0:00:03,000\r\nfive mil\r\n45\r\n\r\nof gin\r\n\r\n00:00:04.000 --> 00:00:05.000\r\nstir";

        var read = CaptionReader.Read(Srt);

        Assert.Equal(CaptionFormat.SubRip, read.Format);
        Assert.Equal(["forty-", "five mil\n45\nof gin", "stir"], read.Cues.Select(cue => cue.Text));
        Assert.Equal([1.0, 2.0, 4.0], read.Cues.Select(cue => cue.StartSeconds ?? -1));
        Assert.Equal(4, read.Findings.Count);
    }

    [Theory]
    [InlineData("4:31 one ounce\n4:40 of lime\n")]
    [InlineData("[04:31] one ounce\n[04:40] of lime\n")]
    [InlineData("0:04:31\none ounce\n0:04:40\nof lime\n")]
    [InlineData("4:31\n4 minutes, 31 seconds\none ounce\n4:40\n4 minutes, 40 seconds\nof lime\n")]
    public void A_transcript_with_times_keeps_them(string text)
    {
        var read = CaptionReader.Read(text);

        Assert.Equal(CaptionFormat.TimedTranscript, read.Format);
        Assert.Equal([(271.0, "one ounce"), (280.0, "of lime")], read.Cues.Select(cue => (cue.StartSeconds ?? -1, cue.Text)));
    }

    [Fact]
    public void A_transcript_without_times_says_that_findings_have_none()
    {
        var read = CaptionReader.Read("Start with the gin.\n1:1 syrup next.\n");

        Assert.Equal(CaptionFormat.Transcript, read.Format);
        Assert.Equal("The transcript has no times, so findings have none.", Assert.Single(read.Findings).Message);
        Assert.All(read.Cues, cue => Assert.Null(cue.StartSeconds));
    }

    [Fact]
    public void Rolling_lines_are_read_once()
    {
        const string Rolling = "WEBVTT\n\n00:01.000 --> 00:02.000\nwe take an\n\n00:02.000 --> 00:03.000\nwe take an\nounce and a half\n\n00:03.000 --> 00:04.000\nounce and a half\nof gin\n\n00:04.000 --> 00:05.000\nof gin\n";

        Assert.Equal(["we take an", "ounce and a half", "of gin"], CaptionReader.Read(Rolling).Cues.Select(cue => cue.Text));
    }

    [Fact]
    public void Cues_out_of_order_are_put_in_order()
    {
        var read = CaptionReader.Read("WEBVTT\n\n00:05.000 --> 00:06.000\nsecond\n\n00:01.000 --> 00:02.000\nfirst\n");

        Assert.Equal(["first", "second"], read.Cues.Select(cue => cue.Text));
        Assert.Equal("The cues are not in the order of their times, first on line 7; they were put in order.", Assert.Single(read.Findings).Message);
    }

    public static TheoryData<string> Encodings => ["utf-8", "utf-8-bom", "utf-16", "utf-16BE", "utf-16-bare", "windows-1252"];

    [Theory]
    [MemberData(nameof(Encodings))]
    public void Every_usual_encoding_gives_the_same_words(string encoding)
    {
        const string Text = "WEBVTT\r\n\r\n00:01.000 --> 00:02.000\r\n½ ounce of crème\r\n";
        byte[] bytes = encoding switch
        {
            "utf-8-bom" => [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Text)],
            "utf-16" => [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(Text)],
            "utf-16BE" => [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(Text)],
            "utf-16-bare" => Encoding.Unicode.GetBytes(Text),
            "windows-1252" => Encoding.Latin1.GetBytes(Text),
            _ => Encoding.UTF8.GetBytes(Text),
        };

        Assert.Equal("½ ounce of crème", Assert.Single(CaptionReader.Read(bytes).Cues).Text);
    }

    [Fact]
    public void What_comes_after_ten_megabytes_is_left_out_and_told()
    {
        var bytes = new byte[CaptionReader.MostBytes + 1];
        Array.Fill(bytes, (byte)'a');

        Assert.Contains(CaptionReader.Read(bytes).Findings, finding => finding.Message == "The caption file is larger than 10 MB; what comes after is not read.");
        Assert.DoesNotContain(CaptionReader.Read(bytes.AsSpan(1)).Findings, finding => finding.Kind.Name == "captions-too-large");
    }

    [Fact]
    public void No_bytes_whatever_make_it_throw() =>
        Gen.Byte.Array[0, 200].Sample(bytes =>
        {
            _ = CaptionReader.Read(bytes);
            _ = CaptionReader.Read((byte[])[.. "WEBVTT\n\n00:01.000 --> 00:02.000\n"u8, .. bytes]);
        });
}
