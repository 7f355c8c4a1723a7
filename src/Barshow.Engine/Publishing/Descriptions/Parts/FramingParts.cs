using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>The hook, earlier features and the credits.</summary>
internal static class FramingParts
{
    /// <summary>What the film is, with the promise that every recipe stands below.</summary>
    public static PartText Hook(Episode episode)
    {
        var count = episode.Lineup.Count;
        var promise = count switch
        {
            0 => "",
            1 => "The recipe is below, in ounces and millilitres.",
            _ => string.Create(CultureInfo.InvariantCulture, $"All {count} recipes are below, in ounces and millilitres."),
        };
        var theme = DescriptionText.Line(episode.Theme.Length > 0 ? episode.Theme : episode.Title);
        if (theme.Length > 0 && !".!?…".Contains(theme[^1], StringComparison.Ordinal))
            theme += ".";
        return new(DescriptionPart.Hook, string.Join(' ', new[] { theme, promise }.Where(words => words.Length > 0)));
    }

    /// <summary>Which drinks were shown before, and where.</summary>
    public static PartText Earlier(IReadOnlyList<EarlierFeature> earlier)
    {
        var lines = earlier.Select(feature => DescriptionText.Line(
            string.Create(CultureInfo.InvariantCulture, $"{feature.Drink}: {feature.EpisodeTitle}, {feature.Date:yyyy-MM-dd}") + (WebAddress.TryRead(feature.Address, out var address) ? " " + address : "")));
        return PartText.OfLines(DescriptionPart.Earlier, lines.Distinct());
    }

    /// <summary>Where the drinks come from, then the house's own words.</summary>
    public static PartText Credits(Episode episode, DescriptionTemplate template)
    {
        var own = DescriptionText.Lines(template.Credits);
        var sources = episode.Lineup
            .SelectMany(drink => drink.Spec.Sources.Select(source => (drink.Name, Source: source)))
            .Where(item => !IsNone(item.Source))
            .GroupBy(item => item.Source, StringComparer.Ordinal)
            .Select(group => DescriptionText.Line($"{string.Join(", ", group.Select(item => item.Name).Distinct())}: {group.Key}"));
        return PartText.OfLines(DescriptionPart.Credits, sources.Append(own)) with { Short = own, ShortLoses = "the sources of the drinks" };
    }

    private static bool IsNone(string source) =>
        source.StartsWith("common practice", StringComparison.OrdinalIgnoreCase) || source.StartsWith("our own", StringComparison.OrdinalIgnoreCase);
}
