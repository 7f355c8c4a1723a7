using System.Globalization;
using System.Text.RegularExpressions;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Chapters;

/// <summary>What was read of a list of film times.</summary>
/// <param name="Seconds">Where each drink starts, in seconds of film, by its place in the lineup, counted from 0.</param>
/// <param name="Findings">Lines that name no drink of the lineup, and drinks that no line names.</param>
public sealed record FilmTimes(IReadOnlyDictionary<int, double> Seconds, IReadOnlyList<Finding> Findings)
{
    /// <summary>The episode with these times; drinks that were not named keep what they have.</summary>
    public Episode On(Episode episode)
    {
        ArgumentNullException.ThrowIfNull(episode);
        return episode with { Lineup = [.. episode.Lineup.Select((drink, i) => Seconds.TryGetValue(i, out var seconds) ? drink with { FilmSeconds = seconds } : drink)] };
    }
}

/// <summary>Reads film times from an edit list as editors paste it: a line each, a time and a name in either order.</summary>
/// <remarks>
/// Times are "4:31", "1:02:05", "00:04:31.250", "00:04:31,250" or "00:04:31:12", whose last group counts frames and is left out.
/// The first time of a line counts. A drink is named by its name or an alias anywhere in the line; the longest name wins.
/// At most 2,000 lines of 500 characters are read.
/// </remarks>
public static partial class FilmTimesReader
{
    private const int MostLines = 2000;
    private const int LongestLine = 500;

    /// <summary>Reads a list.</summary>
    /// <param name="text">The list as it was pasted.</param>
    /// <param name="episode">The episode whose drinks it names.</param>
    public static FilmTimes Read(string text, Episode episode)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(episode);
        var seconds = new Dictionary<int, double>();
        var findings = new List<Finding>();
        var number = 0;
        foreach (var line in PlainText.Lines(text).Split('\n').Take(MostLines))
        {
            number++;
            var read = line.Length > LongestLine ? line[..LongestLine] : line;
            if (Time().Match(read) is not { Success: true } time)
                continue;
            var rest = read.Remove(time.Index, time.Length);
            if (DrinkOf(rest, episode) is { } place)
                seconds.TryAdd(place, SecondsOf(time));
            else if (rest.Any(char.IsLetter))
                findings.Add(ChapterSentences.MarkNamesNoDrink(rest.Trim(), number));
        }

        if (seconds.Count > 0)
            findings.AddRange(episode.Lineup.Index().Where(drink => !seconds.ContainsKey(drink.Index) && drink.Item.FilmSeconds is null).Select(drink => ChapterSentences.NoMark(drink.Item)));
        else
            findings.Add(ChapterSentences.NoMarks(episode));
        return new(seconds, findings);
    }

    private static int? DrinkOf(string text, Episode episode)
    {
        var folded = $" {NameFolding.Fold(text)} ";
        return episode.Lineup.Index()
            .SelectMany(drink => drink.Item.Spec.Aliases.Prepend(drink.Item.Name).Select(name => (drink.Index, Name: NameFolding.Fold(name))))
            .Where(drink => drink.Name.Length > 0 && folded.Contains($" {drink.Name} ", StringComparison.Ordinal))
            .OrderByDescending(drink => drink.Name.Length)
            .Select(drink => (int?)drink.Index)
            .FirstOrDefault();
    }

    private static double SecondsOf(Match time)
    {
        var groups = time.Groups["t"].Value.Split(':').Select(part => int.Parse(part, CultureInfo.InvariantCulture)).ToList();
        // Four groups are a time code: hours, minutes, seconds, frames.
        if (groups.Count == 4)
            groups.RemoveAt(3);
        var whole = groups.Aggregate(0.0, (sum, group) => sum * 60 + group);
        return time.Groups["f"] is { Success: true } fraction ? whole + double.Parse("0." + fraction.Value, CultureInfo.InvariantCulture) : whole;
    }

    [GeneratedRegex(@"(?<![\w:.])(?<t>[0-9]{1,2}(:[0-5][0-9]){1,2}(:[0-9]{2})?)([.,](?<f>[0-9]{1,3}))?(?![\w:])", RegexOptions.CultureInvariant)]
    private static partial Regex Time();
}
