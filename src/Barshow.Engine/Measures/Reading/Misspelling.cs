namespace Barshow.Engine.Measures.Reading;

/// <summary>Slips of the pen.</summary>
internal static class Misspelling
{
    /// <summary>Whether a word becomes another by one letter changed, left out, put in, or two neighbours changed round; case does not matter, equal words are no slip.</summary>
    public static bool IsOneSlipFrom(ReadOnlySpan<char> word, ReadOnlySpan<char> meant)
    {
        if (Math.Abs(word.Length - meant.Length) > 1)
            return false;
        var head = 0;
        while (head < word.Length && head < meant.Length && Same(word[head], meant[head]))
            head++;
        int wordTail = word.Length, meantTail = meant.Length;
        while (wordTail > head && meantTail > head && Same(word[wordTail - 1], meant[meantTail - 1]))
            (wordTail, meantTail) = (wordTail - 1, meantTail - 1);
        return (wordTail - head, meantTail - head) switch
        {
            (1, 1) or (1, 0) or (0, 1) => true,
            (2, 2) => Same(word[head], meant[head + 1]) && Same(word[head + 1], meant[head]),
            _ => false,
        };
    }

    private static bool Same(char a, char b) => a == b || char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
