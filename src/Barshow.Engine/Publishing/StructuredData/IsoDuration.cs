using System.Globalization;
using System.Text;

namespace Barshow.Engine.Publishing.StructuredData;

/// <summary>Durations as ISO 8601 writes them: "PT1M30S", "P1DT2H". Hours and less stand behind a T, so that ten minutes are never ten months.</summary>
public static class IsoDuration
{
    /// <summary>The duration, to the millisecond.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below nought, which the standard does not write.</exception>
    public static string Write(TimeSpan duration)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(duration, TimeSpan.Zero);
        var text = new StringBuilder("P");
        if (duration.Days > 0)
            text.Append(CultureInfo.InvariantCulture, $"{duration.Days}D");
        var seconds = duration.Seconds + duration.Milliseconds / 1000m;
        if (duration.Hours > 0 || duration.Minutes > 0 || seconds > 0)
            text.Append('T');
        if (duration.Hours > 0)
            text.Append(CultureInfo.InvariantCulture, $"{duration.Hours}H");
        if (duration.Minutes > 0)
            text.Append(CultureInfo.InvariantCulture, $"{duration.Minutes}M");
        if (seconds > 0)
            text.Append(CultureInfo.InvariantCulture, $"{seconds:0.###}S");
        return text.Length == 1 ? "PT0S" : text.ToString();
    }
}
