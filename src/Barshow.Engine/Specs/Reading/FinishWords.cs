using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Reading;

/// <summary>The words of a closing line. All folded: lower case, no accents, no punctuation.</summary>
internal static class FinishWords
{
    /// <summary>What is done.</summary>
    public static readonly Dictionary<string, Doing> Doings = Table(
        ("built build poured", Doing.Build),
        ("stirred stir", Doing.Stir),
        ("shaken shake shook whipped", Doing.Shake),
        ("thrown throw rolled roll", Doing.Throw),
        ("muddled muddle", Doing.Muddle),
        ("swizzled swizzle churned churn", Doing.Swizzle),
        ("blended blend blitzed", Doing.Blend),
        ("layered layer", Doing.Layer));

    /// <summary>The ice in the glass, longest phrases first.</summary>
    public static readonly (string Phrase, IceKind Ice)[] Ices =
    [
        ("one large ice cube", IceKind.Large), ("a large ice cube", IceKind.Large), ("large ice cube", IceKind.Large), ("big ice cube", IceKind.Large), ("large ice", IceKind.Large),
        ("one large cube", IceKind.Large), ("single large cube", IceKind.Large), ("large cube", IceKind.Large), ("one big cube", IceKind.Large), ("big cube", IceKind.Large),
        ("large rock", IceKind.Large), ("big rock", IceKind.Large), ("large piece of ice", IceKind.Large), ("block of ice", IceKind.Large), ("ice sphere", IceKind.Large), ("ice ball", IceKind.Large),
        ("fresh crushed ice", IceKind.Crushed), ("crushed ice", IceKind.Crushed), ("pebble ice", IceKind.Crushed), ("nugget ice", IceKind.Crushed), ("shaved ice", IceKind.Crushed),
        ("fresh cubed ice", IceKind.Cubed), ("cubed ice", IceKind.Cubed), ("cracked ice", IceKind.Cubed), ("ice cubes", IceKind.Cubed), ("fresh ice", IceKind.Cubed), ("on the rocks", IceKind.Cubed),
        ("over cubes", IceKind.Cubed), ("on cubes", IceKind.Cubed),
        ("without ice", IceKind.None), ("no ice", IceKind.None), ("served up", IceKind.None), ("straight up", IceKind.None), ("neat", IceKind.None), ("up", IceKind.None),
        ("over ice", IceKind.Cubed), ("on ice", IceKind.Cubed), ("with ice", IceKind.Cubed), ("full of ice", IceKind.Cubed),
    ];

    /// <summary>How it leaves the tin, longest phrases first.</summary>
    public static readonly (string Phrase, Straining Strain)[] Strains =
    [
        ("fine strained", Straining.Fine), ("fine strain", Straining.Fine), ("finely strained", Straining.Fine), ("double strained", Straining.Fine), ("double strain", Straining.Fine),
        ("poured with its ice", Straining.Open), ("open poured", Straining.Open), ("open pour", Straining.Open), ("dirty dumped", Straining.Open), ("dirty poured", Straining.Open),
        ("dirty dump", Straining.Open), ("dirty pour", Straining.Open),
        ("not strained", Straining.None), ("unstrained", Straining.None), ("single strained", Straining.Single), ("strained", Straining.Single), ("strain", Straining.Single),
    ];

    /// <summary>Words that only hold a line together.</summary>
    public static readonly HashSet<string> Fillers =
    [
        "and", "then", "with", "in", "into", "over", "on", "a", "an", "the", "for", "to", "of", "from", "hard", "well", "briefly", "gently", "lightly", "quickly", "long", "short",
        "ice", "iced", "served", "serve", "fresh", "tall", "cold", "about", "until", "very", "glass", "filled", "its", "own", "first", "again", "tin", "shaker", "mixing", "times", "time", "once", "twice",
    ];

    /// <summary>Words that only a glass ends in.</summary>
    public static readonly HashSet<string> Vessels =
        ["glass", "mug", "cup", "tumbler", "goblet", "flute", "coupe", "coupette", "highball", "collins", "rocks", "schooner", "snifter", "tankard", "chalice", "bowl", "jar", "shot", "stein", "copita", "beaker"];

    /// <summary>The cuts and pieces of a garnish.</summary>
    public static readonly Dictionary<string, Unit> Cuts = Table(
        ("wheel wheels", Unit.Wheel),
        ("wedge wedges", Unit.Wedge),
        ("slice slices", Unit.Slice),
        ("twist twists peel zest coin", Unit.Twist),
        ("sprig sprigs bouquet", Unit.Sprig),
        ("leaf leaves frond fronds", Unit.Leaf),
        ("cube cubes", Unit.Cube),
        ("pinch", Unit.Pinch),
        ("dash dashes", Unit.Dash),
        ("drop drops", Unit.Drop),
        ("piece pieces", Unit.Piece));

    /// <summary>Small numbers in words.</summary>
    public static readonly Dictionary<string, int> Numbers = Table(
        ("a an one", 1),
        ("two couple pair", 2),
        ("three few", 3),
        ("four", 4),
        ("five", 5),
        ("six", 6),
        ("seven", 7),
        ("eight", 8),
        ("nine", 9),
        ("ten", 10),
        ("eleven", 11),
        ("twelve", 12),
        ("fifteen", 15),
        ("twenty", 20),
        ("thirty", 30),
        ("forty", 40),
        ("sixty", 60));

    /// <summary>Words of a garnish that say how it is treated, not what it is.</summary>
    public static readonly HashSet<string> Treatments =
    [
        "expressed", "flamed", "grated", "freshly", "fresh", "dehydrated", "dried", "half", "thin", "thick", "long", "large", "small", "big", "spent", "skewered", "on", "pick", "a", "an", "the", "of",
        "slapped", "cracked", "ground", "dusting", "dust", "discarded", "optional", "horse", "horses", "neck", "rim", "shell", "hull", "husk", "floating", "single",
        "stick", "flag", "fan", "crown", "candied", "charred", "toasted", "sugared", "powdered", "shaved", "thinly", "finely",
    ];

    private static Dictionary<string, T> Table<T>(params (string Words, T Meaning)[] rows)
    {
        var table = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var (words, meaning) in rows)
        {
            foreach (var word in words.Split(' '))
                table.Add(word, meaning);
        }

        return table;
    }
}

/// <summary>One thing done in a method.</summary>
internal enum Doing
{
    Build,
    Stir,
    Shake,
    Throw,
    Muddle,
    Swizzle,
    Blend,
    Layer,
}
