namespace Barshow.Engine.Findings;

/// <content>Reading a brief.</content>
public static partial class FindingCatalogue
{
    /// <summary>A brief with nothing in it.</summary>
    public static FindingKind BriefEmpty { get; } = new("brief-empty", Severity.Stop,
        "The brief holds no title and no drink, so there is nothing to plan.");

    /// <summary>A brief that is longer than one that is read.</summary>
    public static FindingKind BriefTooLong { get; } = new("brief-too-long", Severity.Stop,
        "A brief is read up to 256 kB, 60 drinks and 40 lines a drink; what comes after is left out.");

    /// <summary>Lines that hold no text.</summary>
    public static FindingKind BriefNotText { get; } = new("brief-not-text", Severity.Stop,
        "Lines that hold control characters or bytes that are no text are left out.");

    /// <summary>A brief in JSON that cannot be read.</summary>
    public static FindingKind BriefJsonBroken { get; } = new("brief-json-broken", Severity.Stop,
        "The brief begins as JSON and does not go on as JSON, or holds something else than the brief's own members.");

    /// <summary>A key that a brief does not have.</summary>
    public static FindingKind BriefKeyUnknown { get; } = new("brief-key-unknown", Severity.Fix,
        "The line has the form of a key and a value, but no such key is known; it is left out.");

    /// <summary>A key given twice that can be given once.</summary>
    public static FindingKind BriefKeyTwice { get; } = new("brief-key-twice", Severity.Fix,
        "A key that has one value is given twice; the first is used.");

    /// <summary>A value that cannot be understood.</summary>
    public static FindingKind BriefValueUnreadable { get; } = new("brief-value-unreadable", Severity.Fix,
        "The value of a key could not be understood: a date, a time, a number, an address.");

    /// <summary>The featured bottle without a size.</summary>
    public static FindingKind BottleSizeMissing { get; } = new("bottle-size-missing", Severity.Fix,
        "The bottle's size is not given, so whether one bottle is enough cannot be checked.");

    /// <summary>The featured bottle has a size that no bottle has.</summary>
    public static FindingKind BottleSizeImpossible { get; } = new("bottle-size-impossible", Severity.Stop,
        "The bottle's size is nought, below nought or beyond any bottle.");

    /// <summary>No drink in the brief.</summary>
    public static FindingKind NoDrinks { get; } = new("no-drinks", Severity.Stop,
        "The episode has no drink yet.");

    /// <summary>A drink without ingredient lines.</summary>
    public static FindingKind DrinkWithoutLines { get; } = new("drink-without-lines", Severity.Stop,
        "The drink has a name and no ingredient, so nothing about it can be computed.");

    /// <summary>The same drink twice in one lineup.</summary>
    public static FindingKind DrinkTwice { get; } = new("drink-twice", Severity.Fix,
        "The same name stands twice in the lineup; the first is used.");

    /// <summary>A drink without its closing line.</summary>
    public static FindingKind FinishMissing { get; } = new("finish-missing", Severity.Fix,
        "The drink's last line names no method, so dilution, glass and garnish are not known.");
}
