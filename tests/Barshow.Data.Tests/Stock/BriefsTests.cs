using Barshow.Data.Archive;
using Barshow.Engine.Episodes;
using Barshow.Engine.Episodes.Briefs;
using Barshow.Engine.Featured;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Stock;

/// <summary>The two briefs that come with the demo: one clean, one with mistakes planted in it, which are listed here and nowhere else.</summary>
public class BriefsTests
{
    private static readonly Bar Bar = new(DemoData.Read<House>("demo/house.json"), DemoData.Shelf, DemoData.Kit);
    private static readonly DateOnly Today = new(2026, 11, 25);

    [Fact]
    public void Nine_drinks_on_white_rum_are_read_without_a_word()
    {
        var read = Read("nine-drinks-white-rum");

        Assert.Empty(read.Findings);
        Assert.Equal(
            ["Daiquiri", "Mojito", "Rum Buck", "Grapefruit Daiquiri", "Garden Cooler", "Canchánchara", "Dry Dock", "Rum Swizzle", "Late Ferry"],
            read.Episode!.Lineup.Select(drink => drink.Name));
        Assert.All(read.Episode.Lineup.SelectMany(drink => drink.Spec.Lines), line => Assert.NotNull(DemoData.Shelf[line.Ingredient]));
    }

    [Fact]
    public void The_clean_brief_has_nothing_to_mend() =>
        Assert.DoesNotContain(Work("nine-drinks-white-rum").Findings, finding => finding.Severity is Severity.Stop or Severity.Fix);

    [Fact]
    public void The_clean_brief_asks_for_what_the_stocked_drinks_hold() =>
        Assert.All(Read("nine-drinks-white-rum").Episode!.Lineup, drink =>
        {
            var stocked = DemoData.Drink(drink.Spec.Slug.Text);
            Assert.Equal(Lines(stocked), Lines(drink.Spec));
            Assert.Equal((stocked.Method!.Kind, stocked.Serve.Glass), (drink.Spec.Method!.Kind, drink.Spec.Serve.Glass));

            static IEnumerable<(Slug, Rational?)> Lines(Spec spec) => spec.Lines.Select(line => (line.Ingredient, line.Planned!.Middle)).OrderBy(line => line.Ingredient);
        });

    [Theory]
    [InlineData("pair-disagrees", "¾ oz stands beside 25 ml, 11.1 % more than the 22.5 ml it makes.")]
    [InlineData("not-pourable", "17 ml lies between the marks of a jigger, which go in steps of 2.5 ml.")]
    [InlineData("wash-line-over", "Clover Club comes to 203 ml, and the nick and nora holds 150 ml to its brim.")]
    [InlineData("wash-line-not-checked", "No glass is named for Wattle Fizz, so its wash line was not checked.")]
    [InlineData("drink-twice", "Negroni stands twice, on lines 30 and 49; the first is used.")]
    [InlineData("ingredient-unknown", "The house does not know \"wattleseed syrup\" in Wattle Fizz: its strength, sugar, acid, allergens and packs count as nothing.")]
    public void Each_mistake_planted_in_the_gin_brief_is_found(string kind, string sentence) =>
        Assert.Contains(Work("six-drinks-gin").Findings, finding => finding.Kind.Name == kind && finding.Message.Replace('\u00a0', ' ') == sentence);

    [Fact]
    public void The_negroni_of_the_gin_brief_was_shown_in_the_last_film()
    {
        // The log's dates move to the day of opening, so the negroni was last shown a few days before it.
        var log = ArchivedLog();
        var work = EpisodeWork.Of(Read("six-drinks-gin").Episode!, Bar, log, Today);

        Assert.Contains(work.Findings, finding => finding.Kind.Name is "featured-too-soon" && finding.Message.StartsWith("Negroni was shown on 20 November 2026", StringComparison.Ordinal));
    }

    [Fact]
    public void The_gin_brief_still_gives_six_drinks() => Assert.Equal(6, Read("six-drinks-gin").Episode!.Lineup.Count);

    [Fact]
    public void Late_ferry_runs_over_the_small_coupe_of_the_film_to_be_shot()
    {
        var ready = DemoData.Read<IReadOnlyList<Episode>>("demo/episodes.json")[1];

        var over = Assert.Single(EpisodeWork.Of(ready, Bar, FeaturedLog.Empty, Today).Findings, finding => finding.Kind.Name == "wash-line-over");

        Assert.Equal("Use the large coupe, 210 ml, or make a smaller drink.", over.Remedy);
    }

    private static EpisodeWork Work(string brief)
    {
        var read = Read(brief);
        return EpisodeWork.Of(read.Episode!, Bar, FeaturedLog.Empty, Today, null, read.Findings);
    }

    private static ReadBrief Read(string brief) => BriefReader.Read(File.ReadAllText(Path.Combine(DemoData.Folder, "briefs", brief + ".txt")), Bar);

    private static FeaturedLog ArchivedLog() =>
        new(ArchiveReader.ReadFolder(Path.Combine(DemoData.Folder, "demo"), Today).Archive!.Featured.Values);
}
