using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Reading;

/// <summary>Reads what finishes a drink: "lime wheel", "three coffee beans", "lemon twist or olive", "mint sprig and grated nutmeg".</summary>
public static class GarnishReader
{
    /// <summary>Reads the phrases of a garnish, one for each comma.</summary>
    /// <param name="phrases">What was written, without "garnish".</param>
    /// <param name="shelf">The ingredients the house knows.</param>
    /// <returns>The garnish; null when the phrases hold no word.</returns>
    public static Garnish? Read(IReadOnlyList<string> phrases, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(phrases);
        ArgumentNullException.ThrowIfNull(shelf);
        var choices = phrases.Select(phrase => SplitAt(phrase, " or ")).Where(choice => choice.Length > 0).ToArray();
        if (choices.Length == 0)
            return null;
        var pieces = choices.SelectMany(choice => SplitAtAnd(choice[0], shelf)).Select(text => ReadOne(text, shelf)).ToArray();
        return pieces[0] with
        {
            Text = Joined([.. pieces.Select(piece => piece.Text)]),
            Beside = pieces[1..],
            Instead = [.. choices.SelectMany(choice => choice[1..]).Select(text => ReadOne(text, shelf))],
        };
    }

    /// <summary>Whether a garnish is a rim of the glass, and not something that sits on one: "salt rim", not "lime wheel on the rim".</summary>
    public static bool IsRim(string text)
    {
        var words = NameFolding.Fold(text).Split(' ');
        var rim = Array.IndexOf(words, "rim");
        return rim >= 0 && !words.Take(rim).Any(word => word is "on" or "from" or "over");
    }

    // "Mint" is a sprig and no whole bunch, "lime" a cut and no whole fruit, unless a number says otherwise; "olive" is one olive.
    private static bool CountsWhole(Ingredient? ingredient, List<string> words) => ingredient is not null
        && (ingredient.Kind is not (IngredientKind.Herb or IngredientKind.Fruit or IngredientKind.Vegetable) || words.Exists(word => char.IsAsciiDigit(word[0]) || FinishWords.Numbers.ContainsKey(word)));

    private static string Joined(string[] texts) => texts.Length < 2 ? texts[0] : string.Join(", ", texts[..^1]) + " and " + texts[^1];

    private static string[] SplitAt(string text, string word) =>
        text.Split(word, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    // "salt and pepper rim" is one thing when the house knows it so, or when the cut stands only at the end.
    private static string[] SplitAtAnd(string text, IngredientShelf shelf)
    {
        var parts = text.Split([" and ", " & ", " plus "], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return parts.Length < 2 || parts.All(part => ReadOne(part, shelf) is { Ingredient.IsEmpty: false } or { Measure: not null }) ? parts.Length == 0 ? [text] : parts : [text];
    }

    private static Garnish ReadOne(string text, IngredientShelf shelf)
    {
        var words = FoldedWord.Of(text, new TextPlace(0, text.Length)).ConvertAll(word => word.Text);
        var cut = words.Select(word => FinishWords.Cuts.GetValueOrDefault(word)).LastOrDefault(found => found is not null);
        var ingredient = IngredientOf(text, words, shelf);
        var leftover = words.Exists(word => word is "spent" or "shell" or "hull" or "husk");
        var count = CountOf(words);
        var uncounted = words.Exists(word => word is "grated" or "dusting" or "dust" or "ground") || IsRim(text);
        return new(text)
        {
            Ingredient = ingredient?.Slug ?? default,
            FromLeftovers = leftover,
            Measure = uncounted || leftover || (cut is null && !CountsWhole(ingredient, words)) ? null
                : words.Contains("half") && cut is not null ? Measure.Of(count * new Rational(1, 2), cut)
                : Measure.Of(count, cut),
        };
    }

    private static Ingredient? IngredientOf(string text, List<string> words, IngredientShelf shelf)
    {
        if (shelf.Named(text) is { } whole)
            return whole;
        var plain = words.FindAll(word => !FinishWords.Cuts.ContainsKey(word) && !FinishWords.Numbers.ContainsKey(word) && !word.All(char.IsAsciiDigit));
        if (shelf.Named(string.Join(' ', plain)) is { } named)
            return named;
        plain.RemoveAll(FinishWords.Treatments.Contains);
        for (var from = 0; from < plain.Count; from++)
        {
            for (var to = plain.Count; to > from; to--)
            {
                if (shelf.Named(string.Join(' ', plain[from..to])) is { } part)
                    return part;
            }
        }

        return null;
    }

    private static Rational CountOf(List<string> words)
    {
        foreach (var word in words)
        {
            if (int.TryParse(word, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var digits) && digits is > 0 and < 1000)
                return digits;
            if (FinishWords.Numbers.TryGetValue(word, out var number))
                return number;
        }

        return 1;
    }
}
