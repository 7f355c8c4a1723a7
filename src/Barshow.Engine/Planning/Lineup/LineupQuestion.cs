using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>What a lineup is chosen for, one level after the other.</summary>
public enum Aim
{
    /// <summary>The least cost of the viewer's basket; the fewest packs where prices are missing.</summary>
    Cost,

    /// <summary>The most different families, methods, glasses and flavour tags.</summary>
    Variety,

    /// <summary>The drinks featured longest ago, or never.</summary>
    Freshness,

    /// <summary>The fewest minutes of making and of house preps.</summary>
    Effort,
}

/// <summary>What a floor counts.</summary>
public enum FloorOn
{
    /// <summary>The method, by its printed name: "stirred".</summary>
    Method,

    /// <summary>The glass, by its slug.</summary>
    Glass,

    /// <summary>A flavour tag.</summary>
    Tag,

    /// <summary>The family.</summary>
    Family,
}

/// <summary>At least so many drinks of a kind.</summary>
/// <param name="On">What is counted.</param>
/// <param name="Value">Its name; letters' case does not matter.</param>
/// <param name="AtLeast">How many, 1 or more.</param>
public sealed record Floor(FloorOn On, string Value, int AtLeast);

/// <summary>Which drinks a lineup is to be chosen from, what it must keep to, and what it is best for.</summary>
public sealed record LineupQuestion
{
    /// <summary>The house's settings, ingredients and kit.</summary>
    public required Bar Bar { get; init; }

    /// <summary>The drinks to choose from; of two with one slug the first counts.</summary>
    public required IReadOnlyList<Spec> Catalogue { get; init; }

    /// <summary>How many drinks, 1 or more.</summary>
    public required int Count { get; init; }

    /// <summary>The featured bottle; null for none.</summary>
    public FeaturedBottle? Bottle { get; init; }

    /// <summary>Whether every drink must pour the bottle.</summary>
    public bool BottleInEvery { get; init; } = true;

    /// <summary>Whether a drink may pour the bottle in place of its base, where its spec allows that.</summary>
    public bool BaseSwaps { get; init; }

    /// <summary>Whether a drink may be in once only, whatever it is called: two that the featured log would take for the same drink are not both chosen.</summary>
    public bool NoTwoAlike { get; init; } = true;

    /// <summary>Whether one bottle must carry the viewer's lineup, each drink once.</summary>
    public bool OneBottleAtHome { get; init; } = true;

    /// <summary>The most bottles the shoot may pour; null for no limit.</summary>
    public int? ShootBottles { get; init; }

    /// <summary>Takes of each drink, for the shoot's budget, 1 or more.</summary>
    public int Takes { get; init; } = 1;

    /// <summary>How ounces and millilitres are matched.</summary>
    public Measures.Convention Convention { get; init; }

    /// <summary>Drinks that must be in.</summary>
    public IReadOnlyList<Slug> MustHave { get; init; } = [];

    /// <summary>Drinks that must not be in.</summary>
    public IReadOnlyList<Slug> LeaveOut { get; init; } = [];

    /// <summary>Ingredients that no drink may need.</summary>
    public IReadOnlyList<Slug> Without { get; init; } = [];

    /// <summary>When each drink was last featured; a drink that never was is not in it.</summary>
    public IReadOnlyDictionary<Slug, DateOnly> LastFeatured { get; init; } = new Dictionary<Slug, DateOnly>();

    /// <summary>The day of publication, from which freshness is counted; null when it is not fixed.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>How many months must have passed since a drink was featured; null for no such requirement.</summary>
    public int? FreshMonths { get; init; }

    /// <summary>The most drinks of any one family; null for no cap. Drinks without a family are not capped.</summary>
    public int? MostOfAFamily { get; init; }

    /// <summary>Floors for methods, glasses, flavour tags and families.</summary>
    public IReadOnlyList<Floor> Floors { get; init; } = [];

    /// <summary>At least so many drinks without alcohol.</summary>
    public int AlcoholFree { get; init; }

    /// <summary>Whether the kit's glasses must go round.</summary>
    public bool GlassStock { get; init; }

    /// <summary>How often a glass can be used in one day, washed in between. Common practice, no source: 3.</summary>
    public int GlassRounds { get; init; } = 3;

    /// <summary>Whether the kit must hold the tools each drink is made with.</summary>
    public bool ToolStock { get; init; }

    /// <summary>The most the viewer's basket may cost; null for no limit.</summary>
    public decimal? MostMoney { get; init; }

    /// <summary>The most different things a viewer may have to buy; null for no limit.</summary>
    public int? MostThings { get; init; }

    /// <summary>The aims, most important first; one that is missing is not aimed at.</summary>
    public IReadOnlyList<Aim> Aims { get; init; } = [Aim.Cost, Aim.Variety, Aim.Freshness, Aim.Effort];

    /// <summary>How much work the solver may spend on one level, in its own deterministic seconds; the same limit gives the same answer on any machine.</summary>
    public double WorkLimit { get; init; } = 20;
}
