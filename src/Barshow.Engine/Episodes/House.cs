using Barshow.Engine.Measures;

namespace Barshow.Engine.Episodes;

/// <summary>Which unit stands first wherever both are shown.</summary>
public enum UnitOrder
{
    /// <summary>1½ oz · 45 ml.</summary>
    OuncesFirst,

    /// <summary>45 ml · 1½ oz.</summary>
    MillilitresFirst,
}

/// <summary>Where a standard drink is counted.</summary>
public enum DrinkRegion
{
    /// <summary>United States, 14 g of ethanol.</summary>
    UnitedStates,

    /// <summary>Australia, 10 g.</summary>
    Australia,

    /// <summary>New Zealand, 10 g.</summary>
    NewZealand,

    /// <summary>United Kingdom, 10 ml.</summary>
    UnitedKingdom,

    /// <summary>Ireland, 10 g.</summary>
    Ireland,

    /// <summary>Canada, 17.05 ml.</summary>
    Canada,
}

/// <summary>The limits of a publishing page; every host has its own, so they are settings.</summary>
public sealed record PublishingLimits
{
    /// <summary>The longest description, in UTF-8 bytes. Common platform practice: 5,000.</summary>
    public int DescriptionBytes { get; init; } = 5000;

    /// <summary>The longest title, in characters.</summary>
    public int TitleCharacters { get; init; } = 100;

    /// <summary>The fewest chapters a list may have.</summary>
    public int FewestChapters { get; init; } = 3;

    /// <summary>The shortest chapter, in seconds.</summary>
    public int ShortestChapterSeconds { get; init; } = 10;

    /// <summary>The longest title of a chapter that is shown whole, in characters. Common platform practice: 70.</summary>
    public int ChapterTitleCharacters { get; init; } = 70;
}

/// <summary>The settings of a house.</summary>
public sealed record House
{
    /// <summary>The name of the bar or channel.</summary>
    public string Name { get; init; } = "My bar";

    /// <summary>Who presents.</summary>
    public string Presenter { get; init; } = "";

    /// <summary>Where the audience is, as a region code: "US", "UK", "AU".</summary>
    public string AudienceRegion { get; init; } = "US";

    /// <summary>Which unit stands first.</summary>
    public UnitOrder UnitOrder { get; init; }

    /// <summary>How ounces and millilitres are matched in a new episode.</summary>
    public Convention Convention { get; init; }

    /// <summary>What dash, barspoon, splash and drop hold here.</summary>
    public BarSizes BarSizes { get; init; } = BarSizes.Default;

    /// <summary>What is spilt, as a share of what is poured. Common practice, no source: 3 %.</summary>
    public double SpillShare { get; init; } = 0.03;

    /// <summary>How many times each drink is made in rehearsal before the day.</summary>
    public int RehearsalsPerDrink { get; init; }

    /// <summary>The currency of prices, a code of three letters.</summary>
    public string Currency { get; init; } = "USD";

    /// <summary>The time zone of the house, by its IANA name.</summary>
    public string TimeZone { get; init; } = "UTC";

    /// <summary>Where standard drinks are counted.</summary>
    public DrinkRegion DrinkRegion { get; init; }

    /// <summary>The limits of the publishing page.</summary>
    public PublishingLimits Limits { get; init; } = new();

    /// <summary>How descriptions are laid out.</summary>
    public DescriptionTemplate Description { get; init; } = DescriptionTemplate.Default;

    /// <summary>How many months must pass before a drink is featured again. A house rule, 12 to begin with.</summary>
    public int RemakeMonths { get; init; } = 12;

    /// <summary>How many pairs of hands prepare the shoot, 1 or more.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>The base address of pages the maker hosts; empty when there is none.</summary>
    public string SiteAddress { get; init; } = "";
}
