using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Reading;

namespace Barshow.Engine.Callouts.Speech;

/// <summary>Finds the amounts of a speech, both sides of a dual one together, however far apart they stand.</summary>
internal sealed class AmountFinder(SpeechText speech, LineupWords words, FilmSheet sheet)
{
    // Between the sides of one callout: "two ounces of fresh lime juice, so that's sixty mil".
    private const int MostWordsBetweenSides = 9;

    // Sides further apart than this were never meant as one amount.
    private const double WidestSlip = 0.7;

    private static readonly Phrase TakingBack = new("sorry", "make that", "i mean", "i meant", "no", "rather", "wait", "correction", "scratch that", "excuse me", "actually", "oops", "or rather");

    private readonly HashSet<Unit> _unitsOfSpecs = [.. sheet.Drinks.SelectMany(drink => drink.Lines).Select(line => line.Measure?.Unit).OfType<Unit>()];
    private readonly HashSet<string> _things = [.. sheet.Drinks.SelectMany(drink => drink.Lines).Where(line => line.Measure is { HasAmount: true } measure && (measure.Unit is null || measure.Unit == Unit.EggWhite || measure.Unit == Unit.Piece))
        .SelectMany(line => Vocabulary.WordsOf(line.Ingredient))];

    /// <summary>The amounts, in the order in which they are said.</summary>
    public List<SpokenAmount> Find()
    {
        var amounts = new List<SpokenAmount>();
        var bare = new List<SpokenAmount>();
        var text = Mishearings.MendedText(speech, words.IsIngredient);
        for (var sentence = 0; sentence < speech.Sentences; sentence++)
        {
            // Sentence by sentence: "thirty mil. And half an ounce" is no thirty and a half.
            var start = speech.Tokens[speech.SentenceStarts[sentence]].Start;
            var end = sentence + 1 < speech.Sentences ? speech.Tokens[speech.SentenceStarts[sentence + 1]].Start : text.Length;
            foreach (var found in MeasureFinder.Find(text[start..end], bareCounts: true))
            {
                Take(found.Measure, Moved(found.Place, start), amounts, bare);
                if (found is { Second: { } second, SecondPlace: { } place })
                    Take(second, Moved(place, start), amounts, bare);
            }
        }

        AddBarePairs(amounts, bare);
        Pair(amounts, bare);
        MeasureOpens(amounts);
        AddOpens(amounts);
        foreach (var amount in amounts)
            amount.IsEach = IsEach(amount);
        amounts.Sort((a, b) => a.From.CompareTo(b.From));
        return amounts;
    }

    private static TextPlace Moved(TextPlace place, int by) => new(place.Start + by, place.Length);

    // The sides are taken one by one: which of them belong together is seen better from the whole row.
    private void Take(Measure measure, TextPlace place, List<SpokenAmount> amounts, List<SpokenAmount> bare)
    {
        if (AmountOf(measure, place) is not { } amount)
            return;
        if (measure is { Open: null, Unit: null })
            TakeBare(amount, measure, amounts, bare);
        else if (IsKept(amount, measure))
            amounts.Add(amount);
    }

    private SpokenAmount? AmountOf(Measure measure, TextPlace place)
    {
        var from = speech.TokenAt(place.Start);
        var to = from;
        while (to < speech.Tokens.Count && speech.Tokens[to].Start < place.End)
            to++;
        if (from >= to)
            return null;
        var start = speech.Text[place.Start] is '.' or ',' ? place.Start : speech.Tokens[from].Start;
        var end = speech.Tokens[to - 1].End;
        var amount = new SpokenAmount { Place = new(start, end - start), From = from, To = to, FirstTo = to };
        var plain = measure.Open is not null && measure.HasAmount ? measure.WithoutOpen() : measure;
        if (plain is { Open: null, Unit: { } unit } && unit.IsMetric)
            amount.Metric = plain;
        else if (plain is { Open: null, Unit: { } other } && (other == Unit.Ounce || other == Unit.UsOunce || other == Unit.ImperialOunce))
            amount.Ounces = plain;
        else
            amount.Counted = plain;
        return amount;
    }

    private bool IsKept(SpokenAmount amount, Measure measure)
    {
        if (measure.Open is { } open && !measure.HasAmount)
            return IsOpenPour(amount, open);
        return SizeTalk.IsPoured(speech, amount, measure, _unitsOfSpecs.Contains);
    }

    // "Top with soda" pours; "fill it with ice", "top with a wheel" do not.
    private bool IsOpenPour(SpokenAmount amount, OpenMeasure open)
    {
        var end = Math.Min(speech.SentenceEnd(amount.From), amount.To + 5);
        for (var i = amount.To; i < end; i++)
        {
            if (speech.Tokens[i].Word is "ice" or "wheel" or "wedge" or "twist" or "sprig" or "slice" or "mint" or "cherry" or "lid" or "peel" or "crushed" or "cubes" or "garnish" or "nutmeg" or "foam")
                return false;
            if (words.IsIngredient(i))
                return true;
        }

        return open is OpenMeasure.Splash;
    }

    private void TakeBare(SpokenAmount amount, Measure number, List<SpokenAmount> amounts, List<SpokenAmount> bare)
    {
        amount.Counted = number;
        var next = amount.To < speech.Tokens.Count && speech.Tokens[amount.To - 1].Pause == Pause.None ? speech.Tokens[amount.To].Word : "";

        // "one egg white", "two limes", where a spec counts them.
        if (_things.Count > 0 && words.Heard(amount.To, Math.Min(amount.To + 3, speech.SentenceEnd(amount.From))) is { IsEmpty: false } heard && _things.Contains(heard[0].Word) && heard[0].Token - amount.To <= 1)
        {
            amounts.Add(amount);
            return;
        }

        // "three quarters of lemon", "half lime": at a bar a share without a unit is of an ounce.
        var isShare = number is { IsRange: false, Low: { IsWhole: false, Denominator: 2 or 3 or 4 } low } && low < 3;
        var of = next is "of" ? amount.To + 1 : amount.To;
        if (isShare && IsNamedJustBefore(amount))
        {
            amount.Counted = null;
            amount.Ounces = Measure.Of(number.Low!.Value, Unit.Ounce);
            amounts.Add(amount);
            return;
        }

        if (isShare && of < speech.Tokens.Count && words.IsIngredient(of) && IsPouredThing(of) && !(number.Low == new Rational(1, 2) && next is not "of" && IsWholeThing(of)))
        {
            amount.Counted = null;
            amount.Ounces = Measure.Of(number.Low!.Value, Unit.Ounce);
            amounts.Add(amount);
            return;
        }

        bare.Add(amount);
    }

    // "Dry sherry: three quarters, so twenty-two and a half."
    private bool IsNamedJustBefore(SpokenAmount amount) =>
        amount.From > speech.SentenceStart(amount.From) && speech.Tokens[amount.From - 1].Pause == Pause.Comma && words.IsIngredient(amount.From - 1) && IsPouredThing(amount.From - 1)
        && (speech.Tokens[amount.To - 1].Pause != Pause.None || amount.To == speech.Tokens.Count);

    // "A quarter, seven and a half, of the syrup": two numbers without units that come to the same are ounces and millilitres.
    private void AddBarePairs(List<SpokenAmount> amounts, List<SpokenAmount> bare)
    {
        for (var i = 0; i + 1 < bare.Count; i++)
        {
            var (first, second) = (bare[i], bare[i + 1]);
            if (second.From - first.To > 1 || first.Counted is not { IsRange: false, Low: { } ounces } || second.Counted is not { IsRange: false, Low: { } millilitres } || ounces > 6 || millilitres < 5)
                continue;
            var made = (ounces * sheet.Convention.MillilitresPerOunce()).ToDouble();
            var sentence = speech.SentenceOf[first.From];
            if (Math.Abs(made - millilitres.ToDouble()) > 0.03 * made || speech.SentenceOf[second.From] != sentence
                || (words.Heard(second.To, Math.Min(speech.SentenceEnd(first.From), second.To + 4)).IsEmpty && words.Heard(Math.Max(speech.SentenceStart(first.From), first.From - 3), first.From).IsEmpty))
                continue;
            (first.Ounces, first.Counted) = (Measure.Of(ounces, Unit.Ounce), null);
            (second.Metric, second.Counted) = (Measure.Of(millilitres, Unit.Millilitre), null);
            Join(first, second);
            amounts.Add(first);
            bare.RemoveRange(i, 2);
            i--;
        }
    }

    private bool IsPouredThing(int token)
    {
        var heard = words.Heard(token, Math.Min(token + 3, speech.SentenceEnd(token)));
        if (heard.IsEmpty)
            return false;
        var word = heard[0].Word;
        return words.Lines.Any(drink => drink.Any(line => line.Any(set => set.Contains(word))));
    }

    private bool IsWholeThing(int token) => speech.Tokens[token].Word is "egg" or "orange" or "apple" or "pineapple" or "lime" or "lemon" or "grapefruit" or "cucumber" && !(token + 1 < speech.Tokens.Count && speech.Tokens[token + 1].Word is "juice" or "syrup" or "liqueur");

    // The pairing of neighbours that fits best as a whole: "forty-five mil. Half an ounce" stand side by side and belong apart.
    private void Pair(List<SpokenAmount> amounts, List<SpokenAmount> bare)
    {
        amounts.Sort((a, b) => a.From.CompareTo(b.From));
        var best = new double[amounts.Count + 1];
        var isPaired = new bool[amounts.Count + 1];
        for (var i = 1; i <= amounts.Count; i++)
        {
            best[i] = best[i - 1];
            if (i > 1 && Fit(amounts[i - 2], amounts[i - 1]) is var fit and > 0 && best[i - 2] + fit > best[i])
                (best[i], isPaired[i]) = (best[i - 2] + fit, true);
        }

        for (var i = amounts.Count; i > 0; i--)
        {
            if (isPaired[i])
            {
                Join(amounts[i - 2], amounts[i - 1]);
                amounts[i - 1] = amounts[i - 2];
                i--;
            }
        }

        var kept = amounts.Distinct().ToList();
        amounts.Clear();
        amounts.AddRange(kept);
        foreach (var first in amounts.Where(amount => amount is { Ounces: not null, Metric: null }))
        {
            if (MissingMetric(first, bare) is not { } number)
                continue;
            number.Metric = Measure.Between(number.Counted!.Low!.Value, number.Counted.High!.Value, Unit.Millilitre);
            number.Counted = null;
            if (number.From > first.From)
                Join(first, number);
            else
                JoinBefore(first, number);
        }
    }

    // A number without a unit is the other side when it stands close and comes to the same: "three quarters of an ounce, so twenty-two and a half"; "sixty of gin, two ounces".
    private SpokenAmount? MissingMetric(SpokenAmount first, List<SpokenAmount> bare)
    {
        int low = 0, high = bare.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (bare[middle].From < first.From)
                low = middle + 1;
            else
                high = middle;
        }

        if (low < bare.Count && bare[low] is var after && after.Counted is not null && after.From - first.To <= 7 && IsMissingMetric(first, after, after.From - first.To <= 2 ? 0.3 : 0.12))
            return after;
        return low > 0 && bare[low - 1] is var before && before.Counted is not null && first.From - before.To <= 6 && IsMissingMetric(first, before, 0.12) ? before : null;
    }

    // "Top it with ginger beer, about three ounces": the hand's measure is measured after all.
    private void MeasureOpens(List<SpokenAmount> amounts)
    {
        for (var i = amounts.Count - 2; i >= 0; i--)
        {
            var (open, next) = (amounts[i], amounts[i + 1]);
            if (open is { HasVolume: false, Counted: { Open: not null, HasAmount: false } } && next.HasVolume && next.From - open.To <= 7 && speech.SentenceOf[next.From] == speech.SentenceOf[open.From] && Following(next, false).Words.Length == 0)
            {
                open.Counted = null;
                Join(open, next);
                amounts.RemoveAt(i + 1);
            }
        }
    }

    private double Fit(SpokenAmount first, SpokenAmount second)
    {
        if (!IsHalf(first) || !Belong(first, second))
            return 0;
        var isNewSentence = speech.SentenceOf[second.From] != speech.SentenceOf[first.From];
        return 3 - (2 * Gap(first, second)) - (0.1 * (second.From - first.To)) - (isNewSentence ? 0.8 : 0);
    }

    private static bool IsHalf(SpokenAmount amount) =>
        amount.Metric is null != amount.Ounces is null || (amount is { Metric: null, Ounces: null, Counted: { Open: null, Unit: { } unit } } && (unit.Kind == UnitKind.Bar && unit != Unit.Dash && unit != Unit.Drop || unit.Kind == UnitKind.Volume));

    // The second side says nothing new: no other thing is named after it that was not named before.
    private bool Belong(SpokenAmount first, SpokenAmount second)
    {
        if (!IsHalf(second) || second.Counted is not null && second.Metric is null || (first.Metric is null) == (second.Metric is null) || second.From - first.To > MostWordsBetweenSides)
            return false;
        if (speech.SentenceOf[second.From] - speech.SentenceOf[first.From] > 1 || Gap(first, second) > WidestSlip)
            return false;
        var isNewSentence = speech.SentenceOf[second.From] != speech.SentenceOf[first.From];
        var between = words.Heard(first.To, second.From);
        if (TakingBack.IsIn(speech, first.To, second.From) && between.IsEmpty && second.From - first.To <= 6)
            return Gap(first, second) < 0.3;
        for (var i = first.To; i < second.From; i++)
        {
            if (speech.Tokens[i].Word is "then" or "next" or "plus" or "another" or "or" or "and" && i + 1 < second.From)
                return false;
        }

        var (of, after) = Following(second, between.IsEmpty && !isNewSentence);
        if (after.Length == 0)
            return !isNewSentence || second.From - first.To <= 3 || between.IsEmpty || speech.Tokens[speech.SentenceStart(second.From)].Word is "that" or "that's" or "thats" or "which" or "so" or "or";
        if (between.IsEmpty)
            return !isNewSentence || of;

        // "One ounce of gin, thirty mil of vermouth" are two; "two ounces of gin, sixty mil of gin" is one.
        foreach (var (_, word) in after)
        {
            var isNamed = false;
            foreach (var (_, said) in between)
                isNamed |= said == word;
            if (!isNamed)
                return false;
        }

        return true;
    }

    // What is named right after an amount.
    private (bool Of, (int Token, string Word)[] Words) Following(SpokenAmount amount, bool far)
    {
        if (amount.To >= speech.Tokens.Count)
            return (false, []);
        var of = speech.Tokens[amount.To].Word is "of" && speech.Tokens[amount.To - 1].Pause != Pause.Sentence;
        if (!of && speech.Tokens[amount.To - 1].Pause != Pause.None && !far)
            return (false, []);
        var end = Math.Min(speech.SentenceEnd(amount.From), amount.To + (of ? 5 : 2));
        for (var i = amount.To; i < end; i++)
        {
            if (speech.Tokens[i].Pause != Pause.None)
                end = i + 1;
        }

        return (of, words.Heard(amount.To, end).ToArray());
    }

    private double Gap(SpokenAmount first, SpokenAmount second)
    {
        var (a, b) = (InMillilitres(first), InMillilitres(second));
        return a is > 0 && b is > 0 ? Math.Abs(a.Value - b.Value) / Math.Max(a.Value, b.Value) : 1;
    }

    private double? InMillilitres(SpokenAmount amount) =>
        amount.Millilitres(sheet.Convention) ?? amount.Counted?.InMillilitres(sheet.Convention)?.ToDouble();

    private bool IsMissingMetric(SpokenAmount first, SpokenAmount number, double widest)
    {
        if (number.Counted is not { Low: { } low } || low < 5 || low > 300 || speech.SentenceOf[first.From] != speech.SentenceOf[number.From])
            return false;
        if (number.To < speech.Tokens.Count && speech.Tokens[number.To].Word is "seconds" or "second" or "minutes" or "minute" or "times" or "leaves" or "people" or "years" or "drinks" or "percent" or "dollars" or "bucks")
            return false;
        var millilitres = first.Millilitres(sheet.Convention);
        return millilitres is > 0 && Math.Abs(low.ToDouble() - millilitres.Value) / millilitres.Value < widest;
    }

    private static void Join(SpokenAmount first, SpokenAmount second)
    {
        first.Metric ??= second.Metric;
        first.Ounces ??= second.Ounces;
        first.Counted ??= second.Counted;
        first.To = Math.Max(first.To, second.To);
        first.Place = new(first.Place.Start, second.Place.End - first.Place.Start);
    }

    private static void JoinBefore(SpokenAmount second, SpokenAmount number)
    {
        second.Metric = number.Metric;
        second.FirstTo = number.To;
        second.From = number.From;
        second.Place = new(number.Place.Start, second.Place.End - number.Place.Start);
    }

    // "Soda to the top", "rinse the glass, absinthe first": a hand's measure that the spec has and no amount stands beside.
    private void AddOpens(List<SpokenAmount> amounts)
    {
        var opens = sheet.Drinks.SelectMany((drink, d) => drink.Lines.Select((line, l) => (line.Measure?.Open, Drink: d, Line: l))).Where(line => line.Open is not null).ToList();
        if (opens.Count == 0)
            return;
        for (var sentence = 0; sentence < speech.Sentences; sentence++)
        {
            var (from, to) = (speech.SentenceStarts[sentence], speech.SentenceStarts[sentence + 1]);
            foreach (var (open, drink, line) in opens)
            {
                if (VerbOf(open!.Value).FirstIn(speech, from, to) is not { } verb)
                    continue;
                var heard = words.Heard(Math.Max(from, verb.From - 6), Math.Min(to, verb.To + 6));
                if (heard.IsEmpty || words.Match(drink, line, heard, isPhrase: false) < 0.5 || amounts.Exists(amount => amount.From < to && amount.To > from))
                    continue;
                var (first, last) = (Math.Min(verb.From, heard[0].Token), Math.Max(verb.To - 1, heard[^1].Token));
                amounts.Add(new()
                {
                    From = first,
                    To = last + 1,
                    FirstTo = first,
                    Place = new(speech.Tokens[first].Start, speech.Tokens[last].End - speech.Tokens[first].Start),
                    Counted = Measure.LeftOpen(open.Value),
                });
                break;
            }
        }
    }

    private static Phrase VerbOf(OpenMeasure open) => open switch
    {
        OpenMeasure.Top or OpenMeasure.Fill => Topping,
        OpenMeasure.Rinse => Rinsing,
        OpenMeasure.Float => Floating,
        OpenMeasure.Crack => Cracking,
        OpenMeasure.Squeeze => Squeezing,
        OpenMeasure.ToTaste => Tasting,
        _ => Splashing,
    };

    private static readonly Phrase Topping = new("top|topped|topping|tops", "fill|filled it|up|the|with", "to the top|rim|brim", "lengthen|lengthened", "finish with", "rest is", "long with");
    private static readonly Phrase Rinsing = new("rinse|rinsed|rinsing|swirl");
    private static readonly Phrase Floating = new("float|floated|floater|floats");
    private static readonly Phrase Cracking = new("crack|cracks|grind|grinds|few turns");
    private static readonly Phrase Squeezing = new("squeeze|squeezed|squeezes");
    private static readonly Phrase Tasting = new("to taste", "as you like", "much as you like");
    private static readonly Phrase Splashing = new("splash|splashes");

    private bool IsEach(SpokenAmount amount)
    {
        var end = Math.Min(speech.SentenceEnd(amount.From), amount.To + 2);
        for (var i = amount.To; i < end; i++)
        {
            if (speech.Tokens[i].Word is "each" or "apiece")
                return true;
        }

        return amount.From > speech.SentenceStart(amount.From) && speech.Tokens[amount.From - 1].Word is "each" or "both";
    }
}
