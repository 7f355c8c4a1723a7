namespace Barshow.Engine.Findings;

/// <content>Specs: what they hold, how strong they come out, how full the glass is.</content>
public static partial class FindingCatalogue
{
    /// <summary>An ingredient the house does not know.</summary>
    public static FindingKind CompositionUnknown { get; } = new("composition-unknown", Severity.Fix,
        "The house does not know the ingredient or what is in it; in strength, sugar and acid it is counted as nothing.");

    /// <summary>An alcoholic ingredient without a strength.</summary>
    public static FindingKind StrengthUnknown { get; } = new("strength-unknown", Severity.Fix,
        "An alcoholic ingredient has no strength; it is counted as without alcohol, so every strength of the drink comes out too low.");

    /// <summary>An amount that no volume can be made of.</summary>
    public static FindingKind AmountNotCounted { get; } = new("amount-not-counted", Severity.Note,
        "The amount is no volume and none is known for it; the analysis counts it as nothing.");

    /// <summary>No dilution was worked out.</summary>
    public static FindingKind DilutionNotCounted { get; } = new("dilution-not-counted", Severity.Note,
        "No method is given, so the strength after ice was not worked out.");

    /// <summary>No wash line was worked out.</summary>
    public static FindingKind WashLineNotChecked { get; } = new("wash-line-not-checked", Severity.Note,
        "No glass that the bar kit knows is named, so the wash line was not checked.");

    /// <summary>The drink runs over.</summary>
    public static FindingKind WashLineOver { get; } = new("wash-line-over", Severity.Fix,
        "With ice and dilution the drink holds more than the glass to its brim.");

    /// <summary>The drink may run over.</summary>
    public static FindingKind WashLineBrimming { get; } = new("wash-line-brimming", Severity.Note,
        "At the upper end of its dilution the drink holds more than the glass to its brim.");

    /// <summary>The glass looks empty.</summary>
    public static FindingKind WashLineLow { get; } = new("wash-line-low", Severity.Note,
        "Even at the upper end of its dilution the drink stands below three quarters of the wash line.");

    /// <summary>The stated top-up is more than the room that is left.</summary>
    public static FindingKind TopDoesNotFit { get; } = new("top-does-not-fit", Severity.Fix,
        "With the usual ice the stated top-up does not fit below the brim.");

    /// <summary>There is no room to top up.</summary>
    public static FindingKind TopHasNoRoom { get; } = new("top-has-no-room", Severity.Fix,
        "The drink is topped up, but with the usual ice it stands at the wash line before the top-up.");

    /// <summary>A closing line that says nothing.</summary>
    public static FindingKind FinishUnreadable { get; } = new("finish-unreadable", Severity.Fix,
        "The closing line of a drink names no method, glass or garnish that could be understood.");

    /// <summary>A drink without a glass.</summary>
    public static FindingKind GlassMissing { get; } = new("glass-missing", Severity.Fix,
        "The drink names no glass.");

    /// <summary>A glass the bar does not have.</summary>
    public static FindingKind GlassUnknown { get; } = new("glass-unknown", Severity.Fix,
        "The glass of a drink does not stand in the bar kit, so neither its wash line nor its number is known.");

    /// <summary>Alcohol without an amount.</summary>
    public static FindingKind AlcoholAmountMissing { get; } = new("alcohol-amount-missing", Severity.Fix,
        "An alcoholic ingredient has no amount, so strength and standard drinks come out too low.");

    /// <summary>Fizz in the tin.</summary>
    public static FindingKind FizzInTheTin { get; } = new("fizz-in-the-tin", Severity.Fix,
        "A fizzy ingredient stands among the lines that are shaken, stirred, thrown, swizzled or blended.");

    /// <summary>Juice, cream or egg is stirred.</summary>
    public static FindingKind CloudyAndStirred { get; } = new("cloudy-and-stirred", Severity.Note,
        "A stirred drink holds juice, cream or egg, which by custom are shaken.");

    /// <summary>Foam without a dry shake.</summary>
    public static FindingKind FoamWithoutDryShake { get; } = new("foam-without-dry-shake", Severity.Note,
        "A shaken drink holds egg or aquafaba and has no dry shake.");

    /// <summary>A shake that changes nothing more.</summary>
    public static FindingKind ShakenLong { get; } = new("shaken-long", Severity.Note,
        "The shake is over 20 seconds; a drink is as cold as it will be after 12 to 15.");

    /// <summary>A layer heavier than the one below.</summary>
    public static FindingKind LayerSinks { get; } = new("layer-sinks", Severity.Fix,
        "A layered drink pours a heavier liquid on a lighter one, by the densities of its ingredients.");

    /// <summary>An ingredient that stands twice.</summary>
    public static FindingKind IngredientTwice { get; } = new("ingredient-twice", Severity.Note,
        "The same ingredient stands twice among the lines that are used alike.");
}
