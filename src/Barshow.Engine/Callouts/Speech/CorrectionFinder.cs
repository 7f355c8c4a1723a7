using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts.Speech;

/// <summary>Finds what is taken back on camera: "an ounce, sorry, an ounce and a half"; "earlier I said half, it is three quarters".</summary>
/// <param name="speech">The speech.</param>
/// <param name="words">Its ingredient words.</param>
/// <param name="names">The first words of drinks' names, in order: past another drink's name nothing is taken back at once.</param>
internal sealed class CorrectionFinder(SpeechText speech, LineupWords words, IReadOnlyList<int> names)
{
    private const int MostWordsBetween = 24;

    private static readonly Phrase Strong = new(
        "make that", "make it", "i mean", "i meant", "scratch that", "strike that", "correction", "no wait", "wait no", "no no", "let me correct", "correct myself|that", "i misspoke", "misspoke", "my mistake", "my bad", "sorry", "oops", "whoops", "excuse me", "pardon me", "beg your pardon", "i beg your",
        "hang on", "hold on", "what am i saying", "that's|thats wrong|not right", "that is|was wrong", "got that wrong", "or rather", "i should say", "should say", "should be", "should have been|said", "that's|thats not right", "not that", "i lied", "wrong one|number|side|end", "wait a", "i take that back", "try that again");

    private static readonly Phrase Weak = new("no", "wait", "actually", "rather", "well", "nope");

    private static readonly Phrase Late = new(
        "should have been|said", "should be", "correction", "misspoke", "got that|it wrong", "i was wrong", "let me correct", "correct myself|something|that", "wrong number|amount|earlier", "said earlier|before", "earlier i said", "i said", "i told you", "i meant", "one thing to fix", "that was wrong", "mistake", "not what i said", "fix that|something", "i need to|must correct");

    private static readonly Phrase Quoting = new("i said", "said earlier", "i told you", "earlier i said", "i called it", "i think i said", "i may have said", "you heard me say", "i poured", "not");

    private static readonly Phrase AsSaid = new("as|like i said|told", "as|like we said", "as before", "said as");

    /// <summary>Marks the amounts that are retracted at once, and those that correct what was said long before.</summary>
    public void Mark(IReadOnlyList<SpokenAmount> amounts)
    {
        for (var k = 0; k < amounts.Count; k++)
        {
            var amount = amounts[k];
            if (k + 1 < amounts.Count && IsTakenBackBy(amount, amounts[k + 1]))
            {
                amount.Retracted = true;
                continue;
            }

            var sentence = speech.SentenceOf[amount.From];
            var from = speech.SentenceStarts[sentence];
            var to = speech.SentenceStarts[sentence + 1];
            var before = sentence > 0 ? speech.SentenceStarts[sentence - 1] : from;
            var isLate = Late.IsIn(speech, before, to) && !AsSaid.IsIn(speech, before, to);
            if (!isLate)
                continue;
            if (Quoting.LastIn(speech, from, amount.From) is { } quote && amount.From - quote.To <= 4 && !AsSaid.IsIn(speech, from, amount.From))
                (amount.QuotesEarlier, amount.Mention) = (true, true);
            else if (!amount.Mention || Late.LastIn(speech, from, amount.From) is not null)
                (amount.CorrectsEarlier, amount.Mention) = (true, false);
        }
    }

    private bool IsTakenBackBy(SpokenAmount first, SpokenAmount second)
    {
        if (first.Mention || second.From - first.To > MostWordsBetween || speech.SentenceOf[second.From] - speech.SentenceOf[first.From] > 2 || !IsOfOneKind(first, second))
            return false;

        if (IsNameBetween(first.To, second.From))
            return false;

        // "Sorry" and what follows it takes back only what it stands near, and only when no other thing is poured meanwhile.
        var strong = Strong.LastIn(speech, first.To, second.From);
        var weak = Weak.LastIn(speech, first.To, second.From);
        if (strong is null && weak is null)
            return false;
        var (named, other) = (Named(first.To, second.From), Named(second.To, Math.Min(speech.SentenceEnd(second.From), second.To + 4)));
        if (other.Count > 0 && named.Count > 0 && !other.Overlaps(named))
            return false;
        if (strong is { } phrase && second.From - phrase.To <= 8)
            return speech.Tokens[phrase.From].Word is not ("sorry" or "excuse" or "oops" or "whoops") || second.From - phrase.To <= 5 || other.Count == 0;
        if (weak is not { } near || second.From - near.To > 2)
            return false;
        return near.From - first.To <= 1 || (near.From - first.To <= 5 && speech.Tokens[near.From].Word is "no" or "wait" or "actually" or "nope");
    }

    private bool IsNameBetween(int from, int to)
    {
        int low = 0, high = names.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (names[middle] < from)
                low = middle + 1;
            else
                high = middle;
        }

        return low < names.Count && names[low] < to;
    }

    private static bool IsOfOneKind(SpokenAmount first, SpokenAmount second)
    {
        if (first.HasVolume && second.HasVolume)
            return true;
        return first.Counted?.Unit == second.Counted?.Unit || (IsSmall(first) && IsSmall(second)) || (first.HasVolume && IsSpoon(second)) || (IsSpoon(first) && second.HasVolume);
    }

    private static bool IsSmall(SpokenAmount amount) => amount.Counted?.Unit is { } unit && (unit == Unit.Dash || unit == Unit.Drop || unit == Unit.Leaf || unit == Unit.Sprig);

    private static bool IsSpoon(SpokenAmount amount) => amount.Counted?.Unit is { Kind: UnitKind.Volume or UnitKind.Bar };

    private HashSet<string> Named(int from, int to)
    {
        var named = new HashSet<string>();
        foreach (var (_, word) in words.Heard(from, to))
            named.Add(word);
        return named;
    }
}
