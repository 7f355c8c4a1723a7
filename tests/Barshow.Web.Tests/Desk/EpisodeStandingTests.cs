using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Web.Desk;

namespace Barshow.Web.Tests.Desk;

/// <summary>How far an episode is, from its dates.</summary>
public class EpisodeStandingTests
{
    private static readonly DateOnly Today = new(2026, 11, 24);

    [Theory]
    [InlineData(null, Stage.Plan)]
    [InlineData(8, Stage.Plan)]
    [InlineData(7, Stage.Stock)]
    [InlineData(3, Stage.Stock)]
    [InlineData(2, Stage.Prep)]
    [InlineData(1, Stage.Prep)]
    [InlineData(0, Stage.Shoot)]
    [InlineData(-1, Stage.Publish)]
    public void The_stage_follows_the_days_until_the_shoot(int? days, Stage expected)
    {
        var film = new Episode { Slug = Slug.Parse("film"), Title = "Film", ShootDate = days is { } count ? Today.AddDays(count) : null };

        Assert.Equal(expected, EpisodeStanding.Now(film, Today));
    }

    [Fact]
    public void A_film_that_has_a_length_is_being_published() =>
        Assert.Equal(Stage.Publish, EpisodeStanding.Now(new() { Slug = Slug.Parse("film"), Title = "Film", ShootDate = Today.AddDays(9), FilmLengthSeconds = 1360 }, Today));
}
