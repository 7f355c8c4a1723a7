namespace Barshow.Engine.Findings;

/// <content>The description, chapters, structured data and what else goes out.</content>
public static partial class FindingCatalogue
{
    /// <summary>No chapters, because no film times are known.</summary>
    public static FindingKind ChaptersWithheld { get; } = new("chapters-withheld", Severity.Note,
        "Chapters are made from film times only. None is known yet, so the chapter list and chapters.vtt are withheld; a plan's minutes are never passed off as film times.");

    /// <summary>Some drinks have a film time and some have none.</summary>
    public static FindingKind ChapterTimeMissing { get; } = new("chapter-time-missing", Severity.Fix,
        "Some drinks of the lineup have a film time and others have none; the chapter list is withheld until it is whole.");

    /// <summary>A film time that no film can have.</summary>
    public static FindingKind FilmTimeImpossible { get; } = new("film-time-impossible", Severity.Fix,
        "A film time below nought, or at or after the end of the film.");

    /// <summary>Fewer chapters than the page accepts.</summary>
    public static FindingKind ChaptersTooFew { get; } = new("chapters-too-few", Severity.Fix,
        "The page reads a chapter list only when it has enough chapters; the number is a setting (common platform practice: 3).");

    /// <summary>A chapter shorter than the page accepts.</summary>
    public static FindingKind ChapterTooShort { get; } = new("chapter-too-short", Severity.Fix,
        "The page refuses the whole list when one chapter is too short; the shortest length is a setting (common platform practice: 10 seconds).");

    /// <summary>A chapter title that will be cut off.</summary>
    public static FindingKind ChapterTitleLong { get; } = new("chapter-title-long", Severity.Note,
        "Pages cut off a long chapter title; the length shown is a setting (common platform practice: 70 characters).");

    /// <summary>The film's length is not known, so the last chapter's length was not checked.</summary>
    public static FindingKind FilmLengthUnknown { get; } = new("film-length-unknown", Severity.Note,
        "Without the film's length the last chapter's length cannot be checked.");

    /// <summary>The first chapter was opened at nought.</summary>
    public static FindingKind ChapterMoved { get; } = new("chapter-moved", Severity.Note,
        "A first drink that starts within the shortest chapter of the beginning opens the list at 0:00, because a list must begin there.");

    /// <summary>The film shows the drinks in another order than the lineup.</summary>
    public static FindingKind FilmOrderDiffers { get; } = new("film-order-differs", Severity.Note,
        "The film times put the drinks in another order than the viewer order.");

    /// <summary>A line of a pasted list of film times that names no drink.</summary>
    public static FindingKind MarkUnmatched { get; } = new("mark-unmatched", Severity.Note,
        "A line of the list of film times has a time and words, but names no drink of the lineup.");

    /// <summary>A drink that no line of a pasted list of film times names.</summary>
    public static FindingKind MarkMissing { get; } = new("mark-missing", Severity.Fix,
        "The list of film times names no time for a drink of the lineup, or none at all.");

    /// <summary>Text that a page would take for a chapter.</summary>
    public static FindingKind LooksLikeChapter { get; } = new("looks-like-chapter", Severity.Fix,
        "Text outside the chapter list reads as a time, such as a clock time or a ratio of 1:15, and a page may take it for a chapter.");

    /// <summary>A slot of the template that no part has, or that stands twice.</summary>
    public static FindingKind TemplateSlotUnknown { get; } = new("template-slot-unknown", Severity.Fix,
        "A slot in braces names no part of a description, or stands a second time; it is left out.");

    /// <summary>A slot the template must have.</summary>
    public static FindingKind TemplateSlotMissing { get; } = new("template-slot-missing", Severity.Note,
        "Disclosure, chapters, recipes, gifts, links and cautions are never left out; where the template has no slot for one, it is added.");

    /// <summary>Text stands before the disclosure.</summary>
    public static FindingKind DisclosureNotFirst { get; } = new("disclosure-not-first", Severity.Fix,
        "Pages show only the first lines of a description; the disclosure belongs there (16 CFR 255.0(f): hard to miss).");

    /// <summary>A sponsor pays and no disclosure is written.</summary>
    public static FindingKind DisclosureUnwritten { get; } = new("disclosure-unwritten", Severity.Fix,
        "A sponsor is named but the disclosure's words are missing; a plain one stands in until they are given.");

    /// <summary>A link that cannot be followed.</summary>
    public static FindingKind LinkUnusable { get; } = new("link-unusable", Severity.Fix,
        "The address of a link is not a full http or https address, so a page does not make it clickable.");

    /// <summary>A part of the description was shortened to fit.</summary>
    public static FindingKind DescriptionShortened { get; } = new("description-shortened", Severity.Note,
        "The description was longer than the page takes and was shortened in the house's order; nothing is shortened in silence.");

    /// <summary>The description does not fit however it is shortened.</summary>
    public static FindingKind DescriptionTooLong { get; } = new("description-too-long", Severity.Stop,
        "The description is longer than the page takes, which would refuse it or cut off the cautions at its end.");

    /// <summary>The title is too long for the page.</summary>
    public static FindingKind TitleTooLong { get; } = new("title-too-long", Severity.Fix,
        "The title is longer than the page takes; the limit is a setting (common platform practice: 100 characters).");

    /// <summary>A line to publish without an amount.</summary>
    public static FindingKind LineWithoutAmount { get; } = new("line-without-amount", Severity.Fix,
        "A line of a recipe to publish has no amount, so viewers cannot measure it.");
}
