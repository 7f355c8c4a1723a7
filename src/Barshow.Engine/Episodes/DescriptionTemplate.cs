namespace Barshow.Engine.Episodes;

/// <summary>A part of the description that is written from the episode.</summary>
public enum DescriptionPart
{
    /// <summary>Who paid or gave; always first.</summary>
    Disclosure,

    /// <summary>What the film is, in a line or two.</summary>
    Hook,

    /// <summary>The chapter list.</summary>
    Chapters,

    /// <summary>Every drink, every measured line in both units.</summary>
    Recipes,

    /// <summary>House preps, scaled for one drink and for all.</summary>
    MakeAhead,

    /// <summary>What will do instead, and what must not.</summary>
    StandIns,

    /// <summary>The viewer's shopping list and basket ladder.</summary>
    Shopping,

    /// <summary>Answers to what viewers keep asking.</summary>
    Questions,

    /// <summary>Tools and what will do instead.</summary>
    Tools,

    /// <summary>Links that were promised.</summary>
    Links,

    /// <summary>What was given.</summary>
    Gifts,

    /// <summary>Drinks that were featured before.</summary>
    Earlier,

    /// <summary>Allergens, strength and other cautions.</summary>
    Cautions,

    /// <summary>Sources and thanks.</summary>
    Credits,
}

/// <summary>How a house's descriptions are laid out, with the texts that are its own.</summary>
public sealed record DescriptionTemplate
{
    /// <summary>The template a house starts with.</summary>
    public static DescriptionTemplate Default { get; } = new();

    /// <summary>
    /// The layout: own text with slots in braces, "{recipes}", each named like its part in lower case with hyphens.
    /// A paragraph (lines between blank lines) whose slots all come out empty is left out with its heading.
    /// </summary>
    public string Text { get; init; } = string.Join('\n',
        "{disclosure}",
        "{hook}",
        "",
        "Chapters",
        "{chapters}",
        "",
        "Recipes",
        "{recipes}",
        "",
        "Make ahead",
        "{make-ahead}",
        "",
        "Instead",
        "{stand-ins}",
        "",
        "Shopping, to make each drink once",
        "{shopping}",
        "",
        "Often asked",
        "{questions}",
        "",
        "Tools",
        "{tools}",
        "",
        "Links",
        "{links}",
        "",
        "Gifts",
        "{gifts}",
        "",
        "Shown before",
        "{earlier}",
        "",
        "{credits}",
        "",
        "Cautions",
        "{cautions}");

    /// <summary>What is said at the end of every description; empty for nothing.</summary>
    public string Credits { get; init; } = "";

    /// <summary>
    /// What is shortened first when the description is too long, in this order: each part first to its short form, then each left out.
    /// Disclosure, hook, chapters, recipes, gifts, links and cautions are never shortened, whether they stand here or not.
    /// </summary>
    public IReadOnlyList<DescriptionPart> ShortenFirst { get; init; } =
    [
        DescriptionPart.Credits,
        DescriptionPart.Questions,
        DescriptionPart.Earlier,
        DescriptionPart.Tools,
        DescriptionPart.StandIns,
        DescriptionPart.Shopping,
        DescriptionPart.MakeAhead,
    ];

    /// <summary>The name a part's slot has: "make-ahead".</summary>
    public static string SlotOf(DescriptionPart part) => part switch
    {
        DescriptionPart.MakeAhead => "make-ahead",
        DescriptionPart.StandIns => "stand-ins",
        _ => part.ToString().ToLowerInvariant(),
    };

    /// <summary>Whether a part may be shortened at all.</summary>
    public static bool MayShorten(DescriptionPart part) => part is
        DescriptionPart.MakeAhead or DescriptionPart.StandIns or DescriptionPart.Shopping
        or DescriptionPart.Questions or DescriptionPart.Tools or DescriptionPart.Earlier or DescriptionPart.Credits;
}
