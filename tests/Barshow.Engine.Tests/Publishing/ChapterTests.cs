using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Chapters;

namespace Barshow.Engine.Tests.Publishing;

public class ChapterTests
{
    private static readonly PublishingLimits Limits = new();

    [Fact]
    public void Without_film_times_no_chapter_is_made_and_a_finding_says_so()
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(null, ("Harbour Sour", null), ("Dune", null)), Limits);

        Assert.Empty(list.Chapters);
        Assert.False(list.FitForDescription);
        Assert.Null(list.ToWebVtt(10));
        var finding = Assert.Single(list.Findings);
        Assert.Equal("chapters-withheld", finding.Kind.Name);
        Assert.Equal("No film time is known for any of the 2 drinks, so the chapter list and chapters.vtt are withheld and the chapter rules were not checked.", finding.Message);
    }

    [Fact]
    public void One_drink_without_a_time_among_others_withholds_the_list_and_is_named()
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, ("Harbour Sour", 30), ("Dune", null), ("Kelp", 200)), Limits);

        Assert.Empty(list.Chapters);
        Assert.Equal("Dune has no film time though other drinks have one, so the chapter list and chapters.vtt are withheld.", Assert.Single(list.Findings).Message);
    }

    [Fact]
    public void The_list_begins_at_nought_with_a_welcome_and_follows_the_film()
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(4000, ("Harbour Sour", 42.9), ("Dune", 725), ("Kelp", 3725)), Limits);

        Assert.Equal(["0:00 Welcome", "0:42 Harbour Sour", "12:05 Dune", "1:02:05 Kelp"], list.Chapters.Select(chapter => chapter.ToString()));
        Assert.True(list.FitForDescription);
        Assert.Empty(list.Findings);
    }

    [Fact]
    public void A_film_in_another_order_than_the_lineup_is_noted_and_wins()
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, ("Harbour Sour", 300), ("Dune", 42), ("Kelp", 400)), Limits);

        Assert.Equal(["0:00 Welcome", "0:42 Dune", "5:00 Harbour Sour", "6:40 Kelp"], list.Chapters.Select(chapter => chapter.ToString()));
        Assert.Equal("The film shows Dune, Harbour Sour, Kelp, which is not the viewer order; chapters follow the film.", Assert.Single(list.Findings).Message);
    }

    [Fact]
    public void Two_drinks_made_side_by_side_share_a_chapter()
    {
        var episode = Lineups.Timed(600, ("Harbour Sour", 60), ("Dune", null), ("Kelp", 300));
        episode = episode with { Lineup = [episode.Lineup[0], episode.Lineup[1] with { BesideDrink = episode.Lineup[0].Spec.Slug }, episode.Lineup[2]] };

        var list = ChapterPlanner.Plan(episode, Limits);

        Assert.Equal(["0:00 Welcome", "1:00 Harbour Sour and Dune", "5:00 Kelp"], list.Chapters.Select(chapter => chapter.ToString()));
    }

    [Theory]
    [InlineData(9, "0:00 Harbour Sour")]
    [InlineData(10, "0:00 Welcome")]
    public void A_first_drink_too_early_for_a_welcome_opens_the_list(double start, string first)
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, ("Harbour Sour", start), ("Dune", 100), ("Kelp", 200)), Limits);

        Assert.Equal(first, list.Chapters[0].ToString());
        Assert.Equal(start < 10 ? 1 : 0, list.Findings.Count(finding => finding.Kind == FindingCatalogue.ChapterMoved));
    }

    [Fact]
    public void A_first_drink_at_nought_is_not_moved() =>
        Assert.Empty(ChapterPlanner.Plan(Lineups.Timed(600, ("Harbour Sour", 0), ("Dune", 100), ("Kelp", 200)), Limits).Findings);

    // At least three chapters, each ten seconds or longer: common platform practice, no standard.
    [Fact]
    public void Two_chapters_are_too_few_for_the_description_but_stay_in_the_track()
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, ("Harbour Sour", 60)), Limits);

        Assert.False(list.FitForDescription);
        Assert.Equal("There are 2 chapters, and a page reads a list of 3 or more; the description goes without.", Assert.Single(list.Findings).Message);
        Assert.NotNull(list.ToWebVtt(10));
    }

    [Theory]
    [InlineData(109, false)]
    [InlineData(110, true)]
    public void A_chapter_shorter_than_ten_seconds_is_refused(double next, bool fit)
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, ("Harbour Sour", 60), ("Dune", 100), ("Kelp", next)), Limits);

        Assert.Equal(fit, list.FitForDescription);
        if (!fit)
            Assert.Equal("The chapter Dune at 1:40 lasts 9 s, and a page refuses the list below 10 s; the description goes without.", Assert.Single(list.Findings).Message);
    }

    [Theory]
    [InlineData(209.9, false)]
    [InlineData(210.0, true)]
    public void The_last_chapter_is_measured_to_the_end_of_the_film(double length, bool fit) =>
        Assert.Equal(fit, ChapterPlanner.Plan(Lineups.Timed(length, ("Harbour Sour", 60), ("Dune", 100), ("Kelp", 200)), Limits).FitForDescription);

    [Fact]
    public void Without_the_films_length_the_last_chapters_length_is_said_not_to_be_checked()
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(null, ("Harbour Sour", 60), ("Dune", 100), ("Kelp", 200)), Limits);

        Assert.True(list.FitForDescription);
        Assert.Equal("The film's length is not known, so the length of the last chapter was not checked and chapters.vtt gives it 10 s.", Assert.Single(list.Findings).Message);
    }

    [Theory]
    [InlineData(-1, "Dune cannot start at -1 s of film.")]
    [InlineData(600, "Dune starts at 600 s, but the film ends at 600 s.")]
    [InlineData(double.NaN, "Dune cannot start at NaN s of film.")]
    public void A_time_outside_the_film_withholds_the_list(double seconds, string message)
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, ("Harbour Sour", 60), ("Dune", seconds), ("Kelp", 200)), Limits);

        Assert.Empty(list.Chapters);
        Assert.Equal(message, Assert.Single(list.Findings).Message);
    }

    [Theory]
    [InlineData(70, 0)]
    [InlineData(71, 1)]
    public void A_title_longer_than_pages_show_is_noted(int characters, int notes)
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, (new string('n', characters), 60), ("Dune", 100), ("Kelp", 200)), Limits);

        Assert.Equal(notes, list.Findings.Count(finding => finding.Kind == FindingCatalogue.ChapterTitleLong));
    }

    [Fact]
    public void The_limits_are_settings()
    {
        var episode = Lineups.Timed(600, ("Harbour Sour", 60), ("Dune", 65));

        var list = ChapterPlanner.Plan(episode, new() { FewestChapters = 2, ShortestChapterSeconds = 5 });

        Assert.True(list.FitForDescription);
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void A_hostile_name_stays_one_line_in_list_and_track(string name)
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, (name, 60), ("Dune", 100), ("Kelp", 200)), Limits);

        Assert.DoesNotContain(list.Chapters[1].Title, c => c is '<' or '>' or '\n' or '\r');
        var track = list.ToWebVtt(10)!;
        Assert.Equal(4, track.Split(" --> ").Length - 1);
        Assert.Equal(5, track.Split("\n\n").Length - 1);
    }

    [Theory]
    [InlineData("Mix 1:15 with water", "1:15")]
    [InlineData("Doors at 6:30", "6:30")]
    [InlineData("See 1:02:05", "1:02:05")]
    [InlineData("Syrup 1:1", null)]
    [InlineData("Syrup 2:1 and 1:1.5", null)]
    [InlineData("2026-11-24", null)]
    public void Text_that_reads_as_a_time_outside_the_list_is_found(string text, string? found)
    {
        var list = ChapterPlanner.Plan(Lineups.Timed(600, ("Harbour Sour", 60), ("Dune", 100), ("Kelp", 200)), Limits);

        var findings = ChapterLookalikes.Check($"Hello\n0:00 Welcome\n1:00 Harbour Sour\n{text}", list);

        if (found is null)
            Assert.Empty(findings);
        else
            Assert.Equal($"\"{found}\" on line 4 of the description stands outside the chapter list and may be read as a chapter.", Assert.Single(findings).Message);
    }
}
