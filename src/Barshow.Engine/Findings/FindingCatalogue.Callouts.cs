namespace Barshow.Engine.Findings;

/// <content>Captions, and what was said on film against the spec and the brief.</content>
public static partial class FindingCatalogue
{
    /// <summary>A caption file longer than one that is read.</summary>
    public static FindingKind CaptionsTooLarge { get; } = new("captions-too-large", Severity.Stop,
        "A caption file is read up to 10 MB; what comes after is left out.");

    /// <summary>A caption file without speech.</summary>
    public static FindingKind CaptionsEmpty { get; } = new("captions-empty", Severity.Stop,
        "The caption file holds no speech, so nothing can be checked against it.");

    /// <summary>Something in a caption file that its format does not allow was read all the same.</summary>
    public static FindingKind CaptionsTolerated { get; } = new("captions-tolerated", Severity.Note,
        "The caption file departs from its format and was read as it is likely meant; each departure is said once with its first line.");

    /// <summary>A cue whose times cannot be read.</summary>
    public static FindingKind CueUnreadable { get; } = new("cue-unreadable", Severity.Fix,
        "The times of a cue cannot be read, so its words are not checked.");

    /// <summary>An amount said on film that is not the spec's.</summary>
    public static FindingKind DiffersFromSpec { get; } = new("differs-from-spec", Severity.Stop,
        "The amount said on film differs from the spec by more than 3 %, or is another number of the same thing.");

    /// <summary>A line of a spec whose amount is never said.</summary>
    public static FindingKind NotSaid { get; } = new("not-said", Severity.Fix,
        "The film teaches the drink and never says the amount of one of its lines.");

    /// <summary>A line said in one unit only.</summary>
    public static FindingKind OneUnitOnly { get; } = new("one-unit-only", Severity.Fix,
        "An amount is said in ounces or in millilitres and nowhere in both.");

    /// <summary>An amount of something that the spec does not have.</summary>
    public static FindingKind NotInSpec { get; } = new("not-in-spec", Severity.Fix,
        "The film pours something that the drink's spec does not list.");

    /// <summary>Something promised on film that the description does not carry.</summary>
    public static FindingKind PromiseOpen { get; } = new("promise-open", Severity.Fix,
        "A link, a recipe or another film is promised on film and not to be found in the description.");

    /// <summary>The disclosure comes late or not at all.</summary>
    public static FindingKind DisclosureLate { get; } = new("disclosure-late", Severity.Stop,
        "The sponsor's disclosure is not said by the time the brief asks for (16 CFR 255: clear and hard to miss, heard as well as read).");

    /// <summary>A point of the sponsor brief that is not said.</summary>
    public static FindingKind MustSayMissing { get; } = new("must-say-missing", Severity.Fix,
        "A point that the sponsor brief asks for is not said.");

    /// <summary>A word that the sponsor brief asks to avoid is said.</summary>
    public static FindingKind AvoidSaid { get; } = new("avoid-said", Severity.Fix,
        "A word or phrase that the sponsor brief asks to avoid is said.");

    /// <summary>A gift that is not told.</summary>
    public static FindingKind GiftUndisclosed { get; } = new("gift-undisclosed", Severity.Stop,
        "Something was given for the film and the film does not say so (16 CFR 255.5: free goods are a material connection).");

    /// <summary>A caution that neither the film nor the description gives.</summary>
    public static FindingKind CautionMissing { get; } = new("caution-missing", Severity.Fix,
        "A drink holds an allergen, raw egg, fire or another hazard and neither film nor description cautions of it.");
}
