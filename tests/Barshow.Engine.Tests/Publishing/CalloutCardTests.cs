using System.Xml.Linq;
using Barshow.Engine.Publishing.Cards;
using Barshow.Engine.Publishing.Tracks;
using SkiaSharp;

namespace Barshow.Engine.Tests.Publishing;

public class CalloutCardTests
{
    [Fact]
    public void Every_line_with_an_amount_gets_a_card_that_says_both_units() =>
        Assert.Equal(
            [
                "Harbour Sour: 2 oz · 60 ml white rum", "Harbour Sour: ¾ oz · 22.5 ml lime juice", "Harbour Sour: ½ oz · 15 ml rich syrup", "Harbour Sour: 1 egg white",
                "Dune: 1½ oz · 45 ml white rum", "Dune: ½ oz · 15 ml orgeat", "Dune: ⅓ oz · 10 ml lime juice", "Dune: top soda water",
                "Kelp: 2 oz · 60 ml white rum", "Kelp: 2 dashes aromatic bitters", "Kelp: 1 barspoon (5 ml) rich syrup",
            ],
            CalloutCard.Of(SaltLane.Evening, SaltLane.House).Select(card => card.ToString()));

    [Theory]
    [InlineData(1920, 1080)]
    [InlineData(3840, 2160)]
    public void The_picture_has_the_frames_size_and_is_transparent_but_for_the_card(int width, int height)
    {
        using var picture = SKBitmap.Decode(CalloutCard.Of(SaltLane.Evening, SaltLane.House)[1].ToPng(width));

        Assert.Equal((width, height), (picture.Width, picture.Height));
        Assert.Equal(0, picture.GetPixel(width / 2, height / 4).Alpha);
        Assert.Equal(0, picture.GetPixel(width - 1, height - 1).Alpha);
        Assert.Equal(255, picture.GetPixel(width / 16 + 8, height - height / 8).Alpha);
    }

    [Fact]
    public void The_drawing_is_well_formed_svg_with_a_title_and_outlines_for_text()
    {
        XNamespace svg = "http://www.w3.org/2000/svg";

        var root = XDocument.Parse(CalloutCard.Of(SaltLane.Evening, SaltLane.House)[1].ToSvg()).Root!;

        Assert.Equal(svg + "svg", root.Name);
        Assert.Equal("0 0 1920 1080", root.Attribute("viewBox")!.Value);
        Assert.Equal("Harbour Sour: ¾ oz · 22.5 ml lime juice", root.Element(svg + "title")!.Value);
        Assert.Empty(root.Descendants(svg + "text"));
        Assert.Equal(5, root.Elements(svg + "path").Count());
    }

    [Fact]
    public void A_third_that_the_typeface_lacks_is_still_drawn()
    {
        // The typeface has no ⅓; without the figures built for it, the amount would be narrower and hold a box.
        var third = Width(CalloutCard.Of(SaltLane.Evening, SaltLane.House)[6]);
        var withoutThird = Width(CalloutCard.Of(SaltLane.Evening, SaltLane.House)[6] with { Amount = " oz · 10 ml" });

        Assert.True(third > withoutThird + 20, $"{third} against {withoutThird}");

        static int Width(CalloutCard card)
        {
            using var picture = SKBitmap.Decode(card.ToPng(1920));
            return Enumerable.Range(0, picture.Width).Last(x => Enumerable.Range(760, 224).Any(y => picture.GetPixel(x, y) is { Alpha: > 200, Red: < 60, Green: > 60 and < 110 }));
        }
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void A_hostile_name_stays_inside_the_frame_and_the_svg_well_formed(string name)
    {
        var card = new CalloutCard { FileName = "x", Drink = Engine.Publishing.Escaping.PlainText.Line(name), Line = 1, Amount = "2 oz · 60 ml", Ingredient = Engine.Publishing.Escaping.PlainText.Line(name) };

        Assert.NotNull(XDocument.Parse(card.ToSvg()).Root);
        using var picture = SKBitmap.Decode(card.ToPng(1920));
        Assert.Equal(0, picture.GetPixel(1919, 900).Alpha);
    }

    [Fact]
    public void The_cue_list_says_which_card_at_which_time_and_leaves_unknown_times_empty()
    {
        var results = SaltLane.Results(SaltLane.Filmed) with { Said = [new(SaltLane.HarbourSour.Spec.Slug, 2, 65.5, 68.25)] };

        var list = CueList.Write(results, CalloutCard.Of(results.Episode, results.Bar.House)).Split("\r\n");

        Assert.Equal("card,drink,line,text,from,to,from_s,to_s", list[0]);
        Assert.Equal("01-harbour-sour-1-white-rum,Harbour Sour,1,Harbour Sour: 2 oz · 60 ml white rum,,,,", list[1]);
        Assert.Equal("01-harbour-sour-2-lime-juice,Harbour Sour,2,Harbour Sour: ¾ oz · 22.5 ml lime juice,1:05,1:09,65.5,68.25", list[2]);
    }

    [Fact]
    public void The_callout_track_shows_each_line_while_it_is_said_two_seconds_at_least_and_never_over_the_next()
    {
        var sour = SaltLane.HarbourSour.Spec.Slug;
        var results = SaltLane.Results(SaltLane.Filmed) with { Said = [new(sour, 2, 65.5, 66), new(sour, 1, 60, 61), new(sour, 3, 66.5, 71)] };

        Assert.Equal(
            "WEBVTT\n\nNOTE callouts in both units\n\n1\n00:01:00.000 --> 00:01:02.000\n2 oz · 60 ml white rum\n\n2\n00:01:05.500 --> 00:01:06.500\n¾ oz · 22.5 ml lime juice, freshly pressed\n\n3\n00:01:06.500 --> 00:01:11.000\n½ oz · 15 ml rich syrup\n",
            CalloutTrack.Write(results));
    }

    [Fact]
    public void Without_captions_there_is_no_callout_track() =>
        Assert.Null(CalloutTrack.Write(SaltLane.Results(SaltLane.Filmed)));

    [Fact]
    public void Two_lines_said_at_once_share_their_time()
    {
        var sour = SaltLane.HarbourSour.Spec.Slug;
        var results = SaltLane.Results(SaltLane.Filmed) with { Said = [new(sour, 1, 60, 63), new(sour, 2, 60, 63)] };

        Assert.Equal([63, 63], CalloutTrack.Times(results).Select(time => time.EndSeconds));
    }
}
