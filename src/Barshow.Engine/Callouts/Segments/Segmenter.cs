using Barshow.Engine.Callouts.Speech;

namespace Barshow.Engine.Callouts.Segments;

/// <summary>Finds the best labelling of the speech into the drinks of the lineup.</summary>
/// <remarks>
/// What speaks for a drink are events: its name, an amount, an ingredient. A stretch of events under one label scores by how well its names and amounts fit the
/// drink's lines, each line once; the labelling with the highest sum is found by dynamic programming over stretches (a segmental Viterbi search, exact for stretches
/// of up to <see cref="LongestStretch"/> events). A drink may own several stretches, in any order. The weights are our own.
/// </remarks>
internal sealed class Segmenter
{
    private const int LongestStretch = 90;

    // Some ten hours of talk; the bound keeps hostile files from holding the machine.
    private const int MostEvents = 8_000;
    private const double ToOpen = 4.5;
    private const double ToReturn = 1.0;

    private static readonly Phrase SideBySide = new("side by side", "both", "beside each|one|the", "next to each|one", "in each|either glass|one|of", "at the same|once", "together", "two|three at once|a|the", "left and right", "left|right|first|other|second glass|one|side", "in parallel", "as well as", "each of them|these|those", "each glass|one", "at one time", "twins|pair");

    private readonly record struct Event(int Token, int Name, int Amount, int Ingredient);

    private readonly SpeechText _speech;
    private readonly LineupWords _words;
    private readonly FilmSheet _sheet;
    private readonly IReadOnlyList<SpokenAmount> _amounts;
    private readonly List<NameMention> _names;
    private readonly LineFit _fit;
    private readonly List<Event> _events = [];
    private readonly List<int[]> _labels = [[]];
    private readonly Dictionary<int, List<int>> _namedWith = [];
    private readonly HashSet<int> _pairOpenings = [];
    private readonly Dictionary<(int Sentence, int Label), double> _ofIngredients = [];

    public Segmenter(SpeechText speech, LineupWords words, FilmSheet sheet, IReadOnlyList<SpokenAmount> amounts, List<NameMention> names, LineFit fit)
    {
        (_speech, _words, _sheet, _amounts, _names, _fit) = (speech, words, sheet, amounts, names, fit);
        for (var drink = 0; drink < sheet.Drinks.Count; drink++)
            _labels.Add([drink]);
        AddPairs();
        AddEvents();
    }

    /// <summary>The stretches, in order, that together hold every word.</summary>
    public List<Stretch> Find()
    {
        var count = _events.Count;
        var best = new double[count + 1];
        var from = new (int Event, int Label)[count + 1];
        Array.Fill(best, double.NegativeInfinity);
        best[0] = 0;
        for (var start = 0; start < count; start++)
        {
            for (var label = 0; label < _labels.Count; label++)
            {
                if (start > 0 && from[start].Label == label && label != 0)
                    continue;
                var score = best[start] - Opening(label, start, from);
                var run = new Run(label, _labels[label], _sheet);
                for (var end = start; end < Math.Min(count, start + LongestStretch); end++)
                {
                    score += Score(run, _events[end]);
                    if (score > best[end + 1])
                        (best[end + 1], from[end + 1]) = (score, (start, label));
                }
            }
        }

        return Read(from);
    }

    // What has been said under one label so far.
    private sealed class Run(int label, int[] drinks, FilmSheet sheet)
    {
        public int Label { get; } = label;

        public int[] Drinks { get; } = drinks;

        public ulong[] Said { get; } = new ulong[drinks.Length];

        public int[] Last { get; } = [.. drinks.Select(_ => -1)];

        public int Lines(int at) => sheet.Drinks[Drinks[at]].Lines.Count;
    }

    private double Opening(int label, int start, (int Event, int Label)[] from)
    {
        if (_labels[label].Length == 0)
            return 0.5;
        var isReturn = start > 0 && _labels[from[start].Label].Length > 0;
        return ToOpen + (isReturn ? ToReturn : 0) + (_labels[label].Length > 1 ? 1 : 0);
    }

    private double Score(Run run, in Event happening)
    {
        if (happening.Name >= 0)
            return OfName(run, _names[happening.Name], happening.Name);
        if (happening.Amount >= 0)
            return OfAmount(run, happening.Amount);

        // What a sentence's ingredients say for a label is the same in every stretch that holds it.
        if (!_ofIngredients.TryGetValue((happening.Ingredient, run.Label), out var score))
            _ofIngredients[(happening.Ingredient, run.Label)] = score = OfIngredient(run, happening.Ingredient);
        return score;
    }

    private double OfName(Run run, NameMention name, int index)
    {
        if (run.Drinks.Length == 0)
            return name.Naming == Naming.Opening ? -1.5 : name.Naming == Naming.Plain ? -0.3 : 0.1;
        var isOwn = run.Drinks.Contains(name.Drink);
        if (run.Drinks.Length > 1 && isOwn && _pairOpenings.Contains(index))
            return 6;
        return (name.Naming, isOwn) switch
        {
            (Naming.Opening, true) => run.Drinks.Length > 1 ? 3 : 6.5,
            (Naming.Opening, false) => -6.5,
            (Naming.Plain, true) => 2.5,
            (Naming.Plain, false) => -1.2,
            (_, true) => 0.2,
            _ => 0,
        };
    }

    private double OfIngredient(Run run, int sentence)
    {
        if (run.Drinks.Length == 0)
            return -0.05;
        var heard = _words.Heard(_speech.SentenceStarts[sentence], _speech.SentenceStarts[sentence + 1]);
        var score = 0d;
        foreach (var (_, word) in heard[..Math.Min(heard.Length, 6)])
        {
            var isOwn = run.Drinks.Any(drink => Has(drink, word));
            var others = _words.Lines.Length == 0 ? 0 : Enumerable.Range(0, _words.Lines.Length).Count(drink => !run.Drinks.Contains(drink) && Has(drink, word));
            score += isOwn ? others == 0 ? 0.7 : 0.15 : others > 0 ? -0.35 : 0;
        }

        return Math.Clamp(score, -1.5, 1.5);
    }

    private bool Has(int drink, string word) => _words.Garnishes[drink].Contains(word) || _words.Lines[drink].Any(line => line.Any(set => set.Contains(word)));

    private double OfAmount(Run run, int k)
    {
        var amount = _amounts[k];
        if (amount.Mention)
            return 0;
        if (run.Drinks.Length == 0)
            return -2;
        var best = double.NegativeInfinity;
        var (bestDrink, bestLine) = (0, -1);
        for (var at = 0; at < run.Drinks.Length; at++)
        {
            for (var line = 0; line < run.Lines(at); line++)
            {
                var score = OfLine(run, at, line, k);
                if (score > best)
                    (best, bestDrink, bestLine) = (score, at, line);
            }
        }

        if (bestLine < 0)
            return -2.5;
        for (var at = 0; at < run.Drinks.Length; at++)
        {
            // Side by side an amount may be a line of each drink.
            for (var line = 0; line < run.Lines(at); line++)
            {
                if ((at == bestDrink && line == bestLine) || (at != bestDrink && line < 64 && OfLine(run, at, line, k) > best - 0.5 && best > 2))
                {
                    if (line < 64)
                        run.Said[at] |= 1UL << line;
                    run.Last[at] = line;
                }
            }
        }

        if (_namedWith.TryGetValue(k, out var named))
            best += named.Any(run.Drinks.Contains) ? 4 : -2;
        return amount.Retracted ? best / 2 : best;
    }

    private double OfLine(Run run, int at, int line, int k)
    {
        var drink = run.Drinks[at];
        var (named, near) = (_fit.Named(k, drink, line), _fit.Near(k, drink, line));
        var score = named > 0.2 ? (4 * named) + (2 * near) - 0.4
            : named < -0.2 ? -1.5
            : (1.6 * near) - 0.5;
        if (named < -0.2)
            return score;
        if (line < 64 && (run.Said[at] & (1UL << line)) != 0)
            score -= near >= 1 ? 2 : _amounts[k].CorrectsEarlier ? 0 : 4;
        else if (line == run.Last[at] + 1)
            score += 0.5;
        else if (line > run.Last[at])
            score += 0.25;
        return score;
    }

    private void AddPairs()
    {
        var seen = new HashSet<string>();
        for (var i = 0; i < _names.Count; i++)
        {
            var (from, to) = (_speech.SentenceStart(_names[i].From), _speech.SentenceEnd(_names[i].From));
            var drinks = new SortedSet<int>();
            var k = i;
            for (; k < _names.Count && _names[k].From < to; k++)
                drinks.Add(_names[k].Drink);
            var wide = Math.Min(_speech.Tokens.Count, to + 25);
            if (drinks.Count is 2 or 3 && drinks.Count < Math.Max(3, _sheet.Drinks.Count) + (_sheet.Drinks.Count == 2 ? 1 : 0) && SideBySide.IsIn(_speech, from, wide))
            {
                int[] label = [.. drinks];
                if (seen.Add(string.Join(',', label)) && _labels.Count < 60)
                    _labels.Add(label);
                for (var n = i; n < k; n++)
                    _pairOpenings.Add(n);
            }

            i = k - 1;
        }
    }

    private void AddEvents()
    {
        var nextName = 0;
        var nextAmount = 0;
        for (var sentence = 0; sentence < _speech.Sentences && _events.Count < MostEvents; sentence++)
        {
            var (from, to) = (_speech.SentenceStarts[sentence], _speech.SentenceStarts[sentence + 1]);
            var (firstName, firstAmount) = (nextName, nextAmount);
            while (nextName < _names.Count && _names[nextName].From < to)
                nextName++;
            while (nextAmount < _amounts.Count && _amounts[nextAmount].From < to)
                nextAmount++;
            for (int n = firstName, a = firstAmount; n < nextName || a < nextAmount;)
            {
                if (a >= nextAmount || (n < nextName && _names[n].From <= _amounts[a].From))
                    _events.Add(new(_names[n].From, n++, -1, -1));
                else
                    _events.Add(new(_amounts[a].From, -1, a++, -1));
            }

            // "In the Sour it is three quarters": a name in the sentence says whose the amounts are.
            for (var a = firstAmount; a < nextAmount; a++)
            {
                var own = Enumerable.Range(firstName, nextName - firstName).Where(n => _names[n].Naming != Naming.Passing && _names[n].From < _amounts[a].From).Select(n => _names[n].Drink).Distinct().ToList();
                if (own.Count > 0)
                    _namedWith[a] = own.Count == 2 && SideBySide.IsIn(_speech, from, to) ? own : [own[^1]];
            }

            if (firstAmount == nextAmount && !_words.Heard(from, to).IsEmpty)
                _events.Add(new(from, -1, -1, sentence));
        }

        _events.Sort((a, b) => a.Token.CompareTo(b.Token));
    }

    private List<Stretch> Read((int Event, int Label)[] from)
    {
        var stretches = new List<Stretch>();
        var end = _events.Count;
        var to = _speech.Tokens.Count;
        while (end > 0)
        {
            var (start, label) = from[end];
            var first = start == 0 ? 0 : StartOf(start);
            stretches.Add(new(_labels[label], first, to));
            to = first;
            end = start;
        }

        stretches.Reverse();
        return Opened(stretches);
    }

    // A drink is taught from where it is named as the next one, else from the sentence of its first amount: what is said before belongs to no drink.
    private List<Stretch> Opened(List<Stretch> stretches)
    {
        var opened = new List<Stretch>(stretches.Count);
        foreach (var stretch in stretches)
        {
            var first = _amounts.FirstOrDefault(amount => amount.From >= stretch.From && amount.From < stretch.To && !amount.Mention);
            if (stretch.Drinks.Count == 0 || first is null)
            {
                opened.Add(stretch);
                continue;
            }

            var own = _names.Where(name => name.From >= stretch.From && name.From < first.From && stretch.Drinks.Contains(name.Drink)).ToList();
            var name = own.Where(name => name.Naming == Naming.Opening).Concat(own.Where(name => name.Naming == Naming.Plain)).Select(name => (NameMention?)name).FirstOrDefault();
            var start = Math.Max(stretch.From, _speech.SentenceStart(name?.From ?? first.From));
            if (name is null && opened.Count > 0 && opened[^1].Drinks.Count > 0)
                start = stretch.From;
            if (start > stretch.From)
                opened.Add(new([], stretch.From, start));
            opened.Add(stretch with { From = start });
        }

        return opened;
    }

    // A stretch begins with the sentence of its first event, unless that sentence has events of the stretch before.
    private int StartOf(int start)
    {
        var token = _events[start].Token;
        var sentence = _speech.SentenceStart(token);
        return _events[start - 1].Token >= sentence ? token : sentence;
    }
}
