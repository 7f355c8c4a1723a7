namespace Barshow.Data.Archive;

/// <summary>Moves the dates of the demo, so that it is as old whenever it is opened.</summary>
internal static class DemoDates
{
    /// <summary>The archive with every date that many days later.</summary>
    public static HouseArchive Moved(HouseArchive archive, int days) => archive with
    {
        Episodes = archive.Episodes with
        {
            Values = [.. archive.Episodes.Values.Select(episode => episode with
            {
                ShootDate = episode.ShootDate?.AddDays(days),
                PublishDate = episode.PublishDate?.AddDays(days),
            })],
        },
        Featured = archive.Featured with
        {
            Values = [.. archive.Featured.Values.Select(feature => feature with { Date = feature.Date.AddDays(days) })],
        },
    };
}
