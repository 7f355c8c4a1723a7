using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Shooting;

public class ViewerOrderTests
{
    [Fact]
    public void No_two_neighbours_are_alike_where_that_can_be()
    {
        var episode = Kit.Episode(
            Kit.Drink("Sour 1", rum: 30), Kit.Drink("Sour 2", rum: 60), Kit.Drink("Long 1", MethodKind.Built, Kit.Highball, rum: 40), Kit.Drink("Long 2", MethodKind.Built, Kit.Highball, rum: 50));

        var viewers = ViewerOrderPlanner.Plan(episode, Kit.Bar());

        Assert.Empty(viewers.Alike);
        Assert.Equal(2, viewers.AlikeNow.Count);
        Assert.Equal("method and glass", viewers.AlikeNow[0].Alike);
        Assert.Equal(0, viewers.Levels[0].Value);
        Assert.All(viewers.Levels, level => Assert.True(level.Proven));
    }

    [Fact]
    public void It_eases_in_and_builds_to_the_closer()
    {
        var episode = Kit.Episode(Kit.Drink("Strong", rum: 90), Kit.Drink("Light", rum: 20), Kit.Drink("Middle", rum: 50));

        Assert.Equal(["light", "middle", "strong"], ViewerOrderPlanner.Plan(episode, Kit.Bar()).Drinks.Select(slug => slug.Text));
    }

    [Fact]
    public void Pins_hold_and_drinks_to_be_compared_stay_together()
    {
        var episode = Kit.Episode(
            Kit.Drink("Strong", rum: 90, pin: Pin.Opener), Kit.Drink("Light", rum: 20, pin: Pin.Closer), Kit.Drink("Middle", rum: 50, beside: "Third"), Kit.Drink("Second", rum: 55), Kit.Drink("Third", rum: 60));

        var drinks = ViewerOrderPlanner.Plan(episode, Kit.Bar()).Drinks.ToList();

        Assert.Equal(Slug.Of("Strong"), drinks[0]);
        Assert.Equal(Slug.Of("Light"), drinks[^1]);
        Assert.Equal(1, Math.Abs(drinks.IndexOf(Slug.Of("Middle")) - drinks.IndexOf(Slug.Of("Third"))));
    }

    [Fact]
    public void Neighbours_that_nothing_parts_are_named()
    {
        var viewers = ViewerOrderPlanner.Plan(Kit.Episode(Kit.Drink("Sour 1", rum: 30), Kit.Drink("Sour 2", rum: 60)), Kit.Bar());

        var finding = Assert.Single(viewers.Findings);
        Assert.Equal(FindingCatalogue.NeighboursAlike, finding.Kind);
        Assert.Equal("Sour 1 and Sour 2 follow one another for viewers and are alike in method and glass; no order parts all that are alike.", finding.Message);
    }

    [Fact]
    public void An_empty_lineup_has_no_order() => Assert.Empty(ViewerOrderPlanner.Plan(Kit.Episode(), Kit.Bar()).Drinks);
}
