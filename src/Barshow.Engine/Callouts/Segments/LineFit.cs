using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts.Segments;

/// <summary>How well each amount fits each line of each drink: by what is named about it and by how near the amounts are.</summary>
internal sealed class LineFit
{
    // The second words of names: a name that is parted over two cues goes on with one of them.
    private static readonly HashSet<string> Tails = ["juice", "syrup", "liqueur", "bitters", "water", "cordial", "cream", "beer", "ale", "vermouth", "whiskey", "whisky", "rum", "gin", "wine", "brandy", "white", "whites", "sherry", "leaves", "aperitif", "vinegar", "puree", "tea", "milk"];

    private readonly Dictionary<(int Amount, int Drink), (double Named, double Near)[]> _fits = [];
    private readonly SpeechText _speech;
    private readonly LineupWords _words;
    private readonly FilmSheet _sheet;
    private readonly IReadOnlyList<SpokenAmount> _amounts;

    public LineFit(SpeechText speech, LineupWords words, FilmSheet sheet, IReadOnlyList<SpokenAmount> amounts)
    {
        (_speech, _words, _sheet, _amounts) = (speech, words, sheet, amounts);
        for (var k = 0; k < amounts.Count; k++)
        {
            var windows = Windows(k);
            for (var drink = 0; drink < sheet.Drinks.Count; drink++)
            {
                var lines = sheet.Drinks[drink].Lines;
                var fits = new (double, double)[lines.Count];
                for (var line = 0; line < lines.Count; line++)
                    fits[line] = (NamedBy(windows, drink, line), Nearness(amounts[k], lines[line].Measure));
                _fits[(k, drink)] = fits;
            }
        }
    }

    /// <summary>How surely what is named about an amount is a line, -1 to 1.</summary>
    public double Named(int amount, int drink, int line) => _fits[(amount, drink)][line].Named;

    /// <summary>How near an amount is to a line's, 0 to 1; 1 within 3 %.</summary>
    public double Near(int amount, int drink, int line) => _fits[(amount, drink)][line].Near;

    /// <summary>Whether an amount can be a line's at all: leaves are no volume, nor are ten sprigs of thyme so much thyme syrup.</summary>
    public bool IsOfOneKind(int amount, int drink, int line)
    {
        var (said, wanted) = (_amounts[amount], _sheet.Drinks[drink].Lines[line].Measure);
        if (wanted?.Unit is not { } unit)
            return wanted is not { HasAmount: true } || !said.HasVolume;
        if (said.HasVolume)
            return unit.Kind is UnitKind.Volume or UnitKind.Bar or UnitKind.Part;
        return said.Counted?.Unit?.Kind is not (UnitKind.Count or UnitKind.Mass) || unit.Kind is UnitKind.Count or UnitKind.Mass || (said.Counted.Unit == Unit.Spoon || said.Counted.Unit == Unit.Glug);
    }

    /// <summary>Whether anything is named about an amount that can tell lines apart.</summary>
    public bool IsNamed(int amount) => Windows(amount).Exists(window => !window.Heard.IsEmpty && window.Weight >= 0.6);

    /// <summary>What is named right at an amount, as it was said; null when nothing is.</summary>
    public string? NameAt(int amount)
    {
        foreach (var window in Windows(amount))
        {
            if (window.Heard.IsEmpty || !window.IsPhrase)
                continue;
            var span = window.Heard.Span;
            var (first, last) = (_speech.Tokens[span[0].Token], _speech.Tokens[span[^1].Token]);
            var from = span[0].Token;

            // "orange liqueur" joined from two words keeps its last: take the word before when it belongs to it.
            while (from > window.From && _words.IsIngredient(from - 1) && from > span[0].Token - 3)
                from--;
            return _speech.Text[_speech.Tokens[Math.Min(from, span[0].Token)].Start..Math.Max(last.End, first.End)].Replace(Captions.CueText.Turn, ' ');
        }

        return null;
    }

    /// <summary>How much the words right at an amount tell.</summary>
    public double WeightAt(int amount)
    {
        var weight = 0d;
        foreach (var window in Windows(amount))
        {
            if (!window.IsPhrase)
                continue;
            foreach (var (_, word) in window.Heard.Span)
                weight = Math.Max(weight, Vocabulary.WeightOf(word) > 0 ? Vocabulary.WeightOf(word) : 1);
        }

        return weight;
    }

    private readonly record struct Window(int From, ReadOnlyMemory<(int Token, string Word)> Heard, double Weight, bool IsPhrase);

    private static double Blend(double named, double weight) => named * weight;

    private double NamedBy(List<Window> windows, int drink, int line)
    {
        var best = 0d;
        foreach (var window in windows)
        {
            var named = _words.Match(drink, line, window.Heard.Span, window.IsPhrase);

            // What stands right after "of" settles it; elsewhere a stranger's word says nothing.
            if (window is { IsPhrase: true, Weight: >= 0.9 } && !window.Heard.IsEmpty)
                return named < 0 ? named : Blend(named, window.Weight);
            best = Math.Max(best, Blend(named, window.Weight));
        }

        return best;
    }

    private List<Window> Windows(int k)
    {
        var tokens = _speech.Tokens;
        var amount = _amounts[k];
        var windows = new List<Window>(5);
        var (start, end) = (_speech.SentenceStart(amount.From), _speech.SentenceEnd(amount.To - 1));
        var next = k + 1 < _amounts.Count ? _amounts[k + 1].From : tokens.Count;
        var last = k > 0 ? _amounts[k - 1].To : 0;

        // Between the sides: "two ounces of gin, that's sixty mil".
        if (amount.To > amount.FirstTo && amount.FirstTo > amount.From)
            AddPhrase(windows, amount.FirstTo, amount.To, 0.95);
        else if (amount.Counted is { Open: not null } && amount.FirstTo == amount.From)
            AddPhrase(windows, amount.From, amount.To, 0.95);
        if (amount.Counted?.Unit is not null && !amount.HasVolume)
            AddPhrase(windows, amount.From, amount.To, 0.95);

        if (amount.To < tokens.Count && tokens[amount.To - 1].Pause != Pause.Sentence)
        {
            var of = tokens[amount.To].Word is "of";
            var from = of ? amount.To + 1 : amount.To;
            var to = PhraseEnd(from, Math.Min(end, next), of ? 6 : 4);
            if (of || tokens[amount.To - 1].Pause == Pause.None)
                AddPhrase(windows, from, to, of ? 1 : IsDirect(from, to) ? 0.95 : 0.8);
        }

        // "lemon juice, one ounce": after the last amount and what was named with it.
        var back = Math.Max(Math.Max(start, last), amount.From - 9);
        var isBefore = amount.From > start && _words.IsIngredient(amount.From - 1) && amount.From - 1 >= last;
        Add(windows, isBefore ? Math.Max(back, amount.From - 3) : back, amount.From, isBefore ? 0.9 : last > start ? 0.55 : 0.85);
        var ahead = Math.Min(Math.Min(end, next), amount.To + 10);
        Add(windows, amount.To, ahead, isBefore ? 0.4 : 0.6);

        var sentence = _speech.SentenceOf[amount.From];
        if (sentence > 0 && last <= _speech.SentenceStarts[sentence])
            Add(windows, Math.Max(Math.Max(last, _speech.SentenceStarts[sentence - 1]), _speech.SentenceStarts[sentence] - 12), _speech.SentenceStarts[sentence], 0.5);
        if (sentence + 1 < _speech.Sentences && next >= _speech.SentenceStarts[sentence + 1])
        {
            var from = _speech.SentenceStarts[sentence + 1];
            if (from < tokens.Count && tokens[from].Word is "that's" or "thats" or "that" or "of" or "this")
                Add(windows, from, Math.Min(Math.Min(next, _speech.SentenceEnd(from)), from + 7), 0.5);
        }

        return windows;
    }

    private bool IsDirect(int from, int to) => _words.IsIngredient(from) || (from + 1 < to && _words.IsIngredient(from + 1));

    private int PhraseEnd(int from, int to, int most)
    {
        to = Math.Min(to, from + most);
        var isNamed = false;
        for (var i = from; i < to; i++)
        {
            if (i > from && _speech.Tokens[i].Word is "and" or "then" or "in" or "into" or "to" or "from" or "that" or "which" or "goes" or "for" or "with" or "on" or "over" or "so" or "we" or "i" or "but" or "or" or "plus" or "because" or "is" or "not" or "as" or "next")
                return i;
            if (_speech.Tokens[i].Pause != Pause.None)
                return i + 1;

            // Without punctuation the next cue may begin another sentence; what goes on is the rest of a name.
            isNamed |= Told(i) >= 0.8;
            if (isNamed && i + 1 < to && !Tails.Contains(_speech.Tokens[i + 1].Word) && !ReferenceEquals(_speech.CueAt(_speech.Tokens[i].Start), _speech.CueAt(_speech.Tokens[i + 1].Start)))
                return i + 1;
        }

        return to;
    }

    private double Told(int token)
    {
        var told = 0d;
        foreach (var (_, word) in _words.Heard(token, token + 1))
            told = Math.Max(told, Vocabulary.WeightOf(word) > 0 ? Vocabulary.WeightOf(word) : 1);
        return told;
    }

    private void AddPhrase(List<Window> windows, int from, int to, double weight)
    {
        var heard = _words.Heard(from, to);
        if (!heard.IsEmpty)
            windows.Add(new(from, heard.ToArray(), weight, true));
    }

    private void Add(List<Window> windows, int from, int to, double weight)
    {
        var heard = _words.Heard(from, to);
        if (!heard.IsEmpty)
            windows.Add(new(from, heard.ToArray(), weight, false));
    }

    private double Nearness(SpokenAmount amount, Measure? wanted)
    {
        if (wanted is null)
            return amount.Counted?.Open is not null ? 0.5 : 0;
        if (wanted is { Open: not null, HasAmount: false })
            return amount.Counted is { Open: not null, HasAmount: false } said ? said.Open == wanted.Open ? 1 : 0.6 : amount.HasVolume ? 0.3 : 0;
        var best = 0d;
        foreach (var side in new[] { amount.Ounces, amount.Metric, amount.Counted })
            best = Math.Max(best, side is null ? 0 : Nearness(side, wanted));
        return best;
    }

    private double Nearness(Measure said, Measure wanted)
    {
        if (said is { Open: not null, HasAmount: false })
            return wanted.Open == said.Open ? 0.9 : 0.1;
        double a, b;
        if (said.Unit?.Name == wanted.Unit?.Name || (said.Unit is null && wanted.Unit?.Kind is UnitKind.Count or UnitKind.Bar) || (wanted.Unit is null && said.Unit?.Kind == UnitKind.Count))
            (a, b) = (said.Middle!.Value.ToDouble(), wanted.Middle!.Value.ToDouble());
        else if (said.InMillilitres(_sheet.Convention) is { } one && wanted.InMillilitres(_sheet.Convention) is { } other)
            (a, b) = (one.ToDouble(), other.ToDouble());
        else
            return 0;
        var gap = Math.Abs(a - b) / Math.Max(a, b);
        return gap <= 0.03 ? 1 : Math.Max(0, 0.75 - gap);
    }
}
