using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Callouts.Checks;

/// <summary>What is promised on film and must be found in the description: links, recipes, other films.</summary>
internal static class PromiseCheck
{
    private static readonly Phrase Promising = new(
        "in the description", "in|from the description|info|about box", "description box|below", "linked below|down|in|above|here|to|for|it", "link below|down|in|is|to|for", "links below|down|in|are|to|for", "down below", "in the show notes", "in the notes below", "below this film|video", "i'll|ill|we'll|well|i will|we will link|post|leave", "will link|post|leave|put the|it|a|that|them|you|both|all|my|our", "is|are|it's|its|i've|we've|i|we|have put|left|linked below|a|the|it|them|there|for", "i'll|ill|we'll put|drop|leave a|the|it|that|them|you", "under|beneath this|the film|video", "on the card|screen up|above");

    private static readonly Phrase Placed = new("description", "below", "link|linked|links", "show notes", "the card", "under this film|video", "comments|comment");

    private static readonly Phrase Negated = new("no|isn't|isnt|not|never|without link|linked|links|a", "there is no|not", "not in the");

    private static readonly HashSet<string> Generic =
    [
        "link", "links", "linked", "linking", "description", "below", "down", "box", "page", "pages", "step", "steps", "video", "film", "films", "videos", "everything", "full", "recipe", "recipes", "list", "leave", "leaving", "put", "post", "drop", "find", "see", "check", "click", "want", "need", "know", "more", "detail", "details", "always", "usual", "there", "show", "notes", "ill", "well",
        "spec", "specs", "measurement", "measurements", "amount", "amounts", "both", "unit", "units", "one", "two", "read", "watch", "look", "go", "get", "thing", "things", "like", "every", "each", "write", "written", "wrote", "made", "make", "making", "whole", "place", "above", "card", "corner", "screen", "instead", "now", "then", "where", "how", "why", "when", "ever", "never", "before", "after", "again", "dont", "worry", "as", "let", "lets", "time", "use", "used", "using", "printed", "print", "will", "under", "about", "still", "own", "give", "given", "it's", "thats", "theres", "you'll", "we'll", "i've", "weve", "next", "last", "another", "separate", "entire", "dedicated", "right", "up", "out", "over", "into", "exact", "first", "second", "if", "someone", "yourself", "today", "drink", "drinks", "here", "comments", "comment",
    ];

    private static readonly HashSet<string> Recipes = ["recipe", "recipes", "spec", "specs", "measurement", "measurements", "amounts", "ingredients", "list", "everything", "details"];

    public static IEnumerable<Finding> Findings(TaughtFilm film, List<CheckNotMade> notMade)
    {
        if (film.Sheet.Description is not { } description)
        {
            notMade.Add(new(FindingCatalogue.PromiseOpen.Name, "No description is given."));
            return [];
        }

        var findings = new List<Finding>();
        var carried = SpokenWords.Of(description).ToHashSet();
        var hasLink = description.Contains("http://", StringComparison.OrdinalIgnoreCase) || description.Contains("https://", StringComparison.OrdinalIgnoreCase) || description.Contains("www.", StringComparison.OrdinalIgnoreCase);
        var speech = film.Speech;
        var told = new HashSet<string>();
        for (var sentence = 0; sentence < speech.Sentences; sentence++)
        {
            var (from, to) = (speech.SentenceStarts[sentence], speech.SentenceStarts[sentence + 1]);
            if (Promising.FirstIn(speech, from, to) is not { } promise || !Placed.IsIn(speech, from, to) || Negated.IsIn(speech, from, to))
                continue;
            var (subject, isRecipe) = Subject(film, sentence, promise.From);
            if (IsKept(film, subject, isRecipe, carried, description, hasLink) || !told.Add(string.Join(' ', subject.Order(StringComparer.Ordinal))))
                continue;
            var quote = speech.QuoteSentence(sentence);
            findings.Add(new(FindingCatalogue.PromiseOpen, quote, $"\"{quote}\" promises what the description does not carry.", isRecipe ? "Add the recipe to the description." : "Add the link to the description.")
            {
                TimeSeconds = speech.TimeOf(promise.From),
                Said = quote,
            });
        }

        return findings;
    }

    // What is promised: the words of the clause that tell; where it has none, those of what was said just before.
    private static (HashSet<string> Words, bool IsRecipe) Subject(TaughtFilm film, int sentence, int at)
    {
        var speech = film.Speech;
        var (from, to) = (speech.SentenceStarts[sentence], speech.SentenceStarts[sentence + 1]);
        var isRecipe = Enumerable.Range(from, to - from).Any(i => Recipes.Contains(speech.Tokens[i].Word)) && !Enumerable.Range(from, to - from).Any(i => speech.Tokens[i].Word is "link" or "linked" or "links");
        var clause = at;
        while (clause > from && speech.Tokens[clause - 1].Pause == Pause.None)
            clause--;
        var end = at;
        while (end < to && speech.Tokens[end].Pause == Pause.None)
            end++;
        var words = Telling(speech, clause, Math.Min(to, end + 1));
        if (words.Count == 0)
            words = Telling(speech, from, to);
        if (words.Count == 0 && !isRecipe && sentence > 0)
            words = Telling(speech, speech.SentenceStarts[Math.Max(0, sentence - 2)], from);
        return (words, isRecipe);
    }

    private static HashSet<string> Telling(SpeechText speech, int from, int to)
    {
        var telling = new HashSet<string>();
        for (var i = from; i < to; i++)
        {
            var word = speech.Tokens[i].Word;
            if (word.Length >= 3 && !SpokenWords.IsSmall(word) && !Generic.Contains(word) && !char.IsDigit(SpokenWords.Plain(word)[0]))
                telling.Add(SpokenWords.Plain(word));
        }

        return telling;
    }

    private static bool IsKept(TaughtFilm film, HashSet<string> subject, bool isRecipe, HashSet<string> carried, string description, bool hasLink)
    {
        var met = subject.Count(carried.Contains);
        if (isRecipe)
        {
            var folded = NameFolding.Fold(description);
            return (subject.Count > 0 && met * 2 >= subject.Count) || film.Sheet.Drinks.Any(drink => folded.Contains(NameFolding.Fold(drink.Name), StringComparison.Ordinal)) && film.Sheet.Drinks.Count > 0;
        }

        return hasLink && (subject.Count == 0 || met * 2 >= subject.Count || (subject.Count > 4 && met >= 2));
    }
}
