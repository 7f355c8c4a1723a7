namespace Barshow.Engine.Findings;

/// <content>Preparing and filming: the mise list, the running order, the as-poured log.</content>
public static partial class FindingCatalogue
{
    /// <summary>A drink is filmed after a prep in it has lost its looks.</summary>
    public static FindingKind FreshWindowClosed { get; } = new("fresh-window-closed", Severity.Fix,
        "A drink is filmed after a house prep or pressed juice in it has lost its looks, or before it has rested, and no order or further batch avoids it.");

    /// <summary>The opener is not first or the closer not last.</summary>
    public static FindingKind PinNotKept { get; } = new("pin-not-kept", Severity.Fix,
        "The drink pinned as opener is not filmed first, or the closer not last, because another rule stands against it.");

    /// <summary>Two drinks to be compared are not filmed side by side.</summary>
    public static FindingKind PairParted { get; } = new("pair-parted", Severity.Fix,
        "Two drinks that are to be compared are not filmed one straight after the other.");

    /// <summary>Clean glasses run out.</summary>
    public static FindingKind GlassShort { get; } = new("glass-short", Severity.Fix,
        "More glasses of a kind are used between two wash-ups than the bar has.");

    /// <summary>A chilled drink is shown in a glass that has not been back in the freezer.</summary>
    public static FindingKind GlassWarm { get; } = new("glass-warm", Severity.Fix,
        "A drink that is served chilled is filmed before its washed glasses are cold again.");

    /// <summary>A stretch of work is too long.</summary>
    public static FindingKind BreakLate { get; } = new("break-late", Severity.Fix,
        "A stretch of work is longer than the house allows without a break or a meal.");

    /// <summary>The day runs over.</summary>
    public static FindingKind WrapLate { get; } = new("wrap-late", Severity.Fix,
        "The day ends later than the hour the user gave.");

    /// <summary>A prep is made again during the day.</summary>
    public static FindingKind FurtherBatch { get; } = new("further-batch", Severity.Note,
        "A house prep or juice is made again during the day, because the first batch loses its looks before the last drink with it is filmed.");

    /// <summary>A drink needs more glasses than there are, so it is interrupted for a wash-up.</summary>
    public static FindingKind WashWithinDrink { get; } = new("wash-within-drink", Severity.Note,
        "One drink's takes and doubles need more glasses of a kind than the bar has, so its takes are interrupted for a wash-up.");

    /// <summary>The number of glasses is not known.</summary>
    public static FindingKind GlassCountUnknown { get; } = new("glass-count-unknown", Severity.Note,
        "The glass of a drink is not named or not counted, so whether clean glasses run out was not checked.");

    /// <summary>A drink that another is to stand beside is not in the lineup.</summary>
    public static FindingKind PairUnknown { get; } = new("pair-unknown", Severity.Fix,
        "A drink is to be filmed beside one that the lineup does not hold.");

    /// <summary>Two drinks claim one end of the day.</summary>
    public static FindingKind PinTwice { get; } = new("pin-twice", Severity.Fix,
        "Two drinks are pinned as the opener, or two as the closer; only one of them can be.");

    /// <summary>The user's own order costs something.</summary>
    public static FindingKind OrderOverridden { get; } = new("order-overridden", Severity.Note,
        "The shoot order is the user's own; what it costs beside the planner's order is said.");

    /// <summary>The user's own order leaves drinks out.</summary>
    public static FindingKind OrderIncomplete { get; } = new("order-incomplete", Severity.Fix,
        "The shoot order the user chose leaves out drinks of the lineup or names others.");

    /// <summary>No better order was found, but none was ruled out.</summary>
    public static FindingKind PlanUnproven { get; } = new("plan-unproven", Severity.Note,
        "The solver stopped before it proved that no plan is better; value and bound are shown.");

    /// <summary>There is nothing to plan.</summary>
    public static FindingKind NothingToShoot { get; } = new("nothing-to-shoot", Severity.Fix,
        "The lineup is empty, so there is no shoot day to plan.");

    /// <summary>No plan was found.</summary>
    public static FindingKind PlanNotMade { get; } = new("plan-not-made", Severity.Fix,
        "The planner was stopped, or its effort ran out, before it found any plan.");

    /// <summary>The call is not fixed.</summary>
    public static FindingKind CallNotFixed { get; } = new("call-not-fixed", Severity.Note,
        "The call time is not fixed, so every hour is counted from the call.");

    /// <summary>A mise task cannot be done in its window.</summary>
    public static FindingKind MiseWindowMissed { get; } = new("mise-window-missed", Severity.Fix,
        "A mise task cannot be done between its earliest and its latest hour with the hands and the equipment there are.");

    /// <summary>A tool is missing.</summary>
    public static FindingKind ToolMissing { get; } = new("tool-missing", Severity.Fix,
        "A drink's method or straining needs a tool that the bar's kit does not list.");

    /// <summary>A straw in a drink with a rim.</summary>
    public static FindingKind StrawWithRim { get; } = new("straw-with-rim", Severity.Note,
        "A drink with a rim is served with a straw, so that nobody tastes the rim.");

    /// <summary>There is more tasted than a day can stand.</summary>
    public static FindingKind TastingLoad { get; } = new("tasting-load", Severity.Note,
        "How many standard drinks the takes of the day pour and how many the presenter's sips come to, with the usual caution.");

    /// <summary>The tasting load could not be computed.</summary>
    public static FindingKind TastingLoadUnknown { get; } = new("tasting-load-unknown", Severity.Note,
        "The strength of an ingredient is not known, so the tasting load may be higher than shown.");

    /// <summary>Two neighbours in viewer order are alike.</summary>
    public static FindingKind NeighboursAlike { get; } = new("neighbours-alike", Severity.Note,
        "Two drinks that follow one another for viewers share method and glass, or a family, in every order.");

    /// <summary>What was poured differs from the spec.</summary>
    public static FindingKind PouredDiffers { get; } = new("poured-differs", Severity.Fix,
        "An amount that was poured in the good take differs from the spec's.");

    /// <summary>Something else was poured.</summary>
    public static FindingKind PouredSwapped { get; } = new("poured-swapped", Severity.Fix,
        "Another ingredient than the spec's was poured in the good take.");

    /// <summary>Something more was poured.</summary>
    public static FindingKind PouredAdded { get; } = new("poured-added", Severity.Fix,
        "A line that the spec does not hold was poured in the good take.");

    /// <summary>Two amounts for one line of one take.</summary>
    public static FindingKind PouredTwice { get; } = new("poured-twice", Severity.Fix,
        "Two devices logged different amounts for one line of one take.");

    /// <summary>No good take is logged.</summary>
    public static FindingKind NoGoodTake { get; } = new("no-good-take", Severity.Note,
        "No take of a drink is logged as good, so what was poured was compared with the last take, or not at all.");
}
