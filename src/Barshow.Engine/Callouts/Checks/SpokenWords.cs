using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Measures.Reading;
using Barshow.Engine.Names;

namespace Barshow.Engine.Callouts.Checks;

/// <summary>The words of a point to be made, and whether the speech makes it.</summary>
internal static class SpokenWords
{
    private static readonly HashSet<string> Small =
    [
        "a", "an", "the", "and", "or", "of", "to", "in", "on", "at", "is", "are", "was", "were", "be", "been", "it", "its", "this", "that", "these", "those", "we", "i", "you", "our", "my", "your", "they", "he", "she", "for", "from", "with", "by", "as", "so", "if", "but", "do", "does", "did", "has", "have", "had", "will", "would",
        "can", "could", "us", "me", "him", "her", "them", "there", "here", "who", "what", "which", "all", "any", "some", "no", "not", "very", "just", "also", "too", "s", "im", "ive", "were", "weve", "thats", "ml", "oz",
    ];

    private static readonly string[] Numbers = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"];
    private static readonly string[] Tens = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    /// <summary>The words of a text that carry its meaning, in their plainest form.</summary>
    public static List<string> Of(string text) => [.. NameFolding.Fold(text.Replace("%", " percent ", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(word => !Small.Contains(word)).Select(Plain)];

    public static bool IsSmall(string word) => Small.Contains(word);

    /// <summary>A word without its ending, and a number word as figures.</summary>
    public static string Plain(string word)
    {
        var number = Array.IndexOf(Numbers, word);
        if (number >= 0)
            return number.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var ten = Array.IndexOf(Tens, word);
        if (ten >= 0)
            return ((ten + 2) * 10).ToString(System.Globalization.CultureInfo.InvariantCulture);
        foreach (var (ending, least) in new[] { ("ies", 5), ("ing", 6), ("ed", 5), ("es", 5), ("s", 4), ("er", 6), ("ly", 6), ("e", 5) })
        {
            if (word.Length >= least && word.EndsWith(ending, StringComparison.Ordinal) && !word.EndsWith("ss", StringComparison.Ordinal))
                return word[..^ending.Length];
        }

        return word;
    }

    /// <summary>The first word of the first stretch that says enough of a point; null when none does.</summary>
    /// <param name="speech">The speech.</param>
    /// <param name="point">The point's words, from <see cref="Of"/>.</param>
    /// <param name="share">How much of the words must be said, 0 to 1.</param>
    /// <param name="room">Within how many words of speech.</param>
    public static int? FirstSaid(SpeechText speech, List<string> point, double share, int room)
    {
        var wanted = point.Distinct().ToList();
        if (wanted.Count == 0)
            return null;
        var need = Math.Max(1, (int)Math.Ceiling((wanted.Count * share) - 1e-9));
        var hits = new List<(int Token, int Word)>();
        for (var i = 0; i < speech.Tokens.Count; i++)
        {
            var word = Plain(speech.Tokens[i].Word);
            var at = wanted.FindIndex(candidate => candidate == word || (candidate.Length >= 6 && word.Length >= 5 && Misspelling.IsOneSlipFrom(word, candidate)));
            if (at >= 0)
                hits.Add((i, at));
        }

        var counts = new int[wanted.Count];
        var distinct = 0;
        var from = 0;
        for (var to = 0; to < hits.Count; to++)
        {
            if (counts[hits[to].Word]++ == 0)
                distinct++;
            while (hits[to].Token - hits[from].Token > room)
            {
                if (--counts[hits[from].Word] == 0)
                    distinct--;
                from++;
            }

            if (distinct >= need)
                return hits[from].Token;
        }

        return null;
    }
}
