namespace Barshow.Engine.Findings;

/// <content>The featured log.</content>
public static partial class FindingCatalogue
{
    /// <summary>The same drink was shown, and not long enough ago.</summary>
    public static FindingKind FeaturedTooSoon { get; } = new("featured-too-soon", Severity.Fix,
        "The same drink was shown within the house's remake gap.");

    /// <summary>The same drink was shown, long enough ago.</summary>
    public static FindingKind FeaturedBefore { get; } = new("featured-before", Severity.Note,
        "The same drink was shown before, longer ago than the house's remake gap.");

    /// <summary>A close relative was shown.</summary>
    public static FindingKind RelativeFeatured { get; } = new("relative-featured", Severity.Note,
        "A drink built alike was shown within the house's remake gap: other base, other citrus, or a rim beside none.");

    /// <summary>Whether a drink was shown before could not be checked.</summary>
    public static FindingKind FeaturedNotChecked { get; } = new("featured-not-checked", Severity.Note,
        "The featured log is empty, so whether a drink was shown before was not checked.");
}
