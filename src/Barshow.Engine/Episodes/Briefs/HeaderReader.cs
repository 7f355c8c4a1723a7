using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Reading;
using Barshow.Engine.Names;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>Understands the keys of a brief's head.</summary>
internal sealed class HeaderReader(Bar bar, List<Finding> findings)
{
    private const double SmallestBottle = 20, LargestBottle = 20_000;

    private static readonly string[] DateForms = ["yyyy-MM-dd", "d MMMM yyyy", "d MMM yyyy", "MMMM d yyyy", "MMM d yyyy"];

    private readonly Dictionary<string, int> _given = [];

    public Episode Read(IReadOnlyList<BriefKey> keys, Episode episode)
    {
        episode = episode with { Convention = bar.House.Convention };

        // The convention is read first: a bottle in ounces stands on it.
        foreach (var key in keys.OrderBy(key => key.Key == BriefKeys.Convention ? 0 : 1))
            if (IsToBeUsed(key))
                episode = Apply(episode, key);
        return episode;
    }

    private bool IsToBeUsed(BriefKey key)
    {
        if (!BriefKeys.IsHeader(key.Key))
            findings.Add(BriefFindings.KeyUnknown(key));
        else if (!BriefKeys.MayRepeat(key.Key) && !_given.TryAdd(key.Key, key.Line))
            findings.Add(BriefFindings.KeyTwice(key, _given[key.Key]));
        else
            return key.Value.Length > 0;
        return false;
    }

    private Episode Apply(Episode episode, BriefKey key)
    {
        var sponsor = episode.Sponsor;
        return key.Key switch
        {
            BriefKeys.Bottle => episode with { Bottle = Bottle(key, episode.Convention) },
            BriefKeys.Shoot => Shoot(episode, key),
            BriefKeys.Publish => episode with { PublishDate = Date(key, key.Value) },
            BriefKeys.Takes => episode with { Takes = Whole(key, 1, 20) ?? episode.Takes },
            BriefKeys.Number => episode with { Number = Whole(key, 1, 100_000) },
            BriefKeys.Theme => episode with { Theme = key.Value },
            BriefKeys.TimeZone => episode with { TimeZone = key.Value },
            BriefKeys.FilmLength => episode with { FilmLengthSeconds = FilmTime(key, findings) },
            BriefKeys.Convention => episode with { Convention = ConventionOf(key) ?? episode.Convention },
            BriefKeys.Sponsor => episode with { Sponsor = sponsor with { Sponsor = key.Value, Approval = Approval.NotAsked } },
            BriefKeys.Disclosure => episode with { Sponsor = sponsor with { Disclosure = key.Value } },
            BriefKeys.DiscloseBy => episode with { Sponsor = sponsor with { DisclosureBySeconds = (int?)FilmTime(key, findings) } },
            BriefKeys.MustSay => episode with { Sponsor = sponsor with { MustSay = [.. sponsor.MustSay, .. Each(key.Value, ';')] } },
            BriefKeys.Avoid => episode with { Sponsor = sponsor with { Avoid = [.. sponsor.Avoid, .. Each(key.Value, ';', ',')] } },
            BriefKeys.Gift => episode with { Gifts = [.. episode.Gifts, key.Value] },
            BriefKeys.Link => LinkOf(key) is { } link ? episode with { Links = [.. episode.Links, link] } : episode,
            _ => episode,
        };
    }

    private FeaturedBottle Bottle(BriefKey key, Convention convention)
    {
        var parts = Each(key.Value, ',');
        var name = parts.Count > 0 ? parts[0] : key.Value;
        double? millilitres = null;
        Strength? strength = null;
        var sized = false;
        foreach (var part in parts.Skip(1))
        {
            if (part.EndsWith('%'))
                strength = Percent(key, part);
            else
            {
                sized = true;
                millilitres = BottleSize(key, name, part, convention);
            }
        }

        if (!sized)
            findings.Add(BriefFindings.BottleWithoutSize(name, key.Line));
        return new() { Name = name, Ingredient = bar.Ingredients.Named(name)?.Slug ?? default, Millilitres = millilitres, Strength = strength };
    }

    private double? BottleSize(BriefKey key, string bottle, string part, Convention convention)
    {
        var millilitres = LineReader.Read(part).Measure?.InMillilitres(convention)?.ToDouble();
        if (millilitres is >= SmallestBottle and <= LargestBottle)
            return millilitres;
        findings.Add(millilitres is not null || part.Any(char.IsDigit)
            ? BriefFindings.BottleSize(bottle, part, key.Line)
            : BriefFindings.Unreadable(key with { Value = part }, $"Bottle: {bottle}, 700 ml, 40%"));
        return null;
    }

    private Strength? Percent(BriefKey key, string part)
    {
        if (double.TryParse(part.TrimEnd('%', ' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent is >= 0 and <= 100)
            return Strength.FromPercent(percent);
        findings.Add(BriefFindings.Unreadable(key with { Value = part }, "Bottle: white rum, 700 ml, 40%"));
        return null;
    }

    private Episode Shoot(Episode episode, BriefKey key)
    {
        var parts = Each(key.Value, ',');
        var call = parts.FindIndex(part => part.StartsWith("call", StringComparison.OrdinalIgnoreCase));
        TimeOnly? time = null;
        if (call >= 0)
        {
            if (TimeOnly.TryParseExact(parts[call]["call".Length..].Trim(), ["HH:mm", "H:mm", "h:mm tt", "h tt", "h:mmtt", "htt"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var read))
                time = read;
            else
                findings.Add(BriefFindings.Unreadable(key with { Value = parts[call] }, "Shoot: 2027-03-06, call 10:00"));
            parts.RemoveAt(call);
        }

        return episode with { ShootDate = Date(key, string.Join(' ', parts)), CallTime = time };
    }

    private DateOnly? Date(BriefKey key, string text)
    {
        if (DateOnly.TryParseExact(text.Replace(",", "", StringComparison.Ordinal), DateForms, CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces, out var date))
            return date;
        findings.Add(BriefFindings.Unreadable(key with { Value = text }, $"{BriefKeys.Typed(key.Key)}: 2027-03-06"));
        return null;
    }

    private int? Whole(BriefKey key, int least, int most)
    {
        if (int.TryParse(key.Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
            return number;
        findings.Add(BriefFindings.Unreadable(key, string.Create(CultureInfo.InvariantCulture, $"{BriefKeys.Typed(key.Key)}: a whole number from {least} to {most}")));
        return null;
    }

    private Convention? ConventionOf(BriefKey key)
    {
        switch (NameFolding.Fold(key.Value))
        {
            case "bar" or "bar 30 ml":
                return Convention.Bar;
            case "us exact" or "us":
                return Convention.UsExact;
            case "imperial exact" or "imperial":
                return Convention.ImperialExact;
            default:
                findings.Add(BriefFindings.Unreadable(key, "Convention: bar, US exact or imperial exact"));
                return null;
        }
    }

    private Link? LinkOf(BriefKey key)
    {
        var parts = Each(key.Value, ',', ' ');
        var address = parts.Find(part => part.Contains("://", StringComparison.Ordinal));
        if (address is not null && Uri.TryCreate(address, UriKind.Absolute, out var uri) && (uri.Scheme == Uri.UriSchemeHttps || uri.Scheme == Uri.UriSchemeHttp))
        {
            var label = key.Value.Replace(address, "", StringComparison.Ordinal).Trim(' ', ',', '-', ':');
            return new(label.Length > 0 ? label : uri.Host, address);
        }

        findings.Add(BriefFindings.Unreadable(key, "Link: jigger guide, https://example.org/jiggers"));
        return null;
    }

    /// <summary>Film time such as 4:31 or 1:02:03, in seconds.</summary>
    internal static double? FilmTime(BriefKey key, List<Finding> findings, string? drink = null)
    {
        var fields = key.Value.Split(':');
        double seconds = 0;
        var good = fields.Length is 2 or 3;
        for (var i = 0; good && i < fields.Length; i++)
        {
            good = int.TryParse(fields[i], NumberStyles.None, CultureInfo.InvariantCulture, out var field) && fields[i].Length <= 3 && (i == 0 || (field < 60 && fields[i].Length == 2));
            seconds = seconds * 60 + field;
        }

        if (good)
            return seconds;
        findings.Add(BriefFindings.Unreadable(key, $"{BriefKeys.Typed(key.Key)} 4:31", drink));
        return null;
    }

    private static List<string> Each(string value, params char[] separators) =>
        [.. value.Split(separators, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
}
