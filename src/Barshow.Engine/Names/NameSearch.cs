namespace Barshow.Engine.Names;

/// <summary>Finds names by what a person types: begun, in another order, without accents, or a little misspelled.</summary>
public static class NameSearch
{
    // No misspelling is longer than a few letters, so a longer word costs nothing more to compare.
    private const int LongestWord = 40;

    /// <summary>How well a thing's names answer what was typed; lower is better, null is not at all.</summary>
    /// <param name="typed">What was typed, folded by <see cref="NameFolding.Fold"/>; empty answers everything.</param>
    /// <param name="names">The names, folded, one a line.</param>
    public static int? Rank(string typed, string names)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(names);
        if (typed.Length == 0)
            return 0;
        int? best = null;
        foreach (var line in names.AsSpan().Split('\n'))
        {
            if (RankOne(typed, names.AsSpan(line)) is { } rank && (best is null || rank < best))
                best = rank;
        }

        return best;
    }

    private static int? RankOne(ReadOnlySpan<char> typed, ReadOnlySpan<char> name)
    {
        if (name.StartsWith(typed, StringComparison.Ordinal))
            return name.Length == typed.Length ? 0 : 1;
        var slips = 0;
        var begun = true;
        foreach (var word in typed.Split(' '))
        {
            if (Slips(typed[word], name) is not { } fewest)
                return name.Contains(typed, StringComparison.Ordinal) ? 3 : null;
            slips += fewest;
            begun &= fewest == 0;
        }

        return begun ? 2 : name.Contains(typed, StringComparison.Ordinal) ? 3 : 3 + slips;
    }

    // The fewest slips of the pen between a typed word and the beginning of any word of the name; null when there are too many.
    private static int? Slips(ReadOnlySpan<char> typed, ReadOnlySpan<char> name)
    {
        int? fewest = null;
        var allowed = typed.Length switch { < 4 => 0, < 8 => 1, _ => 2 };
        foreach (var range in name.Split(' '))
        {
            var word = name[range];
            if (word.StartsWith(typed, StringComparison.Ordinal))
                return 0;
            if (allowed > 0 && typed.Length <= LongestWord && word.Length + allowed >= typed.Length && SlipsToBeginning(typed, word, allowed) is var slips && slips <= allowed && (fewest is null || slips < fewest))
                fewest = slips;
        }

        return fewest;
    }

    // Levenshtein's distance with neighbours swapped as one slip (the restricted form), to the nearest beginning of the word.
    private static int SlipsToBeginning(ReadOnlySpan<char> typed, ReadOnlySpan<char> word, int allowed)
    {
        word = word[..Math.Min(word.Length, typed.Length + allowed)];
        Span<int> twoBack = stackalloc int[LongestWord + 4];
        Span<int> back = stackalloc int[LongestWord + 4];
        Span<int> row = stackalloc int[LongestWord + 4];
        for (var column = 0; column <= word.Length; column++)
            back[column] = column;
        for (var line = 1; line <= typed.Length; line++)
        {
            row[0] = line;
            var least = line;
            for (var column = 1; column <= word.Length; column++)
            {
                var change = back[column - 1] + (typed[line - 1] == word[column - 1] ? 0 : 1);
                var slips = Math.Min(change, Math.Min(back[column], row[column - 1]) + 1);
                if (line > 1 && column > 1 && typed[line - 1] == word[column - 2] && typed[line - 2] == word[column - 1])
                    slips = Math.Min(slips, twoBack[column - 2] + 1);
                row[column] = slips;
                least = Math.Min(least, slips);
            }

            if (least > allowed)
                return least;
            var spare = twoBack;
            twoBack = back;
            back = row;
            row = spare;
        }

        var nearest = int.MaxValue;
        for (var column = Math.Max(0, typed.Length - allowed); column <= word.Length; column++)
            nearest = Math.Min(nearest, back[column]);
        return nearest;
    }
}
