using System.Globalization;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>What the brief reader has to say.</summary>
internal static class BriefFindings
{
    public static Finding Empty() => new(FindingCatalogue.BriefEmpty, "brief",
        "The brief is empty.",
        "Begin with a title, then the bottle, then a blank line and the first drink.")
    { Line = 1 };

    public static Finding TooLong(int line, string limit) => new(FindingCatalogue.BriefTooLong, "brief",
        $"The brief is longer than {limit}; nothing from line {Number(line)} on was used.",
        "Split it into two episodes, or take out what is not a drink.")
    { Line = line };

    public static Finding NotText(int line, int count) => new(FindingCatalogue.BriefNotText, "brief",
        count == 1
            ? $"Line {Number(line)} holds characters that are no text and was left out."
            : $"{Number(count)} lines from line {Number(line)} on hold characters that are no text and were left out.",
        "Save the brief as plain text in UTF-8.")
    { Line = line };

    public static Finding WithoutSigns(int line) => new(FindingCatalogue.ReadingRepaired, "brief",
        $"Line {Number(line)} holds control signs that are no text and was read without them.",
        "Look whether it was read as you meant it.")
    { Line = line };

    public static Finding NotUtf8(int line) => new(FindingCatalogue.ReadingRepaired, "brief",
        $"From line {Number(line)} on the file is no UTF-8; it was read as Western European text (Latin-1).",
        "Save the brief as plain text in UTF-8.")
    { Line = line };

    public static Finding JsonBroken(int line, string what) => new(FindingCatalogue.BriefJsonBroken, "brief",
        $"The JSON cannot be read on line {Number(line)}: {what}",
        "Mend it there; what stood before it was used.")
    { Line = line };

    public static Finding KeyUnknown(BriefKey key) => new(FindingCatalogue.BriefKeyUnknown, key.Key,
        $"\"{BriefKeys.Typed(key.Key)}:\" is no key of a brief; line {Number(key.Line)} was left out.",
        $"Use one of: {BriefKeys.HeaderList}.")
    { Line = key.Line, Said = key.Value };

    public static Finding NoKey(BriefText text) => new(FindingCatalogue.BriefKeyUnknown, "brief",
        $"Line {Number(text.Line)} stands under the title and is no key with a value; it was left out.",
        "Put a blank line before the first drink, and write the rest as \"Key: value\".")
    { Line = text.Line, Said = Short(text.Text) };

    public static Finding KeyTwice(BriefKey key, int first) => new(FindingCatalogue.BriefKeyTwice, key.Key,
        $"\"{BriefKeys.Typed(key.Key)}:\" is given on lines {Number(first)} and {Number(key.Line)}; the first is used.",
        "Keep one of them.")
    { Line = key.Line, Said = key.Value };

    public static Finding Unreadable(BriefKey key, string expected, string? drink = null) => new(FindingCatalogue.BriefValueUnreadable, key.Key,
        $"\"{Short(key.Value)}\" after \"{BriefKeys.Typed(key.Key)}\" on line {Number(key.Line)} cannot be understood and was left out.",
        $"Write it like this: {expected}.")
    { Line = key.Line, Said = Short(key.Value), Drink = drink };

    public static Finding BottleWithoutSize(string bottle, int line) => new(FindingCatalogue.BottleSizeMissing, bottle,
        $"The bottle of {bottle} has no size, so \"one bottle\" cannot be checked.",
        $"Write the size on its label: \"Bottle: {bottle}, 700 ml, 40%\".")
    { Line = line, Ingredient = bottle };

    public static Finding BottleSize(string bottle, string size, int line) => new(FindingCatalogue.BottleSizeImpossible, bottle,
        $"A bottle of {bottle} cannot hold {size}; the size was left out.",
        "Write the size on its label, 20 ml to 20 l.")
    { Line = line, Ingredient = bottle, Said = size };

    public static Finding NoDrinks(int line) => new(FindingCatalogue.NoDrinks, "lineup",
        "The brief names no drink.",
        "After a blank line write the drink's name, its ingredient lines, then its method, glass and garnish.")
    { Line = line };

    public static Finding WithoutLines(string drink, int line) => new(FindingCatalogue.DrinkWithoutLines, drink,
        $"{drink} on line {Number(line)} has no ingredient lines.",
        "Write one ingredient a line under its name, such as \"1 1/2 oz white rum\".")
    { Line = line, Drink = drink };

    public static Finding Twice(string drink, int first, int second) => new(FindingCatalogue.DrinkTwice, drink,
        $"{drink} stands twice, on lines {Number(first)} and {Number(second)}; the first is used.",
        "Give the second a name of its own, or take it out.")
    { Line = second, Drink = drink };

    public static Finding WithoutFinish(string drink, int line) => new(FindingCatalogue.FinishMissing, drink,
        $"{drink} does not say how it is made: no line names a method.",
        "Close it with method, glass and garnish: \"Shaken, coupe, lime wheel\".")
    { Line = line, Drink = drink };

    public static Finding Unknown(string ingredient, string drink, int line) => new(FindingCatalogue.IngredientUnknown, ingredient,
        $"The house does not know \"{ingredient}\" in {drink}: its strength, sugar, acid, allergens and packs count as nothing.",
        "Add it under Ingredients, or name one that is there.")
    { Line = line, Drink = drink, Ingredient = ingredient };

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Short(string text) => text.Length <= 80 ? text : text[..79] + "…";
}
