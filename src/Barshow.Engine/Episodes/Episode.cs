using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Episodes;

/// <summary>One film: its theme, its bottle, its lineup in viewer order and what was promised around it.</summary>
public sealed record Episode
{
    /// <summary>The name it is kept under.</summary>
    public required Slug Slug { get; init; }

    /// <summary>The working title.</summary>
    public required string Title { get; init; }

    /// <summary>What it is about, a sentence.</summary>
    public string Theme { get; init; } = "";

    /// <summary>Its number in the channel's count; null when it is not numbered.</summary>
    public int? Number { get; init; }

    /// <summary>The bottle it is about; null for none.</summary>
    public FeaturedBottle? Bottle { get; init; }

    /// <summary>The day of the shoot; null when it is not fixed.</summary>
    public DateOnly? ShootDate { get; init; }

    /// <summary>When the first take begins, in <see cref="TimeZone"/>; null when it is not fixed.</summary>
    public TimeOnly? CallTime { get; init; }

    /// <summary>The time zone of the shoot, by its IANA name; empty for the house's.</summary>
    public string TimeZone { get; init; } = "";

    /// <summary>The day it is published; null when it is not fixed.</summary>
    public DateOnly? PublishDate { get; init; }

    /// <summary>How many takes a drink gets unless it says otherwise, 1 or more.</summary>
    public int Takes { get; init; } = 1;

    /// <summary>How ounces and millilitres are matched.</summary>
    public Convention Convention { get; init; }

    /// <summary>What the sponsor asks.</summary>
    public SponsorBrief Sponsor { get; init; } = new();

    /// <summary>What was given and must be told.</summary>
    public IReadOnlyList<string> Gifts { get; init; } = [];

    /// <summary>Links the description carries.</summary>
    public IReadOnlyList<Link> Links { get; init; } = [];

    /// <summary>The drinks in viewer order.</summary>
    public IReadOnlyList<LineupDrink> Lineup { get; init; } = [];

    /// <summary>The drinks in the shoot order the user chose; empty to let the planner choose.</summary>
    public IReadOnlyList<Slug> ShootOrder { get; init; } = [];

    /// <summary>How long the film is, in seconds; null until it exists.</summary>
    public double? FilmLengthSeconds { get; init; }

    /// <summary>What was published, oldest first; empty until it is.</summary>
    public IReadOnlyList<Publication> Publications { get; init; } = [];

    /// <summary>Where the film can be seen, a full web address; empty until it is published.</summary>
    public string FilmAddress { get; init; } = "";

    /// <summary>The address of the film's still picture; empty when there is none.</summary>
    public string StillAddress { get; init; } = "";

    /// <summary>The captions of the film as they were given, in whatever format; empty until there are some.</summary>
    public string Captions { get; init; } = "";

    /// <summary>Findings about what was said on film that were accepted or dismissed.</summary>
    public IReadOnlyList<SettledFinding> Settled { get; init; } = [];

    /// <summary>Mise tasks that are done, by their key.</summary>
    public IReadOnlyList<string> Ticked { get; init; } = [];

    /// <summary>The brief it was read from, as it was typed; empty when it was not typed.</summary>
    public string Brief { get; init; } = "";

    /// <summary>How many takes a drink of this lineup gets.</summary>
    public int TakesOf(LineupDrink drink) => Math.Max(1, drink.Takes ?? Takes);
}
