using System.Text.RegularExpressions;
using Barshow.Data.Archive;
using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Stock;

public partial class DemoBarTests
{
    private static readonly DateOnly Opening = new(2026, 1, 1);
    private static readonly IReadOnlyList<Episode> Episodes = DemoData.Read<IReadOnlyList<Episode>>("demo/episodes.json");
    private static readonly IReadOnlyList<Feature> Features = DemoData.Read<IReadOnlyList<Feature>>("demo/featured.json");
    private static readonly House House = DemoData.Read<House>("demo/house.json");
    private static readonly Episode Finished = Episodes[0];
    private static readonly Episode Ready = Episodes[1];
    private static readonly Episode Planned = Episodes[2];

    [Theory]
    [InlineData("stock")]
    [InlineData("demo")]
    public void The_folder_is_an_archive_that_opens(string part)
    {
        var reading = ArchiveReader.ReadFolder(Path.Combine(DemoData.Folder, part), Opening);

        Assert.Null(reading.Refusal);
    }

    [Fact]
    public void One_film_is_out_one_is_ready_to_shoot_and_one_is_being_planned()
    {
        Assert.Equal(3, Episodes.Count);
        Assert.True(Finished.PublishDate < Opening);
        Assert.NotNull(Finished.FilmLengthSeconds);
        Assert.All(Finished.Lineup, drink => Assert.NotNull(drink.FilmSeconds));
        Assert.True(Ready.ShootDate > Opening);
        Assert.Null(Ready.FilmLengthSeconds);
        Assert.Equal(Opening.AddDays(40), Planned.ShootDate);
        Assert.True(Planned.Lineup.Count < 8);
    }

    [Fact]
    public void The_house_and_its_prices_speak_of_one_country()
    {
        Assert.Equal(("AU", "AUD", DrinkRegion.Australia), (House.AudienceRegion, House.Currency, House.DrinkRegion));
        Assert.StartsWith("Australia/", House.TimeZone, StringComparison.Ordinal);
        Assert.True(TimeZoneInfo.TryFindSystemTimeZoneById(House.TimeZone, out _));
        Assert.Equal("AUD", DemoData.Read<House>("stock/house.json").Currency);
    }

    [Fact]
    public void No_film_of_the_demo_is_about_vodka() =>
        Assert.DoesNotContain(Episodes, episode => DemoData.Shelf[episode.Bottle!.Ingredient]!.Class == "vodka");

    [Fact]
    public void Every_bottle_line_glass_and_pair_of_a_film_is_known()
    {
        foreach (var episode in Episodes)
        {
            Assert.Equal(IngredientKind.Spirit, DemoData.Shelf[episode.Bottle!.Ingredient]?.Kind);
            foreach (var drink in episode.Lineup)
            {
                Assert.Contains(DemoData.Drinks, stocked => stocked.Slug == drink.Library);
                Assert.True(DemoData.Kit.TryGetGlass(drink.Spec.Serve.Glass, out _));
                Assert.All(drink.Spec.Lines, line => Assert.NotNull(DemoData.Shelf[line.Ingredient]));
                Assert.Contains(drink.Spec.Lines, line => line.Ingredient == episode.Bottle.Ingredient);
                Assert.True(drink.BesideDrink.IsEmpty || episode.Lineup.Any(other => other.Spec.Slug == drink.BesideDrink));
            }

            Assert.All(episode.ShootOrder, slug => Assert.Contains(episode.Lineup, drink => drink.Spec.Slug == slug));
        }
    }

    [Fact]
    public void Nine_drinks_take_450_ml_of_the_bottle_made_once() =>
        Assert.Equal(450, Ready.Lineup.Sum(drink => drink.Spec.Lines.Where(line => line.Ingredient == Ready.Bottle!.Ingredient).Sum(line => line.Planned!.InMillilitres(Convention.Bar)!.Value.ToDouble())));

    [Fact]
    public void The_log_tells_of_two_years_before_the_finished_film()
    {
        var earlier = Features.Where(feature => feature.Episode.IsEmpty).ToList();

        Assert.True(earlier.Count >= 28, $"There are {earlier.Count} earlier features.");
        Assert.Equal(Finished.Lineup.Select(drink => drink.Spec.Slug), Features.Where(feature => feature.Episode == Finished.Slug).Select(feature => feature.Spec.Slug));
        Assert.InRange(earlier.Min(feature => feature.Date), Opening.AddYears(-2), Opening.AddMonths(-23));
        Assert.All(earlier, feature => Assert.True(feature.Date < Finished.PublishDate));
        Assert.Distinct(Features.Select(feature => (feature.Date, feature.EpisodeTitle, feature.Spec.Slug)));
    }

    [Fact]
    public void The_mojito_was_shown_nineteen_months_before_with_more_rum()
    {
        var shown = Assert.Single(Features, feature => feature.Spec.Slug == Slug.Of("mojito"));

        Assert.Equal(Measure.Ounces(2), shown.Spec.Lines[0].ToPublish);
        Assert.Equal(Measure.Ounces(3, 2), Ready.Lineup[1].Spec.Lines[0].Planned);
        Assert.Equal(shown.Date.AddMonths(19).Month, Ready.ShootDate!.Value.Month);
    }

    [Fact]
    public void The_finished_film_has_captions_that_run_to_its_end_and_name_each_drink_where_it_starts()
    {
        var cues = Captions();

        Assert.InRange(cues[^1].End, Finished.FilmLengthSeconds!.Value - 15, Finished.FilmLengthSeconds.Value);
        Assert.All(cues, cue => Assert.True(cue.End > cue.Start));
        Assert.All(cues.Zip(cues.Skip(1)), pair => Assert.True(pair.First.End <= pair.Second.Start));
        Assert.All(Finished.Lineup, drink => Assert.Contains(cues, cue => Math.Floor(cue.Start) == drink.FilmSeconds));
        Assert.All(Finished.Lineup, drink => Assert.Contains(drink.Name, Said(drink.FilmSeconds!.Value, drink.FilmSeconds.Value + 12), StringComparison.Ordinal));
    }

    [Fact]
    public void Two_slips_are_planted_in_the_speech_and_stand_in_their_drinks()
    {
        // The ounces beside 20 ml are 15 ml; the Negroni's spec has one ounce of it.
        Assert.Contains("Half an ounce, twenty mil, of lemon juice.", Said(Of("kitchen-garden"), Of("negroni")), StringComparison.Ordinal);
        Assert.Contains("One and a half ounces, forty-five mil, of red bitter aperitif.", Said(Of("negroni"), Of("martinez")), StringComparison.Ordinal);
        Assert.Equal(Measure.Ounces(1, 2), Line("kitchen-garden", "lemon-juice").ToPublish);
        Assert.Equal(Measure.Ounces(1), Line("negroni", "red-bitter-aperitif").ToPublish);

        static double Of(string slug) => Finished.Lineup.Single(drink => drink.Spec.Slug == Slug.Parse(slug)).FilmSeconds!.Value;
    }

    [Fact]
    public void What_was_poured_on_the_day_won_over_the_plan()
    {
        var syrup = Line("john-collins", "sugar-syrup");

        Assert.Equal(Measure.Ounces(1, 2), syrup.Planned);
        Assert.Equal(Measure.Ounces(3, 4), syrup.ToPublish);
        Assert.Contains("Three quarters of an ounce, twenty-two and a half mil.", Said(0, Finished.FilmLengthSeconds!.Value), StringComparison.Ordinal);
    }

    private static SpecLine Line(string drink, string ingredient) =>
        Finished.Lineup.Single(each => each.Spec.Slug == Slug.Parse(drink)).Spec.Lines.Single(line => line.Ingredient == Slug.Parse(ingredient));

    private static string Said(double from, double to) => string.Join(' ', Captions().Where(cue => cue.Start >= Math.Floor(from) && cue.Start < to).Select(cue => cue.Text));

    private static List<(double Start, double End, string Text)> Captions() =>
        [.. CueOf().Matches(File.ReadAllText(Path.Combine(DemoData.Folder, "demo", "captions", Finished.Slug + ".vtt")))
            .Select(cue => (Seconds(cue.Groups[1].Value), Seconds(cue.Groups[2].Value), cue.Groups[3].Value.Trim().ReplaceLineEndings(" ")))];

    private static double Seconds(string time) => TimeSpan.Parse(time, System.Globalization.CultureInfo.InvariantCulture).TotalSeconds;

    [GeneratedRegex(@"^([\d:.]+) --> ([\d:.]+)\n((?:.+\n)+)", RegexOptions.Multiline)]
    private static partial Regex CueOf();
}
