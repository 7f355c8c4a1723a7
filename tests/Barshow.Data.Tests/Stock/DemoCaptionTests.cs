using Barshow.Engine.Callouts;
using Barshow.Engine.Episodes;

namespace Barshow.Data.Tests.Stock;

public class DemoCaptionTests
{
    private static readonly Episode Finished = DemoData.Read<IReadOnlyList<Episode>>("demo/episodes.json")[0];

    private static readonly string Description = "Jigger guide https://saltlane.example/jiggers\nThyme syrup, step by step: https://saltlane.example/thyme-syrup\nContains sulphites (vermouth, sherry).\n" + string.Join('\n', Finished.Lineup.Select(drink => drink.Name));

    private static readonly EpisodeCheck Said = EpisodeCheck.Of(Finished, DemoData.Shelf, Description)!;

    [Fact]
    public void The_finished_film_keeps_its_captions() =>
        Assert.Equal(File.ReadAllText(Path.Combine(DemoData.Folder, "demo", "captions", "six-drinks-one-bottle-of-gin.vtt")), Finished.Captions);

    [Fact]
    public void The_two_slips_of_the_film_are_found_and_nothing_else() =>
        Assert.Equal(
            [("pair-disagrees", "Kitchen Garden", "lemon juice"), ("differs-from-spec", "Negroni", "red bitter aperitif")],
            Said.Open.Select(finding => (finding.Kind.Name, finding.Drink ?? "", finding.Ingredient ?? "")));

    [Fact]
    public void Film_times_come_out_of_the_captions_as_they_were_typed()
    {
        var timed = Said.WithFilmTimes(Finished with { FilmLengthSeconds = null, Lineup = [.. Finished.Lineup.Select(drink => drink with { FilmSeconds = null })] });

        Assert.Equal(Finished.Lineup.Select(drink => Math.Floor(drink.FilmSeconds!.Value)), timed.Lineup.Select(drink => drink.FilmSeconds!.Value));
        Assert.NotNull(timed.FilmLengthSeconds);
    }

    [Fact]
    public void A_settled_finding_leaves_the_open_ones_and_stays_on_the_pick_up_list_only_when_it_was_accepted()
    {
        var (first, second) = (Said.Open[0], Said.Open[1]);
        var settled = Finished
            .WithSettled(EpisodeCheck.KeyOf(first), new(EpisodeCheck.KeyOf(first), Settling.Accepted, ""))
            .WithSettled(EpisodeCheck.KeyOf(second), new(EpisodeCheck.KeyOf(second), Settling.Dismissed, "The second pour was cut."));

        var check = EpisodeCheck.Of(settled, DemoData.Shelf, Description)!;

        Assert.Empty(check.Open);
        Assert.Equal(2, check.Settled.Count);
        Assert.Equal(first.Message, Assert.Single(check.ToPickUp).Message);
        Assert.Equal(2, EpisodeCheck.Of(settled.WithSettled(EpisodeCheck.KeyOf(first), null).WithSettled(EpisodeCheck.KeyOf(second), null), DemoData.Shelf, Description)!.Open.Count);
    }
}
