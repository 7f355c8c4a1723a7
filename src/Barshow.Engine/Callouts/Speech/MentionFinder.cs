namespace Barshow.Engine.Callouts.Speech;

/// <summary>Tells amounts that are only spoken of from amounts that are poured: a source's, an alternative, an invitation, a recap, a conversion.</summary>
internal sealed class MentionFinder(SpeechText speech, LineupWords words)
{
    private const int WordsBefore = 22;
    private const int WordsAfter = 12;
    private const int MostSentencesOfRecap = 8;

    // After one of these it is this presenter who pours, whatever was told before in the sentence.
    private static readonly Phrase Ours = new(
        "but|however|though|whereas", "i|we use|pour|go|do|put|take|like|make|have|prefer|want|keep|add|start|give|need", "i'm|im|we're|were using|going|pouring|doing|putting|taking|adding|keeping|giving", "i am|are using|going|pouring|doing",
        "we are using|going|pouring|doing|putting", "mine|ours is|has|takes|gets|uses", "in ours|mine", "for ours|mine|us", "my|our spec|version|recipe", "today|tonight", "ill|i'll|we'll|well use|pour|go|do|put|take|make|add", "so here|for|we", "in this one|house|film|bar", "this one gets|takes|has|is");

    private static readonly Phrase SourceBefore = new(
        "the old book|books|recipe|spec", "an old book|recipe", "old books|recipes", "the book|books|recipe|spec says|say|has|have|calls|call|asks|wants|gives|had|called|asked|prints|reads|lists", "the original|originals", "original recipe|spec|version|calls|called|had|was|used", "the official", "the classic recipe|spec|version|calls|has|is|uses", "the standard recipe|spec",
        "usually|normally|typically|often has|have|is|calls|called|gets|get|use|uses|take|takes|made|see|poured|comes|made|served|goes", "traditionally|classically|originally|historically|officially", "the first printed|written|published", "first printed", "in the nineteen|eighteen|twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties|old|1920s|1930s|1950s|1960s|1970s|1980s|1990s|1800s|19th|early|late",
        "back in|then", "used to be|use|pour|have|take|call|make|put|add|go|do|get", "most|some|many|other|lots|plenty|certain|older|modern people|bars|bartenders|recipes|books|places|folks|versions|menus|of", "most places|books|recipes|bars", "a lot|lots of", "other people|bars|recipes|books|bartenders|versions", "some say|use|pour|people|will|would|like|go|do",
        "others use|say|pour|go|like|do|will", "everyone|everybody|someone|somebody|people else|says|use|uses|pour|pours|will|ask|asks|tell|tells|go|do|like", "you'll|youll|you see|find|read", "i|i've|ive|we've|you've have|seen|read|tasted|had|heard", "i once|used|learned|learnt|was|saw|tried|tested|worked", "we tried|tested|used|started", "they call|use|used|pour|poured|serve|served|say|ask|put|went|go",
        "my|his|her grandmother|grandfather|mother|father|friend|old|mum|dad|aunt|uncle|teacher|boss", "last week|time|year|month|film|episode|season|summer|winter", "next week|time|film|episode", "recipe says|calls|called|asks|has|wants", "according to", "calls|called|asks|asked for", "the source", "the version|versions", "the hotel|bar where|that|in", "elsewhere", "in london|paris|havana|italy|france|the states", "he|she used|poured|wrote|put|says|said|has|had|called|calls|liked", "compared to|with", "than the");

    private static readonly Phrase AlternativeBefore = new(
        "you can|could|may|might|can't", "feel free", "go ahead", "be my guest", "by all means", "as much as", "up to", "as high|low|far as", "down to", "or use|try|go|take|make|even|you|maybe|do|swap", "instead of", "rather than", "otherwise",
        "try|swap", "would be|make|take|work|need|also|use|go|have|come|get", "wouldn't", "i'd|id|you'd|youd|we'd go|use|say|drop|add|take|pour|push|try|cut|do|start|bump", "should you", "unless", "whether", "imagine|suppose|say you", "for a sweeter|drier|stronger|lighter|bigger|smaller|longer|tarter|richer|softer|sharper|boozier|weaker|less|more", "for those|people|anyone|someone who", "for a jug|pitcher|batch|crowd|party|bowl|punch|double", "for two|four|six|eight|ten people|drinks|guests|friends",
        "double|doubled|doubling it|that|this|everything", "if you", "if your", "if they|it|that|the|yours|it's|its|he|she", "if", "depending on", "with|without a sweeter|drier|stronger", "bump it|that|this", "push it|that|this", "cut it|that|this back|down", "drop it|that|this", "take it|that|this up|down|back", "replace|substitute", "anywhere|somewhere|anything from|between", "a little more", "add more|another", "an extra|additional", "more than|like", "no more|less", "could|might go|use|add|be|take|do", "people who", "for the sweet|strong|brave", "less than", "never|don't|dont|not|isn't|isnt|wasn't|wasnt|won't", "without");

    // An "if you" that invites nobody to anything else.
    private static readonly Phrase Following = new(
        "if you're|youre following|making|playing|pouring|measuring|watching|counting|keeping|metric|in|at|using|working|new", "if you are|have been|were following|making|playing|pouring|measuring|watching|counting|keeping|using|working|new|at", "if you measure|work|think|pour|count|speak in", "if you missed|remember|recall|look|ask|know|watch", "if you want to|the follow|pour|make|measure|numbers|along", "you can|could see|hear|tell|smell|imagine|follow|read|write|find|measure|count|say|guess|already|hardly|never|always", "if you can|will|please|would", "not only|just|too|quite|yet|much|least|to", "don't|dont forget|worry|be|be|panic|skip|rush|spill", "never mind", "more like|importantly", "without ice|further|a|any|stopping|looking");

    private static readonly Phrase SourceAfter = new(
        "is|was what the|they|most|he|she|people|some", "in the original|old|book|books|classic|official|source", "is|was|are the original|old|classic|traditional|official|standard|usual", "is|was traditional|classic|standard|common|usual|normal", "in|at most bars|recipes|books|places|versions", "in|at some bars|recipes|books|places|versions", "back then", "says the", "according to", "in those days", "the book|books says|say", "they say|said", "was how|the", "you'll|youll see", "in the|that|his|her book", "was called|asked for", "elsewhere");

    private static readonly Phrase AlternativeAfter = new(
        "if you", "if you're|youre", "if your|yours", "if that's|thats|that|it|it's|its|they", "for a sweeter|drier|stronger|lighter|bigger|smaller|longer|tarter|richer|softer|sharper|boozier|weaker|less", "would be|work|also|do|make|have|taste", "works too|as|just", "will do|also|work if|too|as|instead|at|for", "more if|to taste", "instead", "or more|less|whatever|however", "is too much|little", "too much|little", "is not|never", "isn't|isnt|wouldn't|would", "and it|you'll|youll becomes|turns|get|end", "makes it too", "and you|you've have|got a");

    private static readonly Phrase Recapping = new(
        "recap|recapping|recaps", "to sum|summarise|summarize", "in summary", "one|once more time|again", "once more", "let's|lets|i'll|ill|we'll go|run over|through|back", "run through", "let's|lets review|repeat", "quick review", "all together that's|thats|that|it", "altogether", "in total", "a total of", "totals|total|adds up to|is|of", "adds up", "that adds", "the whole|full recipe|list|spec|thing again|was|is|once", "from the top", "say it again", "as a reminder", "just to remind|repeat|recap");

    private static readonly Phrase Moving = new("next", "moving on", "now for|the|we|on|let's|lets|to|into", "okay|ok so|now|next|let's|lets|on", "let's|lets make|do|move|start", "number *", "on to", "up next", "drink number", "alright", "first|second|third|fourth|fifth|sixth|seventh|eighth|ninth drink|up|one|comes|is", "back to");

    private static readonly Phrase Teasing = new("coming up", "later on|in|today|tonight", "stay tuned|with|till|until|to", "in a minute|moment|bit|while|later", "by the end", "before we get|start|begin", "next time|week|film|episode", "don't|dont go away", "wait till|until|for|to");

    // One drink's amount told of a whole house: "one ounce is thirty mil all the way through".
    private static readonly Phrase Converting = new("is", "equals|equal", "means", "makes", "as", "to be", "equates");

    private static readonly Phrase SourceSetUp = new("goes|went like|as this|follows", "reads|read like|as this|follows", "was this", "is this", "the original|old|first|classic|official recipe|spec|version|book", "used to look");

    /// <summary>Marks the amounts that are mentions.</summary>
    public void Mark(IReadOnlyList<SpokenAmount> amounts)
    {
        MarkRecaps(amounts);
        for (var k = 0; k < amounts.Count; k++)
        {
            var amount = amounts[k];
            if (amount.Mention)
                continue;
            var start = ClauseStart(amounts, k);
            amount.Mention = IsSource(amount, start) || IsAlternative(amount, start) || IsToldAfter(amounts, k) || IsConversion(amount) || IsUnderSourceSetUp(amount) || IsTeased(amount);
        }
    }

    // Back to the beginning of the sentence, or to where this presenter's own pour begins.
    private int ClauseStart(IReadOnlyList<SpokenAmount> amounts, int k)
    {
        var amount = amounts[k];
        var start = Math.Max(speech.SentenceStart(amount.From), amount.From - WordsBefore);
        if (Ours.LastIn(speech, start, amount.From) is { } ours && !(amounts[k] is var _ && IsHypothetical(ours.From, start)))
            start = ours.From;
        return start;
    }

    // "If I use an ounce", "what I use when": the word before makes it no pour of today.
    private bool IsHypothetical(int at, int start)
    {
        if (speech.Tokens[at].Word is "but" or "however" or "though" or "whereas" or "today" or "tonight")
            return false;
        for (var i = Math.Max(start, at - 2); i < at; i++)
        {
            if (speech.Tokens[i].Word is "if" or "when" or "should" or "unless" or "could" or "had")
                return true;
        }

        return false;
    }

    private bool IsSource(SpokenAmount amount, int start) => SourceBefore.LastIn(speech, start, amount.From) is not null;

    private bool IsAlternative(SpokenAmount amount, int start)
    {
        for (var from = start; from < amount.From; from++)
        {
            if (AlternativeBefore.At(speech, from, amount.From) < 0 || IsOfHealth(from))
                continue;
            if (Following.At(speech, from, Math.Min(speech.Tokens.Count, from + 6)) > 0)
                continue;

            // "Not", "never", "instead of" bear on what they stand next to.
            var word = speech.Tokens[from].Word;
            if (word is "never" or "don't" or "dont" or "not" or "isn't" or "isnt" or "wasn't" or "wasnt" or "won't" or "without" or "instead" or "rather" or "less" or "up" or "an" or "double" or "doubled" or "no" or "down" && amount.From - from > 4)
                continue;
            if (word is "more" && speech.Tokens[from + 1].Word is "like")
                continue;
            return true;
        }

        return false;
    }

    // "If you have a nut allergy, skip it" offers no other amount.
    private bool IsOfHealth(int from)
    {
        var end = Math.Min(speech.SentenceEnd(from), from + 8);
        for (var i = from; i < end; i++)
        {
            if (speech.Tokens[i].Word is var word && (word.StartsWith("allerg", StringComparison.Ordinal) || word.StartsWith("pregnan", StringComparison.Ordinal) || word.StartsWith("intoleran", StringComparison.Ordinal) || word is "skip" or "pasteurised" or "pasteurized" or "vegan"))
                return true;
        }

        return false;
    }

    private bool IsToldAfter(IReadOnlyList<SpokenAmount> amounts, int k)
    {
        var amount = amounts[k];
        var end = Math.Min(speech.SentenceEnd(amount.From), amount.To + WordsAfter);
        if (k + 1 < amounts.Count)
            end = Math.Min(end, amounts[k + 1].From);
        if (Ours.FirstIn(speech, amount.To, end) is { } ours)
            end = Math.Min(end, ours.From);
        if (SourceAfter.FirstIn(speech, amount.To, end) is { } source && !IsParted(amount.To, source.From))
            return true;
        return AlternativeAfter.FirstIn(speech, amount.To, end) is { } other && !IsParted(amount.To, other.From) && !IsOfHealth(other.From) && speech.Tokens[other.From - 1].Word is not ("so" or "and" or "but" or "because" or "also") && Following.At(speech, other.From, speech.SentenceEnd(amount.From)) < 0;
    }

    private bool IsParted(int from, int to)
    {
        for (var i = from - 1; i < to; i++)
        {
            if (speech.Tokens[i].Pause != Pause.None)
                return true;
        }

        return to - from > 6;
    }

    private bool IsConversion(SpokenAmount amount)
    {
        if (amount.Ounces is null || amount.Metric is null || amount.Ounces.Low != Measures.Rational.One || Converting.FirstIn(speech, amount.From + 1, amount.To - 1) is null)
            return false;
        return words.Heard(speech.SentenceStart(amount.From), speech.SentenceEnd(amount.From)).IsEmpty;
    }

    private bool IsUnderSourceSetUp(SpokenAmount amount)
    {
        var sentence = speech.SentenceOf[amount.From];
        if (sentence == 0)
            return false;
        var (from, to) = (speech.SentenceStarts[sentence - 1], speech.SentenceStarts[sentence]);
        return to - from <= 16 && SourceBefore.IsIn(speech, from, to) && SourceSetUp.LastIn(speech, from, to) is { } setUp && to - setUp.To <= 1
            && !Ours.IsIn(speech, from, to) && !Ours.IsIn(speech, to, amount.From);
    }

    private bool IsTeased(SpokenAmount amount) => Teasing.IsIn(speech, speech.SentenceStart(amount.From), speech.SentenceEnd(amount.From));

    private void MarkRecaps(IReadOnlyList<SpokenAmount> amounts)
    {
        var left = 0;
        var next = 0;
        for (var sentence = 0; sentence < speech.Sentences; sentence++)
        {
            var (from, to) = (speech.SentenceStarts[sentence], speech.SentenceStarts[sentence + 1]);
            var recap = Recapping.FirstIn(speech, from, to);
            if (recap is null && left > 0 && Moving.At(speech, from, to) > 0)
                left = 0;
            var begins = left > 0 ? from : recap?.From ?? to;
            if (recap is not null)
                left = MostSentencesOfRecap + 1;
            var any = false;
            for (; next < amounts.Count && amounts[next].From < to; next++)
            {
                if (left > 0 && amounts[next].From >= begins)
                {
                    amounts[next].Mention = true;
                    any = true;
                }
            }

            left = any || recap is not null ? left - 1 : Math.Max(0, left - 3);
        }
    }
}
