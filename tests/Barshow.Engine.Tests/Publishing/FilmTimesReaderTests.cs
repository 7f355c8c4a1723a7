using Barshow.Engine.Publishing.Chapters;

namespace Barshow.Engine.Tests.Publishing;

public class FilmTimesReaderTests
{
    [Theory]
    [InlineData("4:31 Dune", 271)]
    [InlineData("Dune 4:31", 271)]
    [InlineData("1:02:05 - Dune", 3725)]
    [InlineData("00:04:31.250 Dune", 271.25)]
    [InlineData("00:04:31,5 Dune", 271.5)]
    [InlineData("\"Dune\";00:04:31:12;00:06:00:00", 271)]
    [InlineData("[04:31] the DUNE, at last", 271)]
    public void A_time_and_a_name_are_read_in_either_order_as_editors_write_them(string line, double seconds)
    {
        var read = FilmTimesReader.Read(line, SaltLane.Evening);

        Assert.Equal(seconds, read.Seconds[1]);
    }

    [Fact]
    public void A_whole_list_sets_the_film_times_and_leaves_talk_alone()
    {
        var read = FilmTimesReader.Read("0:00 Welcome\r\n0:42 Harbour Sour\r\n3:10 Dune\r\n6:40 Kelp\r\n", SaltLane.Evening);

        Assert.Equal([42, 190, 400], read.On(SaltLane.Evening).Lineup.Select(drink => drink.FilmSeconds));
        Assert.Equal("Line 1 of the list, \"Welcome\", names no drink of the lineup; its time was not taken.", Assert.Single(read.Findings).Message);
    }

    [Fact]
    public void A_drink_that_no_line_names_is_said()
    {
        var read = FilmTimesReader.Read("0:42 Harbour Sour\n3:10 Dune", SaltLane.Evening);

        Assert.Equal("No line of the list names Kelp, so it still has no film time.", Assert.Single(read.Findings).Message);
        Assert.Null(read.On(SaltLane.Evening).Lineup[2].FilmSeconds);
    }

    [Fact]
    public void The_longest_name_wins_and_the_first_time_of_a_drink_counts()
    {
        var episode = SaltLane.Evening with { Lineup = [Lineups.Drink("Daiquiri"), Lineups.Drink("Grapefruit Daiquiri")] };

        var read = FilmTimesReader.Read("1:00 Daiquiri\n2:00 Grapefruit Daiquiri\n9:00 Daiquiri again", episode);

        Assert.Equal((60, 120), (read.Seconds[0], read.Seconds[1]));
        Assert.Empty(read.Findings);
    }

    [Theory]
    [InlineData("")]
    [InlineData("just words")]
    [InlineData("mix 1:1 Dune")]
    [InlineData("Dune 99")]
    public void A_text_without_times_takes_nothing_and_says_so(string text)
    {
        var read = FilmTimesReader.Read(text, SaltLane.Evening);

        Assert.Empty(read.Seconds);
        Assert.Equal("The list holds no line with a time and a drink of the lineup; nothing was taken.", Assert.Single(read.Findings).Message);
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Hostile_text_is_read_without_harm(string text) =>
        Assert.True(FilmTimesReader.Read($"{text} 4:31 Dune\n4:31 {text}", SaltLane.Evening).Seconds.Count <= 1);
}
