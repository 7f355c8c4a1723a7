using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures.Reading;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Reading.Recipes;

/// <summary>Tells what each line of a pasted recipe is.</summary>
internal static class RecipeLineRoles
{
    private static readonly Dictionary<string, RecipeRole> Keys = new(StringComparer.Ordinal)
    {
        ["name"] = RecipeRole.Name,
        ["drink"] = RecipeRole.Name,
        ["glass"] = RecipeRole.Finish,
        ["glassware"] = RecipeRole.Finish,
        ["garnish"] = RecipeRole.Finish,
        ["method"] = RecipeRole.Finish,
        ["serve"] = RecipeRole.Finish,
        ["directions"] = RecipeRole.Step,
        ["instructions"] = RecipeRole.Step,
        ["preparation"] = RecipeRole.Step,
        ["steps"] = RecipeRole.Step,
        ["how to make it"] = RecipeRole.Step,
        ["source"] = RecipeRole.Source,
        ["from"] = RecipeRole.Source,
        ["note"] = RecipeRole.Note,
        ["notes"] = RecipeRole.Note,
        ["tip"] = RecipeRole.Note,
        ["ingredients"] = RecipeRole.Ingredient,
        ["serves"] = RecipeRole.LeftOut,
        ["servings"] = RecipeRole.LeftOut,
        ["makes"] = RecipeRole.LeftOut,
        ["yield"] = RecipeRole.LeftOut,
        ["prep time"] = RecipeRole.LeftOut,
        ["total time"] = RecipeRole.LeftOut,
        ["cook time"] = RecipeRole.LeftOut,
        ["rating"] = RecipeRole.LeftOut,
    };

    private static readonly HashSet<string> Orders =
    [
        "add", "pour", "put", "place", "combine", "fill", "strain", "double", "fine", "top", "garnish", "serve", "shake", "stir", "build", "muddle", "blend", "swizzle", "layer", "throw", "mix",
        "chill", "rim", "rub", "dip", "in", "into", "using", "float", "express", "gently", "dry", "then", "discard", "finish", "squeeze", "rinse", "repeat", "enjoy",
    ];

    /// <summary>Whether "Glass" in "Glass: coupe" is a key, given folded.</summary>
    public static bool IsKey(string folded) => Keys.ContainsKey(folded);

    /// <summary>The role of each line.</summary>
    public static RecipeRole[] Of(IReadOnlyList<(int Number, string Text)> lines, IngredientShelf shelf, IReadOnlyDictionary<int, RecipeRole>? corrected)
    {
        var roles = new RecipeRole[lines.Count];
        var isNamed = corrected?.Values.Contains(RecipeRole.Name) ?? false;
        var isStep = false;
        for (var i = 0; i < lines.Count; i++)
        {
            var (number, text) = lines[i];
            if (corrected is not null && corrected.TryGetValue(number, out var chosen))
                roles[i] = chosen;
            else if (Heading(text) is { } under)
                (roles[i], isStep) = (RecipeRole.LeftOut, under == RecipeRole.Step);
            else
                roles[i] = Guess(text, shelf, isNamed, isStep, hasBegun: roles.Take(i).Contains(RecipeRole.Ingredient));
            isNamed |= roles[i] == RecipeRole.Name;
        }

        return roles;
    }

    private static RecipeRole Guess(string text, IngredientShelf shelf, bool isNamed, bool isStep, bool hasBegun)
    {
        var key = RecipeText.KeyOf(text);
        if (Keys.TryGetValue(key, out var keyed))
            return keyed == RecipeRole.Finish && key == "method" && RecipeText.IsSentence(RecipeText.AfterKey(text)) ? RecipeRole.Step : keyed;
        var plain = RecipeText.WithoutNumber(text);
        var isNumbered = plain.Length < text.Length;
        if (isStep && !IsIngredient(text))
            return RecipeRole.Step;
        if (FinishReader.LooksLikeFinish(plain))
            return RecipeText.IsSentence(plain) || isNumbered ? RecipeRole.Step : RecipeRole.Finish;
        if (!hasBegun && !isNamed && !IsIngredient(text))
            return RecipeRole.Name;
        if (isNumbered && IsOrder(plain))
            return RecipeRole.Step;
        if (IsIngredient(text))
            return RecipeRole.Ingredient;
        if (IsOrder(plain) || RecipeText.IsSentence(plain))
            return hasBegun ? RecipeRole.Step : RecipeRole.Note;
        return !isNamed && !hasBegun ? RecipeRole.Name : text.Any(char.IsLetter) ? RecipeRole.Ingredient : RecipeRole.LeftOut;

        // "Lime juice" alone is one only where the house knows it; an amount makes one of any name.
        bool IsIngredient(string line) => line.Length <= 160 && LineReader.Read(line) is { } read
            && (read.Measure is not null ? !IsOrder(RecipeText.WithoutNumber(line)) || read.MeasurePlace is { Start: 0 } : hasBegun && read.Name.Length > 0 && shelf.Named(read.Name) is not null);
    }

    private static bool IsOrder(string text) => Orders.Contains(FirstWord(text));

    private static string FirstWord(string text)
    {
        var folded = NameFolding.Fold(text.Length > 40 ? text[..40] : text);
        var end = folded.IndexOf(' ', StringComparison.Ordinal);
        return end < 0 ? folded : folded[..end];
    }

    // "Ingredients", "Method:" and the like alone on a line begin what follows.
    private static RecipeRole? Heading(string text)
    {
        if (text.Length > 26)
            return null;
        return NameFolding.Fold(text.TrimEnd(':')) switch
        {
            "ingredients" or "you will need" or "what you need" => RecipeRole.Ingredient,
            "method" or "directions" or "instructions" or "preparation" or "steps" or "to make" or "how to make it" or "how to make" => RecipeRole.Step,
            _ => null,
        };
    }
}
