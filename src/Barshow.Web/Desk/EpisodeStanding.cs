using Barshow.Engine.Episodes;

namespace Barshow.Web.Desk;

/// <summary>How far an episode is, from its dates and its film times.</summary>
public static class EpisodeStanding
{
    /// <summary>The stage that is worked on now.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="today">Today at the shoot.</param>
    public static Stage Now(Episode episode, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(episode);
        if (episode.FilmLengthSeconds is not null || episode.Lineup.Any(drink => drink.FilmSeconds is not null) || episode.PublishDate < today)
            return Stage.Publish;
        return episode.ShootDate is not { } shoot ? Stage.Plan
            : shoot < today ? Stage.Publish
            : shoot == today ? Stage.Shoot
            : shoot.DayNumber - today.DayNumber <= 2 ? Stage.Prep
            : shoot.DayNumber - today.DayNumber <= 7 ? Stage.Stock
            : Stage.Plan;
    }
}
