using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Episodes;

/// <summary>The changes a user makes to an episode.</summary>
public class EpisodeEditsTests
{
    private static readonly Episode Film = new()
    {
        Slug = Slug.Parse("film"),
        Title = "Film",
        Lineup = [Drink("Daiquiri") with { Pin = Pin.Opener }, Drink("Mojito"), Drink("Rum Buck")],
    };

    [Fact]
    public void An_amount_for_this_film_leaves_the_layers_below_and_forgets_what_stood_beside_the_old_one()
    {
        var changed = Film.WithAmount(0, 0, Measure.Ounces(3, 4), "  drier for the camera ");

        var line = changed.Lineup[0].Spec.Lines[0];
        Assert.Equal(Measure.Ounces(3, 4), line.Planned);
        Assert.Equal(Measure.Ounces(2), line.At(AmountLayer.Library));
        Assert.Equal("drier for the camera", line.Amounts[^1].Reason);
        Assert.Null(line.WrittenBeside);
    }

    [Fact]
    public void An_amount_for_this_film_can_be_taken_back()
    {
        var changed = Film.WithAmount(0, 0, Measure.Ounces(3, 4), null).WithoutAmount(0, 0);

        Assert.Equal(Measure.Ounces(2), changed.Lineup[0].Spec.Lines[0].Planned);
    }

    [Theory]
    [InlineData(2, 0, "Rum Buck, Daiquiri, Mojito")]
    [InlineData(0, 2, "Mojito, Rum Buck, Daiquiri")]
    [InlineData(1, 99, "Daiquiri, Rum Buck, Mojito")]
    [InlineData(1, -5, "Mojito, Daiquiri, Rum Buck")]
    public void A_drink_moves_and_stays_within_the_ends(int from, int to, string expected) =>
        Assert.Equal(expected, string.Join(", ", Film.WithDrinkMoved(from, to).Lineup.Select(drink => drink.Name)));

    [Fact]
    public void Only_one_drink_is_first()
    {
        var changed = Film.WithPin(2, Pin.Opener);

        Assert.Equal([Pin.None, Pin.None, Pin.Opener], changed.Lineup.Select(drink => drink.Pin));
    }

    [Fact]
    public void A_drink_that_is_taken_out_leaves_the_shoot_order_too()
    {
        var changed = (Film with { ShootOrder = [Slug.Parse("mojito"), Slug.Parse("daiquiri")] }).WithoutDrink(1);

        Assert.Equal(2, changed.Lineup.Count);
        Assert.Equal([Slug.Parse("daiquiri")], changed.ShootOrder);
    }

    [Fact]
    public void Moving_a_drink_in_the_shoot_order_makes_the_order_the_users_own()
    {
        Slug[] shown = [Slug.Parse("daiquiri"), Slug.Parse("mojito"), Slug.Parse("rum-buck")];

        Assert.Equal([Slug.Parse("rum-buck"), Slug.Parse("daiquiri"), Slug.Parse("mojito")], Film.WithShootOrderMoved(shown, Slug.Parse("rum-buck"), 0).ShootOrder);
        Assert.Empty(Film.WithShootOrderMoved(shown, Slug.Parse("negroni"), 0).ShootOrder);
    }

    [Fact]
    public void A_task_is_ticked_once_and_unticked()
    {
        var ticked = Film.WithTick("juice:lime-juice", true).WithTick("juice:lime-juice", true);

        Assert.Equal(["juice:lime-juice"], ticked.Ticked);
        Assert.Empty(ticked.WithTick("juice:lime-juice", false).Ticked);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(3)]
    public void A_place_that_is_not_there_is_refused(int place)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Film.WithDrink(place, drink => drink));
        Assert.Throws<ArgumentOutOfRangeException>(() => Film.WithoutDrink(place));
        Assert.Throws<ArgumentOutOfRangeException>(() => Film.WithAmount(0, place, Measure.Ounces(1), null));
    }

    private static LineupDrink Drink(string name) => new()
    {
        Spec = new()
        {
            Slug = Slug.Of(name),
            Name = name,
            Lines = [new SpecLine { Name = "white rum", WrittenBeside = Measure.Millilitres(60) }.With(AmountLayer.Library, Measure.Ounces(2), null)],
        },
    };
}
