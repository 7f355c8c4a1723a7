using System.Globalization;
using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Callouts.Checks;

/// <summary>What a sponsor and givers of gifts are owed, and what the audience is owed of them.</summary>
internal static class SponsorCheck
{
    private const double EnoughOfDisclosure = 0.6;
    private const double EnoughOfPoint = 0.7;

    private static readonly Phrase Paid = new("sponsored|sponsor|sponsors|sponsoring|sponsorship", "paid partnership|promotion|advertisement|for this", "paid us|me|for", "advertisement|advert", "in partnership", "this is an ad");
    private static readonly Phrase Unpaid = new("nobody|no paid|one|sponsor|sponsors", "not sponsored|paid|an", "isn't|isnt sponsored|paid|an", "unpaid");
    private static readonly Phrase Given = new("gave|given|gift|gifted|gifts|giving", "sent us|me|it|this|these|over|the|along|a|by|in", "free", "provided|supplied|donated|lent|loaned|complimentary", "courtesy of", "on the house", "didn't|didnt|not|never pay|paid|buy|bought|for", "thanks|thank to|you", "a present", "kindly");

    public static IEnumerable<Finding> Findings(TaughtFilm film, bool isFilm, List<CheckNotMade> notMade)
    {
        var sheet = film.Sheet;
        var findings = new List<Finding>();
        if (string.IsNullOrWhiteSpace(sheet.Disclosure))
            notMade.Add(new(FindingCatalogue.DisclosureLate.Name, "No disclosure is given."));
        else
            OfDisclosure(film, isFilm, notMade, findings);
        if (sheet.MustSay is null)
            notMade.Add(new(FindingCatalogue.MustSayMissing.Name, "No points to be said are given."));
        foreach (var point in sheet.MustSay ?? [])
        {
            if (SpokenWords.Of(point) is { Count: > 0 } words && SpokenWords.FirstSaid(film.Speech, words, EnoughOfPoint, words.Count * 3 + 12) is null)
                findings.Add(new(FindingCatalogue.MustSayMissing, point, $"The brief asks to say \"{point}\", and it is not said.", $"Record a line that says \"{point}\".") { Expected = point });
        }

        if (sheet.Avoid is null)
            notMade.Add(new(FindingCatalogue.AvoidSaid.Name, "No words to avoid are given."));
        foreach (var word in sheet.Avoid ?? [])
            OfAvoided(film, word, findings);
        if (sheet.Gifts is null)
            notMade.Add(new(FindingCatalogue.GiftUndisclosed.Name, "No gifts are given."));
        foreach (var gift in sheet.Gifts ?? [])
        {
            if (!IsTold(film, gift))
                findings.Add(new(FindingCatalogue.GiftUndisclosed, gift, $"\"{gift}\" was given for this film, and the film never says that it was.", "Record a line near the start that says it was given, or add a lower third where it is first seen.") { Expected = gift });
        }

        return findings;
    }

    private static void OfDisclosure(TaughtFilm film, bool isFilm, List<CheckNotMade> notMade, List<Finding> findings)
    {
        var words = SpokenWords.Of(film.Sheet.Disclosure!);
        var said = SpokenWords.FirstSaid(film.Speech, words, EnoughOfDisclosure, words.Count * 3 + 10) ?? PlainlyPaid(film, words);
        var disclosure = film.Sheet.Disclosure!;
        var limit = film.Sheet.DisclosureBySeconds;
        if (said is not { } token)
        {
            findings.Add(new(FindingCatalogue.DisclosureLate, "disclosure", $"The disclosure \"{disclosure}\" is never said.", limit is { } by ? $"Record it within the first {Seconds(by)}." : "Record it near the start.") { Expected = disclosure });
            return;
        }

        if (limit is null || !isFilm)
            return;
        if (film.Speech.TimeOf(token) is not { } time)
            notMade.Add(new(FindingCatalogue.DisclosureLate.Name, "The captions have no times, so when the disclosure is said is not known."));
        else if (time > limit)
            findings.Add(new(FindingCatalogue.DisclosureLate, "disclosure", $"The disclosure is said at {CheckSentences.Time(time)}, after the first {Seconds(limit.Value)} that the brief asks for.", $"Record it within the first {Seconds(limit.Value)}, or add a lower third there and move the line forward.")
            {
                TimeSeconds = time,
                Said = film.Speech.QuoteSentence(film.Speech.SentenceOf[token]),
                Expected = disclosure,
            });
    }

    // "This film is sponsored by ..." discloses in other words, where it shares a name with the text that was asked for.
    private static int? PlainlyPaid(TaughtFilm film, List<string> words)
    {
        for (var sentence = 0; sentence < film.Speech.Sentences; sentence++)
        {
            var (from, to) = (film.Speech.SentenceStarts[sentence], film.Speech.SentenceStarts[sentence + 1]);
            if (!Paid.IsIn(film.Speech, from, to) || Unpaid.IsIn(film.Speech, from, to))
                continue;
            for (var i = from; i < to; i++)
            {
                if (SpokenWords.Plain(film.Speech.Tokens[i].Word) is { Length: >= 4 } word && words.Contains(word))
                    return from;
            }
        }

        return null;
    }

    private static void OfAvoided(TaughtFilm film, string avoided, List<Finding> findings)
    {
        var words = NameFolding.Fold(avoided).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
            return;
        var tokens = film.Speech.Tokens;
        int? first = null;
        var count = 0;
        for (var i = 0; i + words.Length <= tokens.Count; i++)
        {
            var k = 0;
            while (k < words.Length && IsSame(tokens[i + k].Word, words[k]))
                k++;
            if (k < words.Length)
                continue;
            first ??= i;
            count++;
        }

        if (first is not { } at)
            return;
        var times = count == 1 ? "once" : $"{count.ToString(CultureInfo.InvariantCulture)} times";
        findings.Add(new(FindingCatalogue.AvoidSaid, avoided, $"\"{avoided}\" is said {times}, and the brief asks to avoid it.", "Cut the words or record the line again without them.")
        {
            TimeSeconds = film.Speech.TimeOf(at),
            Said = film.Speech.QuoteSentence(film.Speech.SentenceOf[at]),
        });
    }

    private static bool IsSame(string said, string avoided) =>
        said == avoided || (avoided.Length >= 4 && said.StartsWith(avoided, StringComparison.Ordinal) && said[avoided.Length..] is "s" or "es" or "er" or "est" or "ed" or "ing" or "d" or "ly" or "y");

    // What was given, and near it that it was given.
    private static bool IsTold(TaughtFilm film, string gift)
    {
        var speech = film.Speech;
        var head = gift.Split([" from ", " by ", ","], StringSplitOptions.None)[0];
        var words = SpokenWords.Of(head).Where(word => word is not ("bottl" or "bottle" or "free" or "gift" or "given")).ToHashSet();
        if (words.Count == 0)
            words = [.. SpokenWords.Of(gift)];
        var all = SpokenWords.Of(gift).ToHashSet();
        for (var sentence = 0; sentence < speech.Sentences; sentence++)
        {
            if (!Given.IsIn(speech, speech.SentenceStarts[sentence], speech.SentenceStarts[sentence + 1]))
                continue;
            var (from, to) = (speech.SentenceStarts[Math.Max(0, sentence - 1)], speech.SentenceStarts[Math.Min(speech.Sentences, sentence + 2)]);
            var met = Enumerable.Range(from, to - from).Select(i => SpokenWords.Plain(speech.Tokens[i].Word)).Where(all.Contains).Distinct().ToList();
            if (met.Any(words.Contains) && met.Count >= Math.Min(2, (words.Count + 1) / 2))
                return true;
        }

        return false;
    }

    private static string Seconds(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.#} seconds");
}
