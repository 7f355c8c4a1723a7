using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing;
using Barshow.Engine.Specs;
using Barshow.Web.Desk;

namespace Barshow.Web.Tests.Desk;

/// <summary>What the first page says needs doing.</summary>
public class NextThingTests
{
    private static readonly DateOnly Today = new(2026, 11, 24);

    [Fact]
    public void Dates_that_are_still_to_come_stand_with_their_deeds()
    {
        var things = Next(Film(shootIn: 9, publishIn: 24));

        Assert.Equal(["Order for the set", "Prepare what keeps", "Shoot 1 drink", "Publish"], things.Where(thing => thing.Severity is null).Select(thing => thing.What));
        Assert.Equal([6, 8, 9, 24], things.Where(thing => thing.Severity is null).Select(thing => thing.Day!.Value.DayNumber - Today.DayNumber));
    }

    [Fact]
    public void What_is_past_is_not_asked_for() =>
        Assert.Equal(["Publish"], Next(Film(shootIn: -1, publishIn: 3)).Where(thing => thing.Severity is null).Select(thing => thing.What));

    [Fact]
    public void A_stop_stands_today_with_its_remedy_and_leads_to_its_stage()
    {
        var thing = Next(Film(shootIn: 9, publishIn: 24) with { Title = "Two drinks" }).First();

        Assert.Equal((Today, Severity.Stop, "episodes/film/plan"), (thing.Day, thing.Severity, thing.Href));
    }

    [Fact]
    public void An_empty_lineup_asks_for_drinks() =>
        Assert.Contains("Choose the drinks", Next(Film(null, null) with { Lineup = [] }).Select(thing => thing.What));

    private static Episode Film(int? shootIn, int? publishIn) => new()
    {
        Slug = Slug.Parse("film"),
        Title = "A drink",
        ShootDate = shootIn is { } days ? Today.AddDays(days) : null,
        PublishDate = publishIn is { } more ? Today.AddDays(more) : null,
        Lineup = [new() { Spec = new() { Slug = Slug.Parse("daiquiri"), Name = "Daiquiri", Lines = [new SpecLine { Name = "white rum" }.With(AmountLayer.Library, Measure.Ounces(2), null)] } }],
    };

    private static List<NextThing> Next(Episode film) =>
        [.. NextThing.Of(EpisodeWork.Of(film, new Bar(new House(), new IngredientShelf([]), new BarKit()), FeaturedLog.Empty, Today), Today)];
}
