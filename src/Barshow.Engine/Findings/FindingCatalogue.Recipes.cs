namespace Barshow.Engine.Findings;

/// <content>Recipes that are pasted or read out of a page.</content>
public static partial class FindingCatalogue
{
    /// <summary>A recipe longer than one that is read.</summary>
    public static FindingKind RecipeTooLong { get; } = new("recipe-too-long", Severity.Stop,
        "A recipe is read up to 20,000 characters and 200 lines; what comes after is left out.");

    /// <summary>A recipe without a name.</summary>
    public static FindingKind RecipeWithoutName { get; } = new("recipe-without-name", Severity.Fix,
        "No line of a pasted recipe gives the drink's name.");

    /// <summary>A page whose recipe cannot be read.</summary>
    public static FindingKind RecipeDataUnreadable { get; } = new("recipe-data-unreadable", Severity.Stop,
        "A page or file holds no schema.org Recipe as JSON-LD, or one that is broken, too large or nested too deep.");
}
