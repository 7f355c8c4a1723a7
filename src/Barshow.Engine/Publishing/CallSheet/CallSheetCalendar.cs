using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Shooting.Mise;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;

namespace Barshow.Engine.Publishing.CallSheet;

/// <summary>The shoot day as an iCalendar file (RFC 5545): the preparation and the shoot, each an event, the day's rows in its description.</summary>
/// <remarks>Times are written in UTC, and local hours with the zone's name stand in the text, so that no zone has to travel with the file. Nobody's address and no attachment is in it.</remarks>
public static class CallSheetCalendar
{
    /// <summary>The calendar; null when day or call is not fixed, or no running order was made.</summary>
    /// <param name="results">The episode, with its running order.</param>
    /// <param name="sheet">What the call sheet says.</param>
    /// <param name="madeAt">When the file is made.</param>
    public static string? Write(EpisodeResults results, CallSheetContent sheet, DateTimeOffset madeAt)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(sheet);
        if (results.Order is not { Blocks.Count: > 0 } order || order.Clock.At(TimeSpan.Zero) is not { } call)
            return null;
        var zone = ZoneOf(results);
        var calendar = new Ical.Net.Calendar { ProductId = "-//Barshow//Call sheet//EN", Method = "PUBLISH" };
        var before = results.Mise?.Tasks.Where(task => task.Session is MiseSession.BeforeTheCall && task.Start < TimeSpan.Zero).ToList() ?? [];
        if (before.Count > 0)
            calendar.Events.Add(Event(results.Episode, "prep", "Preparation", call + before.Min(task => task.Start), call, string.Join('\n', sheet.Mise)));
        calendar.Events.Add(Event(results.Episode, "shoot", "Shoot", call, call + order.Wrap, string.Join('\n', sheet.Day.Select(row => $"{row.Start} {row.What}").Prepend($"Hours are local ({zone?.Id ?? "no zone given"})."))));
        return new CalendarSerializer().SerializeToString(calendar);

        CalendarEvent Event(Episode episode, string part, string what, DateTime start, DateTime end, string text) => new()
        {
            Uid = $"{episode.Slug}-{part}@barshow.invalid",
            DtStamp = new CalDateTime(madeAt.UtcDateTime, "UTC"),
            Start = At(start),
            End = At(end),
            Summary = PlainText.Line($"{what}: {episode.Title}"),
            Description = PlainText.Lines(text),
            Status = "CONFIRMED",
        };

        CalDateTime At(DateTime local) => zone is null
            ? new(local)
            : new(LocalDateTime.FromDateTime(local).InZoneLeniently(zone).ToDateTimeUtc(), "UTC");
    }

    private static DateTimeZone? ZoneOf(EpisodeResults results) =>
        DateTimeZoneProviders.Tzdb.GetZoneOrNull(results.Episode.TimeZone.Length > 0 ? results.Episode.TimeZone : results.Bar.House.TimeZone);
}
