using Barshow.Engine.Names;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>The keys of a brief.</summary>
internal static class BriefKeys
{
    public const string Bottle = "bottle";
    public const string Shoot = "shoot";
    public const string Publish = "publish";
    public const string Takes = "takes";
    public const string Sponsor = "sponsor";
    public const string Disclosure = "disclosure";
    public const string DiscloseBy = "disclose by";
    public const string MustSay = "must say";
    public const string Avoid = "avoid";
    public const string Gift = "gift";
    public const string Link = "link";
    public const string Theme = "theme";
    public const string Number = "number";
    public const string FilmLength = "film length";
    public const string TimeZone = "time zone";
    public const string Convention = "convention";

    public const string Was = "was";
    public const string Note = "note";
    public const string At = "at";
    public const string AlsoCalled = "also called";

    private static readonly HashSet<string> Header =
    [
        Bottle, Shoot, Publish, Takes, Sponsor, Disclosure, DiscloseBy, MustSay, Avoid, Gift, Link,
        Theme, Number, FilmLength, TimeZone, Convention,
    ];

    private static readonly HashSet<string> Drink = [Was, Note, At, Takes, AlsoCalled];

    /// <summary>Keys that may be given more than once.</summary>
    public static bool MayRepeat(string key) => key is MustSay or Avoid or Gift or Link or Note or AlsoCalled;

    public static bool IsHeader(string key) => Header.Contains(key);

    public static bool IsDrink(string key) => Drink.Contains(key);

    /// <summary>All header keys as a person types them, for a remedy.</summary>
    public static string HeaderList => string.Join(", ", Header.Select(Typed));

    /// <summary>"must say" as "Must say".</summary>
    public static string Typed(string key) => char.ToUpperInvariant(key[0]) + key[1..];

    /// <summary>Splits "Must say: text" into its key, folded, and its value; false when the line has no such form.</summary>
    public static bool TrySplit(string line, out string key, out string value)
    {
        key = value = "";
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon is < 1 or > 24 || !line.AsSpan(0, colon).ContainsAnyInRange('A', 'z') || line[..colon].Any(char.IsDigit))
            return false;
        key = Folded(line[..colon]);
        value = line[(colon + 1)..].Trim();
        return key.Length > 0;
    }

    /// <summary>The key in lower case; "mustSay", "must_say" and "Must say" are one, and a plural is its singular.</summary>
    public static string Folded(string key)
    {
        var spaced = string.Concat(key.Select((c, i) => i > 0 && char.IsAsciiLetterUpper(c) && char.IsAsciiLetterLower(key[i - 1]) ? $" {c}" : c.ToString()));
        var folded = NameFolding.Fold(spaced);
        return folded switch { "gifts" => Gift, "links" => Link, "notes" => Note, "disclose before" => DiscloseBy, "published" => Publish, "length" => FilmLength, _ => folded };
    }
}
