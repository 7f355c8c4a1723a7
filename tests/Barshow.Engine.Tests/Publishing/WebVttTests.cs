using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Tracks;

namespace Barshow.Engine.Tests.Publishing;

public class WebVttTests
{
    [Fact]
    public void A_track_is_written_as_the_format_has_it() =>
        // W3C WebVTT, section 4.1: signature, blank line, blocks parted by blank lines, times with three decimals.
        Assert.Equal(
            "WEBVTT\n\nNOTE chapters\n\n1\n00:00:00.000 --> 00:00:42.000\nHello\n\n2\n00:00:42.000 --> 01:03:10.500\nGin &amp; celery\n",
            WebVtt.Write("chapters", [new(0, 42, "Hello"), new(42, 3790.5, WebVtt.Text("Gin & celery"))]));

    [Theory]
    [InlineData(0, "00:00:00.000")]
    [InlineData(59.9996, "00:01:00.000")]
    [InlineData(3599.999, "00:59:59.999")]
    [InlineData(360000, "100:00:00.000")]
    public void Times_are_rounded_to_the_millisecond_and_hours_grow(double seconds, string expected) =>
        Assert.Equal(expected, WebVtt.Time(seconds));

    [Fact]
    public void Chapters_and_callouts_are_read_back_by_the_caption_reader_without_a_remark()
    {
        var results = SaltLane.Results(SaltLane.Filmed) with { Said = [new(SaltLane.HarbourSour.Spec.Slug, 1, 60, 63), new(SaltLane.HarbourSour.Spec.Slug, 2, 65.5, 68.25)] };

        var chapters = CaptionReader.Read(ChapterPlanner.Plan(results.Episode, new()).ToWebVtt(10)!);
        var callouts = CaptionReader.Read(CalloutTrack.Write(results)!);

        Assert.Empty(chapters.Findings);
        Assert.Empty(callouts.Findings);
        Assert.Equal([(0, 42, "Welcome"), (42, 190, "Harbour Sour"), (190, 400, "Dune"), (400, 600, "Kelp")], chapters.Cues.Select(cue => ((int)cue.StartSeconds!, (int)cue.EndSeconds!, cue.Text)));
        Assert.Equal(["2 oz · 60 ml white rum", "¾ oz · 22.5 ml lime juice, freshly pressed"], callouts.Cues.Select(cue => cue.Text));
    }

    [Fact]
    public void A_cue_before_the_one_before_it_is_refused() =>
        Assert.Throws<ArgumentException>(() => WebVtt.Write("x", [new(10, 20, "a"), new(9, 20, "b")]));

    [Fact]
    public void A_cue_that_ends_where_it_starts_is_refused() =>
        Assert.Throws<ArgumentException>(() => WebVtt.Write("x", [new(10, 10.0001, "a")]));

    [Theory]
    [InlineData("")]
    [InlineData("a --> b")]
    [InlineData("a\n\nb")]
    [InlineData("a\n")]
    public void A_payload_that_would_break_the_file_is_refused(string payload) =>
        Assert.Throws<ArgumentException>(() => WebVtt.Write("x", [new(0, 1, payload)]));

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Cue_text_never_breaks_the_file(string text) =>
        Assert.Equal(2, WebVtt.Write("note --> x", [new(0, 1, WebVtt.Text(text))]).Split("-->").Length);
}
