using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Reading.Recipes;

/// <summary>What the reader of pasted recipes has to say.</summary>
internal static class RecipeSentences
{
    public static Finding TooLong() => new(FindingCatalogue.RecipeTooLong, "recipe",
        $"The recipe is longer than {RecipeReader.MostLines} lines or 20,000 characters; what comes after was left out.",
        "Paste the recipe alone, without the page around it.");

    public static Finding WithoutName() => new(FindingCatalogue.RecipeWithoutName, "recipe",
        $"No line gives the drink's name; it is kept as \"{RecipeReader.Nameless}\".",
        "Write its name on the first line.");

    public static Finding WithoutIngredients(string drink) => new(FindingCatalogue.DrinkWithoutLines, drink,
        $"{drink} has no ingredient lines.",
        "Write one ingredient a line under its name, such as \"1 1/2 oz white rum\".")
    { Drink = drink };

    public static Finding WithoutMethod(string drink) => new(FindingCatalogue.FinishMissing, drink,
        $"{drink} does not say how it is made: no line names a method.",
        "Close it with method, glass and garnish: \"Shaken, coupe, lime wheel\".")
    { Drink = drink };

    public static Finding Unknown(string ingredient, string drink, string line) => new(FindingCatalogue.IngredientUnknown, ingredient,
        $"The house does not know \"{ingredient}\" in {drink}: its strength, sugar, acid, allergens and packs count as nothing.",
        "Add it under Ingredients, or name one that is there.")
    { Ingredient = ingredient, Said = ingredient, Place = line.IndexOf(ingredient, StringComparison.OrdinalIgnoreCase) is >= 0 and var at ? new TextPlace(at, ingredient.Length) : null };

    public static Finding DataTooLarge(int bytes) => new(FindingCatalogue.RecipeDataUnreadable, "page",
        $"The page holds {bytes / 1_000_000.0:0.0} MB; pages of up to 2 MB are read.",
        "Paste the recipe's lines instead.");

    public static Finding DataBroken() => new(FindingCatalogue.RecipeDataUnreadable, "page",
        "The page's recipe data is no sound JSON, or is nested too deep, so it was not read.",
        "Paste the recipe's lines instead.");

    public static Finding DataMissing() => new(FindingCatalogue.RecipeDataUnreadable, "page",
        "The page holds no schema.org Recipe as JSON-LD.",
        "Paste the recipe's lines instead.");
}
