using System.Globalization;
using Barshow.Engine.Episodes;

namespace Barshow.Engine.Shooting;

/// <summary>Turns minutes from the call into the clock on the wall of the set.</summary>
/// <param name="Date">The day of the shoot; null when it is not fixed.</param>
/// <param name="Call">When the first take begins; null when it is not fixed.</param>
/// <remarks>Wall time in the shoot's own zone: a change of summer time between the call and the wrap is not foreseen.</remarks>
public sealed record ShootClock(DateOnly? Date, TimeOnly? Call)
{
    /// <summary>The clock of an episode's shoot.</summary>
    public static ShootClock Of(Episode episode)
    {
        ArgumentNullException.ThrowIfNull(episode);
        return new(episode.ShootDate, episode.CallTime);
    }

    /// <summary>The wall time, without a zone; null when date or call is not fixed.</summary>
    public DateTime? At(TimeSpan fromCall) => Date is { } date && Call is { } call ? date.ToDateTime(call) + fromCall : null;

    /// <summary>For people: "09:15", "20:00 the day before", or "2 h 15 min before the call" when no call time is fixed.</summary>
    public string Say(TimeSpan fromCall)
    {
        if (Call is not { } call)
            return fromCall == TimeSpan.Zero ? "at the call"
                : fromCall < TimeSpan.Zero ? SayDuration(fromCall.Negate()) + " before the call"
                : SayDuration(fromCall) + " after the call";
        var time = call.Add(fromCall, out var days).ToString("HH:mm", CultureInfo.InvariantCulture);
        return days switch
        {
            0 => time,
            -1 => time + " the day before",
            1 => time + " the day after",
            < 0 => string.Create(CultureInfo.InvariantCulture, $"{time}, {-days} days before"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{time}, {days} days after"),
        };
    }

    /// <summary>For files: "2027-03-06T09:15" (ISO 8601), "09:15" without a date, "-02:15" from the call without a call time.</summary>
    public string Write(TimeSpan fromCall)
    {
        if (At(fromCall) is { } at)
            return at.ToString("yyyy-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);
        if (Call is { } call)
            return call.Add(fromCall).ToString("HH:mm", CultureInfo.InvariantCulture);
        var minutes = Math.Abs((long)fromCall.TotalMinutes);
        return string.Create(CultureInfo.InvariantCulture, $"{(fromCall < TimeSpan.Zero ? '-' : '+')}{minutes / 60:00}:{minutes % 60:00}");
    }

    /// <summary>"2 h 15 min", "45 min", "3 h".</summary>
    public static string SayDuration(TimeSpan duration)
    {
        var minutes = (long)Math.Round(duration.TotalMinutes);
        return minutes < 60 ? string.Create(CultureInfo.InvariantCulture, $"{minutes} min")
            : minutes % 60 == 0 ? string.Create(CultureInfo.InvariantCulture, $"{minutes / 60} h")
            : string.Create(CultureInfo.InvariantCulture, $"{minutes / 60} h {minutes % 60} min");
    }
}
