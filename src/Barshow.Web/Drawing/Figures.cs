using System.Globalization;

namespace Barshow.Web.Drawing;

/// <summary>How computed numbers are written on screen: a point, no grouping below a thousand, a true minus.</summary>
public static class Figures
{
    /// <summary>To the whole number: "175".</summary>
    public static string Whole(double value) => Write(value, "#,0");

    /// <summary>One decimal: "10.3".</summary>
    public static string One(double value) => Write(value, "#,0.0");

    /// <summary>At most one decimal: "22.5", "15".</summary>
    public static string UpToOne(double value) => Write(value, "#,0.#");

    /// <summary>Two decimals: "0.71".</summary>
    public static string Two(double value) => Write(value, "#,0.00");

    /// <summary>A range with one decimal, or one figure where both ends are written alike: "9.9–10.8".</summary>
    public static string Range(double low, double high) => Between(One(low), One(high));

    /// <summary>A range in whole numbers, or one figure where both ends are written alike: "172–178".</summary>
    public static string WholeRange(double low, double high) => Between(Whole(low), Whole(high));

    /// <summary>A time on film: "3:41", "1:02:05".</summary>
    public static string FilmTime(double seconds)
    {
        var time = TimeSpan.FromSeconds(Math.Round(Math.Max(0, seconds)));
        return time.TotalHours >= 1
            ? string.Create(CultureInfo.InvariantCulture, $"{(int)time.TotalHours}:{time.Minutes:00}:{time.Seconds:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{time.Minutes}:{time.Seconds:00}");
    }

    /// <summary>An hour of the day: "09:30".</summary>
    public static string Hour(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A day: "Thu 3 Dec 2026".</summary>
    public static string Day(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A day in full: "Thursday 3 December".</summary>
    public static string LongDay(DateOnly day) => day.ToString("dddd d MMMM", CultureInfo.InvariantCulture);

    /// <summary>A number with its noun: "1 take", "2 takes".</summary>
    public static string Count(int number, string one, string? many = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{number:#,0} {(number == 1 ? one : many ?? one + "s")}");

    private static string Between(string low, string high) => low == high ? low : $"{low}–{high}";

    private static string Write(double value, string format)
    {
        var text = value.ToString(format, CultureInfo.InvariantCulture);
        return text.StartsWith('-') ? text.AsSpan(1).IndexOfAnyExcept("0.,") < 0 ? text[1..] : "−" + text[1..] : text;
    }
}
