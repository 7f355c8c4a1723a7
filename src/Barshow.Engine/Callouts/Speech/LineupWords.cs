using Barshow.Engine.Measures.Reading;

namespace Barshow.Engine.Callouts.Speech;

/// <summary>The ingredient words of a speech, and how well a stretch of it names each line of a lineup.</summary>
internal sealed class LineupWords
{
    private const int ShortestWithOneSlip = 5;
    private const int ShortestWithTwoSlips = 8;

    private readonly List<(int Token, string Word)> _heard = [];
    private readonly int[] _firstAt;
    private readonly HashSet<string> _lineupWords = [];
    private readonly Dictionary<string, string?> _near = [];

    public LineupWords(SpeechText speech, FilmSheet sheet)
    {
        Lines = [.. sheet.Drinks.Select(drink => drink.Lines.Select(line => line.Aliases.Prepend(line.Ingredient).Select(Vocabulary.WordsOf).Where(words => words.Count > 0).ToArray()).ToArray())];
        foreach (var words in Lines.SelectMany(drink => drink).SelectMany(line => line))
            _lineupWords.UnionWith(words);
        Garnishes = [.. sheet.Drinks.Select(drink => Vocabulary.WordsOf(drink.Garnish))];

        var spelled = speech.Tokens.ConvertAll(token => Vocabulary.Spelling(token.Word));
        foreach (var (word, from, length) in Vocabulary.Joined(spelled))
        {
            if (KnownAs(word) is { } known)
                _heard.Add((length > 1 ? from + length - 1 : from, known));
        }

        _firstAt = new int[speech.Tokens.Count + 1];
        var next = 0;
        for (var token = 0; token <= speech.Tokens.Count; token++)
        {
            while (next < _heard.Count && _heard[next].Token < token)
                next++;
            _firstAt[token] = next;
        }
    }

    /// <summary>For each drink and line, the sets of words that name it.</summary>
    public HashSet<string>[][][] Lines { get; }

    public HashSet<string>[] Garnishes { get; }

    /// <summary>Whether a word names an ingredient, one of the lineup's or any.</summary>
    public bool IsIngredient(int token) => token + 1 < _firstAt.Length && token >= 0 && _firstAt[token + 1] > _firstAt[token];

    /// <summary>The ingredient words from one word up to another.</summary>
    public ReadOnlySpan<(int Token, string Word)> Heard(int from, int to) =>
        from >= to ? [] : System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_heard)[_firstAt[Math.Max(0, from)].._firstAt[Math.Min(to, _firstAt.Length - 1)]];

    /// <summary>How well a stretch names a line, from -1 (it names something else) to 1.</summary>
    /// <param name="drink">The drink, by its place in the lineup.</param>
    /// <param name="line">The line, by its place in the drink.</param>
    /// <param name="heard">The words.</param>
    /// <param name="isPhrase">Whether the stretch names one thing, so that a word that does not fit counts against it.</param>
    public double Match(int drink, int line, ReadOnlySpan<(int Token, string Word)> heard, bool isPhrase)
    {
        if (heard.IsEmpty)
            return 0;
        var best = double.NegativeInfinity;
        foreach (var words in Lines[drink][line])
            best = Math.Max(best, Match(words, heard, isPhrase));
        return double.IsNegativeInfinity(best) ? 0 : best;
    }

    private static double Match(HashSet<string> words, ReadOnlySpan<(int Token, string Word)> heard, bool isPhrase)
    {
        double total = 0, met = 0, against = 0;
        foreach (var word in words)
        {
            var weight = Weight(word);
            total += weight;
            foreach (var (_, said) in heard)
            {
                if (said == word)
                {
                    met += weight;
                    break;
                }

                if (Vocabulary.KindOf(said).Contains(word))
                {
                    met += 0.6 * weight;
                    break;
                }
            }
        }

        foreach (var (_, said) in heard)
        {
            if (!words.Contains(said) && !Vocabulary.KindOf(said).Any(words.Contains))
                against += Weight(said);
        }

        if (met == 0)
            return isPhrase && against > 0 ? -Math.Min(1, against) : 0;

        // The word that tells most need not be all there is: "lime" is lime juice, "the bitter" red bitter aperitif.
        var share = met / total;
        var named = Math.Min(1, 0.35 + (0.65 * share)) * (met >= 0.6 ? 1 : 0.75);
        return isPhrase ? Math.Max(-1, named - (0.8 * against)) : named - Math.Min(0.25, 0.1 * against);
    }

    private static double Weight(string word) => Vocabulary.WeightOf(word) is > 0 and var weight ? weight : 1;

    private string? KnownAs(string word)
    {
        if (_lineupWords.Contains(word) || Vocabulary.WeightOf(word) > 0 || Vocabulary.KindOf(word).Count > 0)
            return word;
        if (word.Length > 3 && word[^1] == 's' && _lineupWords.Contains(word[..^1]))
            return word[..^1];
        if (_lineupWords.Contains(word + "s"))
            return word + "s";
        if (word.Length < ShortestWithOneSlip || char.IsDigit(word[0]))
            return null;
        if (_near.TryGetValue(word, out var near))
            return near;
        return _near[word] = _lineupWords.Where(candidate => IsNear(word, candidate)).OrderBy(candidate => Math.Abs(candidate.Length - word.Length)).ThenBy(candidate => candidate, StringComparer.Ordinal).FirstOrDefault();
    }

    /// <summary>Whether a word is a misspelling of another: one slip in five letters or more, two in eight.</summary>
    public static bool IsNear(string word, string meant)
    {
        if (meant.Length < ShortestWithOneSlip || word[0] != meant[0] && meant.Length < 6)
            return false;
        return Misspelling.IsOneSlipFrom(word, meant) || (meant.Length >= ShortestWithTwoSlips && word.Length >= ShortestWithTwoSlips - 1 && SlipsBetween(word, meant) <= 2);
    }

    private static int SlipsBetween(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > 2 || a.Length > 40 || b.Length > 40)
            return 3;
        Span<int> row = stackalloc int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
            row[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            var corner = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var change = corner + (a[i - 1] == b[j - 1] ? 0 : 1);
                corner = row[j];
                row[j] = Math.Min(change, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
