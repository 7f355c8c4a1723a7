using Barshow.Engine.Callouts.Speech;

namespace Barshow.Engine.Callouts.Segments;

/// <summary>Ties the amounts of each stretch to the lines of its drinks.</summary>
internal sealed class LineTies(SpeechText speech, LineupWords words, FilmSheet sheet, IReadOnlyList<SpokenAmount> amounts, LineFit fit, IReadOnlyList<NameMention> names)
{
    // Below this what is named is no match; above it, it is.
    private const double Surely = 0.3;

    private readonly List<Tie>[] _ties = [.. amounts.Select(_ => new List<Tie>())];
    private readonly HashSet<(int Drink, int Line)> _said = [];

    /// <summary>For each amount the lines it is tied to: none, one, or several when it is said of each or of drinks side by side.</summary>
    public IReadOnlyList<IReadOnlyList<Tie>> Of(IReadOnlyList<Stretch> stretches)
    {
        foreach (var stretch in stretches)
            TieNamed(stretch);
        foreach (var stretch in stretches)
            TieUnnamed(stretch);

        // What is taken back was meant for what replaces it.
        for (var k = amounts.Count - 2; k >= 0; k--)
        {
            if (amounts[k].Retracted && _ties[k].Count == 0)
                _ties[k].AddRange(_ties[k + 1]);
        }

        return _ties;
    }

    private IEnumerable<int> In(Stretch stretch)
    {
        for (var k = 0; k < amounts.Count; k++)
        {
            if (amounts[k].From >= stretch.From && amounts[k].From < stretch.To)
                yield return k;
        }
    }

    private void TieNamed(Stretch stretch)
    {
        foreach (var k in In(stretch))
        {
            foreach (var drink in DrinksOf(stretch, k))
            {
                if (amounts[k].IsEach && TieEach(k, drink))
                    continue;
                var line = Best(k, drink);
                if (line < 0)
                    continue;
                _ties[k].Add(new(drink, line));
                if (!amounts[k].Mention)
                    _said.Add((drink, line));
            }

            KeepNearest(k);
        }
    }

    // Side by side, an amount that is right for one drink and wrong for the other belongs to the one.
    private void KeepNearest(int k)
    {
        if (_ties[k].Select(tie => tie.Drink).Distinct().Count() < 2)
            return;
        var best = _ties[k].Max(tie => Rank(k, tie));
        _ties[k].RemoveAll(tie => Rank(k, tie) < best - 0.25);
    }

    private double Rank(int k, Tie tie) => fit.Named(k, tie.Drink, tie.Line) + (0.6 * (fit.Near(k, tie.Drink, tie.Line) >= 1 ? 1 : 0));

    // A name in the amount's own sentence says which of several drinks is meant.
    private IReadOnlyList<int> DrinksOf(Stretch stretch, int k)
    {
        if (stretch.Drinks.Count < 2)
            return stretch.Drinks;
        var from = speech.SentenceStart(amounts[k].From);
        for (var n = names.Count - 1; n >= 0; n--)
        {
            if (names[n].From >= from && names[n].From < amounts[k].From && stretch.Drinks.Contains(names[n].Drink)
                && !names.Any(other => other.Drink != names[n].Drink && other.From >= from && other.From < amounts[k].From))
                return [names[n].Drink];
        }

        return stretch.Drinks;
    }

    private int Best(int k, int drink)
    {
        var (best, score) = (-1, Surely);
        for (var line = 0; line < sheet.Drinks[drink].Lines.Count; line++)
        {
            var named = fit.Named(k, drink, line);
            if (named < Surely || !fit.IsOfOneKind(k, drink, line))
                continue;

            // Of two lines named alike, the nearer amount, and the one not said yet.
            var rank = named + (0.3 * fit.Near(k, drink, line)) - (_said.Contains((drink, line)) ? 0.1 : 0);
            if (rank > score)
                (best, score) = (line, rank);
        }

        return best;
    }

    // "An ounce each of gin, bitter and vermouth."
    private bool TieEach(int k, int drink)
    {
        var heard = words.Heard(speech.SentenceStart(amounts[k].From), Math.Min(speech.Tokens.Count, speech.SentenceEnd(amounts[k].To - 1)));
        var any = false;
        for (var line = 0; line < sheet.Drinks[drink].Lines.Count; line++)
        {
            if (words.Match(drink, line, heard, isPhrase: false) < 0.5 || (fit.Near(k, drink, line) < 0.3 && sheet.Drinks[drink].Lines[line].Measure is { HasAmount: true }))
                continue;
            _ties[k].Add(new(drink, line));
            _said.Add((drink, line));
            any = true;
        }

        return any;
    }

    private void TieUnnamed(Stretch stretch)
    {
        var last = -1;
        foreach (var k in In(stretch))
        {
            if (_ties[k].Count > 0)
            {
                last = _ties[k][^1].Line;
                continue;
            }

            if (amounts[k].Mention || amounts[k].IsEach)
                continue;
            foreach (var drink in stretch.Drinks)
            {
                if (BestUnsaid(k, drink, last) is not (>= 0 and var line))
                    continue;
                _ties[k].Add(new(drink, line));
                if (!amounts[k].Retracted)
                    _said.Add((drink, line));
                last = line;
            }

            KeepNearest(k);
        }
    }

    // Nothing known is named: the line that is left, by order and amount.
    private int BestUnsaid(int k, int drink, int last)
    {
        if (Enumerable.Range(0, sheet.Drinks[drink].Lines.Count).Any(line => fit.Named(k, drink, line) < -0.2))
        {
            if (fit.WeightAt(k) >= 0.6)
                return -1;
        }

        var (best, score) = (-1, 0.35);
        for (var line = 0; line < sheet.Drinks[drink].Lines.Count; line++)
        {
            if (!fit.IsOfOneKind(k, drink, line))
                continue;
            var near = fit.Near(k, drink, line);
            var rank = near + (0.5 * Math.Max(0, fit.Named(k, drink, line))) + (line == last + 1 ? 0.25 : line == last && near >= 1 ? 0.1 : 0) - (_said.Contains((drink, line)) ? near >= 1 ? 0.5 : 1 : 0);
            if (rank > score)
                (best, score) = (line, rank);
        }

        return best;
    }
}
