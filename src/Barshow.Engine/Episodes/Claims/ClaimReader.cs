using System.Buffers;
using System.Globalization;
using System.Text.RegularExpressions;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Episodes.Claims;

/// <summary>Reads the countable promises of a title.</summary>
/// <remarks>A number (in figures or words up to twenty), at most three words that describe, and what is counted: drinks, bottles, ingredients, minutes.</remarks>
public static partial class ClaimReader
{
    private const int MostWordsBetween = 3;

    private static readonly SearchValues<char> Partings = SearchValues.Create(",:;|.!?–—()");

    private static readonly string[] Numbers =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve",
        "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty",
    ];

    /// <summary>The claims, in the order in which they stand.</summary>
    public static IReadOnlyList<Claim> Read(string title)
    {
        ArgumentNullException.ThrowIfNull(title);
        var words = Word().Matches(title);
        var claims = new List<Claim>();
        for (var i = 0; i < words.Count; i++)
        {
            if (NumberOf(words[i].Value) is not { } number)
                continue;
            for (var j = i + 1; j < words.Count && j <= i + 1 + MostWordsBetween && Together(title, words[i], words[j]); j++)
            {
                if (NumberOf(words[j].Value) is not null)
                    break;
                if (KindOf(words, j) is not { } kind)
                    continue;
                var place = new TextPlace(words[i].Index, words[j].Index + words[j].Length - words[i].Index);
                claims.Add(new(kind, number, place.Of(title), place));
                i = j;
                break;
            }
        }

        return claims;
    }

    // A comma, a colon or a dash with spaces parts one promise from the next.
    private static bool Together(string title, Match first, Match last) =>
        title.AsSpan(first.Index, last.Index - first.Index).IndexOfAny(Partings) < 0;

    private static int? NumberOf(string word) =>
        int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is > 0 and < 1000 ? number
        : Array.FindIndex(Numbers, name => name.Equals(word, StringComparison.OrdinalIgnoreCase)) is > 0 and var index ? index
        : word.Equals("single", StringComparison.OrdinalIgnoreCase) ? 1
        : null;

    private static ClaimKind? KindOf(MatchCollection words, int index) => words[index].Value.ToLowerInvariant() switch
    {
        "drink" or "drinks" or "cocktail" or "cocktails" or "recipes" or "serves" => ClaimKind.Drinks,
        "bottle" or "bottles" => ClaimKind.Bottles,
        // "Three-ingredient drinks" speaks of each; "five ingredients each" does too.
        "ingredient" => ClaimKind.IngredientsEach,
        "ingredients" or "groceries" when Next(words, index) is "each" or "apiece" => ClaimKind.IngredientsEach,
        "ingredients" or "groceries" => ClaimKind.Ingredients,
        "minute" or "minutes" or "min" => ClaimKind.Minutes,
        _ => null,
    };

    private static string? Next(MatchCollection words, int index) => index + 1 < words.Count ? words[index + 1].Value.ToLowerInvariant() : null;

    [GeneratedRegex(@"[\p{L}\p{M}']+|\d+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
