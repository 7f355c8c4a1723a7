using System.Globalization;
using System.Text;
using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Descriptions;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Corrections;

/// <summary>One thing that was published and has changed since.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Was">The line as it was published; empty for one that is new.</param>
/// <param name="Now">The line as it stands now; empty for one that is gone.</param>
public sealed record Correction(string Drink, string Was, string Now);

/// <summary>Compares what was published last with the episode as it stands, and writes the notice that viewers get.</summary>
public static class CorrectionNotice
{
    /// <summary>The drinks as they would be published now.</summary>
    public static IReadOnlyList<PublishedDrink> Printed(EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        var printer = new LinePrinter(results.Episode.Convention, results.Bar.House);
        return [.. results.Episode.Lineup.Select(drink => new PublishedDrink(
            DescriptionText.Line(drink.Name),
            [.. drink.Spec.Lines.Select(line => DescriptionText.Line(printer.Line(line))), .. new[] { DescriptionText.Line(ServeWords.Of(drink.Spec, results.Bar.Kit)) }.Where(line => line.Length > 0)]))];
    }

    /// <summary>What changed since the last version; empty when nothing did or nothing was published.</summary>
    public static IReadOnlyList<Correction> Since(EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        if (results.Episode.Publications is not [.., var last])
            return [];
        var now = Printed(results);
        var corrections = new List<Correction>();
        foreach (var drink in now)
        {
            if (last.Drinks.FirstOrDefault(before => before.Name == drink.Name) is not { } before)
            {
                corrections.Add(new(drink.Name, "", "new in the lineup"));
                continue;
            }

            corrections.AddRange(Changed(drink.Name, before.Lines, drink.Lines));
        }

        corrections.AddRange(last.Drinks.Where(before => now.All(drink => drink.Name != before.Name)).Select(before => new Correction(before.Name, "", "no longer in the lineup")));
        return corrections;
    }

    /// <summary>The notice to put under the film: "Correction, 24 November 2026. Dune: ⅓ oz · 10 ml lime juice, not ½ oz · 15 ml lime juice."; empty when nothing changed.</summary>
    /// <param name="corrections">What changed.</param>
    /// <param name="day">The day of the correction; null leaves it out.</param>
    public static string Notice(IReadOnlyList<Correction> corrections, DateOnly? day)
    {
        ArgumentNullException.ThrowIfNull(corrections);
        if (corrections.Count == 0)
            return "";
        var opening = day is { } date ? $"Correction, {date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}." : "Correction.";
        return string.Join(' ', corrections.GroupBy(correction => correction.Drink).Select(group => $"{group.Key}: {string.Join("; ", group.Select(Words))}.").Prepend(opening));
    }

    /// <summary>The next version of an episode's publications, with its notice.</summary>
    /// <param name="results">The episode as it is published now.</param>
    /// <param name="description">The description as it is copied.</param>
    /// <param name="at">When.</param>
    public static Publication Next(EpisodeResults results, DescriptionBlock description, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(description);
        return new()
        {
            Version = results.Episode.Publications.Count + 1,
            At = at,
            Description = description.Text,
            Drinks = Printed(results),
            Notice = Notice(Since(results), DateOnly.FromDateTime(at.Date)),
        };
    }

    /// <summary>corrections.txt: the notice that is due now, then every version with its notice; null when nothing was ever corrected.</summary>
    /// <param name="results">The episode.</param>
    /// <param name="day">Today; null leaves the day out of the notice that is due.</param>
    public static string? Write(EpisodeResults results, DateOnly? day)
    {
        var due = Since(results);
        var told = results.Episode.Publications.Where(version => version.Notice.Length > 0).Reverse().ToList();
        if (due.Count == 0 && told.Count == 0)
            return null;
        var text = new StringBuilder();
        if (due.Count > 0)
            text.Append("Not published yet\n").Append(Notice(due, day)).Append("\n\n");
        foreach (var version in told)
            text.Append(CultureInfo.InvariantCulture, $"Version {version.Version}, {version.At:yyyy-MM-dd HH:mm zzz}\n{DescriptionText.Lines(version.Notice)}\n\n");
        return text.ToString().TrimEnd('\n') + "\n";
    }

    // Lines that stand on both sides are let be; the rest are told in pairs, in order.
    private static IEnumerable<Correction> Changed(string drink, IReadOnlyList<string> before, IReadOnlyList<string> now)
    {
        var gone = before.Except(now).ToList();
        var come = now.Except(before).ToList();
        for (var i = 0; i < Math.Max(gone.Count, come.Count); i++)
            yield return new(drink, gone.ElementAtOrDefault(i) ?? "", come.ElementAtOrDefault(i) ?? "");
    }

    private static string Words(Correction correction) => correction switch
    {
        { Was.Length: 0 } => correction.Now,
        { Now.Length: 0 } => $"leave out {correction.Was}",
        _ => $"{correction.Now.TrimEnd('.')}, not {correction.Was.TrimEnd('.')}",
    };
}
