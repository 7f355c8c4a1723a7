using System.Globalization;

namespace Barshow.Web.Pages.Episodes.Publish;

/// <summary>Reads a film time as people type it: "4:31", "1:02:05", "271".</summary>
public static class FilmTime
{
    private const double Longest = 24 * 3600;

    /// <summary>Seconds from the start of the film, 0 to a day; null when it is no film time.</summary>
    public static double? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var parts = text.Trim().Split(':');
        if (parts.Length is 0 or > 3)
            return null;
        double seconds = 0;
        for (var i = 0; i < parts.Length; i++)
        {
            if (parts[i].Length is 0 or > 6 || !int.TryParse(parts[i], NumberStyles.None, CultureInfo.InvariantCulture, out var number) || (i > 0 && number > 59))
                return null;
            seconds = seconds * 60 + number;
        }

        return seconds <= Longest ? seconds : null;
    }
}
