using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;

namespace Barshow.Engine.Measures.Reading;

/// <summary>The words that ingredient lines and bar talk are read by, in the spellings of every English.</summary>
internal static partial class Lexicon
{
    private static readonly FrozenDictionary<string, Lexeme> Words = Build().ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, Lexeme>.AlternateLookup<ReadOnlySpan<char>> ByText = Words.GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>Longer words are in no lexicon.</summary>
    private const int Longest = 16;

    /// <summary>What is known of a word, in whatever case.</summary>
    public static Lexeme? Find(ReadOnlySpan<char> word) =>
        word.Length <= Longest && ByText.TryGetValue(word, out var lexeme) ? lexeme : null;

    /// <summary>The unit that a person would take a misspelt word for: one letter wrong, missing, too many or two changed round in a spelled-out unit.</summary>
    public static bool TryNearestUnit(ReadOnlySpan<char> word, [NotNullWhen(true)] out Lexeme? unit)
    {
        unit = null;
        return !OwnWords.Contains(word) && TryNearest(word, SpelledUnits, out unit);
    }

    // Words of food and drink that are one slip from a unit and mean themselves.
    private static readonly FrozenSet<string>.AlternateLookup<ReadOnlySpan<char>> OwnWords = new[]
    {
        "spice", "spices", "stock", "stocks", "spring", "springs", "rinds", "shoots", "short", "shorts", "ports", "loaves", "peonies", "corns", "points", "prints",
        "paints", "grills", "stripe", "stripes", "pasts", "lifter", "later", "sprits", "dishes", "sashes", "lashes", "ponies", "wheat", "stew", "chunky", "cubed", "sliced", "cures",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>The number word that a person would take a misspelt word for.</summary>
    public static bool TryNearestNumber(ReadOnlySpan<char> word, [NotNullWhen(true)] out Lexeme? number) => TryNearest(word, SpelledNumbers, out number);

    private static bool TryNearest(ReadOnlySpan<char> word, FrozenDictionary<char, Lexeme[]> spelled, [NotNullWhen(true)] out Lexeme? nearest)
    {
        nearest = null;
        if (word.Length is < 3 or > Longest || !spelled.TryGetValue(char.ToLowerInvariant(word[0]), out var candidates))
            return false;
        foreach (var candidate in candidates)
        {
            if (!Misspelling.IsOneSlipFrom(word, candidate.Word))
                continue;
            nearest = candidate;
            return true;
        }

        return false;
    }

    private static readonly FrozenDictionary<char, Lexeme[]> SpelledUnits = ByFirstLetter(lexeme =>
        lexeme.Unit is not null && lexeme.Word.Length >= 5 && (lexeme.UnitUse & UnitUse.Misspelt) == 0);

    private static readonly FrozenDictionary<char, Lexeme[]> SpelledNumbers = ByFirstLetter(lexeme =>
        (lexeme.Cardinal is not null || lexeme.Share is not null) && lexeme.Word.Length >= 3);

    private static FrozenDictionary<char, Lexeme[]> ByFirstLetter(Func<Lexeme, bool> wanted) =>
        Words.Values.Where(wanted).OrderBy(lexeme => lexeme.Word, StringComparer.Ordinal).GroupBy(lexeme => lexeme.Word[0]).ToFrozenDictionary(group => group.Key, group => group.ToArray());

    private static Dictionary<string, Lexeme> Build()
    {
        var words = new Dictionary<string, Lexeme>(StringComparer.OrdinalIgnoreCase);
        AddNumbers(words);
        AddUnits(words);
        AddRoles(words);
        return words;
    }

    /// <summary>Adds what a word means to what it already means.</summary>
    private static void Add(Dictionary<string, Lexeme> words, string spellings, Func<Lexeme, Lexeme> meaning)
    {
        foreach (var word in spellings.Split(' '))
            words[word] = meaning(words.GetValueOrDefault(word) ?? new Lexeme { Word = word });
    }
}
