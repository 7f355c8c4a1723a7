using System.Text;

namespace Barshow.Web.Look;

/// <summary>Lets long words of a narrow column break where a reader expects it.</summary>
public static class SoftHyphens
{
    private const char SoftHyphen = '\u00AD';
    private const int ShortestWord = 8, Least = 3;

    // Pairs that are one sound and stay together.
    private static readonly HashSet<string> Pairs = ["bl", "br", "ch", "cl", "cr", "dr", "fl", "fr", "gl", "gr", "ph", "pl", "pr", "sh", "sl", "th", "tr", "wh"];

    /// <summary>The text with soft hyphens before the consonants that open a syllable, in words of eight letters and more.</summary>
    public static string In(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return string.Join(' ', text.Split(' ').Select(word => word.Length < ShortestWord ? word : Broken(word)));
    }

    private static string Broken(string word)
    {
        var broken = new StringBuilder();
        for (var i = 0; i < word.Length; i++)
        {
            if (i >= Least && word.Length - i >= Least && OpensSyllable(word, i))
                broken.Append(SoftHyphen);
            broken.Append(word[i]);
        }

        return broken.ToString();
    }

    private static bool OpensSyllable(string word, int at)
    {
        var isPair = at + 2 < word.Length && Pairs.Contains(word.Substring(at, 2));
        var isSecondOfPair = Pairs.Contains(word.Substring(at - 1, 2));
        return !isSecondOfPair && IsConsonant(word[at]) && !IsConsonant(word[at + (isPair ? 2 : 1)]) && char.IsLetter(word[at - 1]);
    }

    private static bool IsConsonant(char letter) => char.IsLetter(letter) && !"aeiouyAEIOUY".Contains(letter);
}
