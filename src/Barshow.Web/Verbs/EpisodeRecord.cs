using Barshow.Data.Stores;
using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;

namespace Barshow.Web.Verbs;

/// <summary>Keeps what a brief describes: the episode in the house, its drinks in the featured log.</summary>
internal static class EpisodeRecord
{
    private const string Signed = "package";

    /// <summary>Keeps an episode and its features, unless that would write over what someone changed in the app.</summary>
    /// <returns>A sentence when something was left as it is; null when all was kept.</returns>
    public static async Task<string?> KeepAsync(OpenedHouse house, Episode episode, DateOnly today, CancellationToken cancel)
    {
        if (episode.Brief.Length == 0 || episode.Lineup.Count == 0)
            return null;
        var episodes = house.Get<EpisodeStore>();
        var stored = await episodes.FindAsync(episode.Slug, cancel);
        if (stored is { SavedBy: not Signed })
            return $"An episode is kept under {episode.Slug} in the app already; it and the featured log were left as they are.";
        if (stored?.Value.Brief != episode.Brief)
            await episodes.SaveAsync(episode, stored?.Version, Signed, cancel);
        await LogAsync(house.Get<FeaturedLogStore>(), episode, today, cancel);
        return null;
    }

    private static async Task LogAsync(FeaturedLogStore log, Episode episode, DateOnly today, CancellationToken cancel)
    {
        var date = episode.PublishDate ?? episode.ShootDate ?? today;
        var kept = (await log.ListAsync(cancel)).Where(feature => feature.Stored.Value.Episode == episode.Slug).ToList();
        foreach (var gone in kept.Where(feature => feature.Stored.Value.Date != date || episode.Lineup.All(drink => drink.Spec.Slug != feature.Stored.Value.Spec.Slug)))
            await log.DeleteAsync(gone.Id, Signed, cancel);
        foreach (var drink in episode.Lineup)
        {
            var feature = new Feature { Episode = episode.Slug, EpisodeTitle = episode.Title, Date = date, Spec = drink.Spec };
            if (kept.Find(one => one.Stored.Value.Date == date && one.Stored.Value.Spec.Slug == drink.Spec.Slug) is { } before)
                await log.SaveAsync(before.Id, feature, before.Stored.Version, Signed, cancel);
            else
                await log.AddAsync(feature, Signed, cancel);
        }
    }
}
