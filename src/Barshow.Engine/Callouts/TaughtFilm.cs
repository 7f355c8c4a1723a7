using Barshow.Engine.Callouts.Segments;
using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts;

/// <summary>A film understood: its speech, its amounts, whose they are, and where each drink is taught.</summary>
internal sealed class TaughtFilm
{
    /// <summary>No film says more; the bound keeps hostile files from holding the machine, and what is beyond it is told.</summary>
    public const int MostAmounts = 2_000;

    private const int MostNames = 4_000;

    private TaughtFilm(SpeechText speech, FilmSheet sheet, LineupWords words)
    {
        (Speech, Sheet, Words) = (speech, sheet, words);
        Amounts = new AmountFinder(speech, words, sheet).Find();
        IsCut = Amounts.Count > MostAmounts;
        if (IsCut)
            Amounts.RemoveRange(MostAmounts, Amounts.Count - MostAmounts);
        new MentionFinder(speech, words).Mark(Amounts);
        var names = new NameFinder(speech, sheet).Find();
        if (names.Count > MostNames)
            names.RemoveRange(MostNames, names.Count - MostNames);
        Names = names;
        new CorrectionFinder(speech, words, [.. names.Select(name => name.From)]).Mark(Amounts);
        Fit = new LineFit(speech, words, sheet, Amounts);
        Stretches = new Segmenter(speech, words, sheet, Amounts, names, Fit).Find();
        Ties = new LineTies(speech, words, sheet, Amounts, Fit, names).Of(Stretches);
        Repeats = new bool[Amounts.Count];
        Settle();
    }

    public SpeechText Speech { get; }

    /// <summary>Whether more amounts are said than are looked at.</summary>
    public bool IsCut { get; }

    public FilmSheet Sheet { get; }

    public LineupWords Words { get; }

    public List<SpokenAmount> Amounts { get; }

    public IReadOnlyList<NameMention> Names { get; }

    public LineFit Fit { get; }

    public IReadOnlyList<Stretch> Stretches { get; }

    public IReadOnlyList<IReadOnlyList<Tie>> Ties { get; }

    public bool[] Repeats { get; }

    public static TaughtFilm Of(SpeechText speech, FilmSheet sheet) => new(speech, sheet, new LineupWords(speech, sheet));

    public double? TimeOf(int amount) => Speech.TimeOf(Amounts[amount].From);

    public string Quote(int amount) => Speech.Quote(Amounts[amount].Place);

    /// <summary>The stretch that holds an amount.</summary>
    public Stretch? StretchOf(int amount) => Stretches.FirstOrDefault(stretch => Amounts[amount].From >= stretch.From && Amounts[amount].From < stretch.To);

    /// <summary>The amounts that are poured for a line, in order: no mention, nothing taken back.</summary>
    public IEnumerable<int> PouredFor(int drink, int line) =>
        Enumerable.Range(0, Amounts.Count).Where(k => !Amounts[k].Mention && !Amounts[k].Retracted && Ties[k].Contains(new(drink, line)));

    /// <summary>Both sides of an amount as one callout; null when it is no volume.</summary>
    public Callout? CalloutOf(SpokenAmount amount)
    {
        var ounces = amount.Ounces ?? (amount is { Metric: not null, Counted: { HasAmount: true, Unit.Kind: UnitKind.Volume } spoons } ? spoons : null);
        if (ounces is null && amount.Metric is null)
            return null;
        return ounces is null ? Callout.Of(amount.Metric!, Sheet.Convention) : Callout.Of(ounces, Sheet.Convention, amount.Metric);
    }

    public IReadOnlyList<SaidCallout> Callouts() => [.. Enumerable.Range(0, Amounts.Count).Select(CalloutAt)];

    public IReadOnlyList<FilmSegment> Segments() => [.. Stretches.Where(stretch => stretch.Drinks.Count > 0).Select(stretch => new FilmSegment(
        [.. stretch.Drinks.Select(drink => Sheet.Drinks[drink].Name)], Speech.TimeOf(stretch.From), Speech.CueAt(Speech.Tokens[stretch.To - 1].Start)?.EndSeconds))];

    private SaidCallout CalloutAt(int k)
    {
        var amount = Amounts[k];
        var ties = Ties[k];
        var drinks = ties.Count > 0 ? ties.Select(tie => tie.Drink).Distinct() : StretchOf(k)?.Drinks.Take(1) ?? [];
        var isTwoSided = amount.Metric is not null && (amount.Ounces is not null || amount.Counted is { Unit.Kind: UnitKind.Volume });
        return new(Quote(k))
        {
            TimeSeconds = TimeOf(k),
            EndSeconds = Speech.CueAt(amount.Place.End - 1)?.EndSeconds,
            Places = [.. ties.Select(tie => (tie.Drink, tie.Line))],
            Ounces = amount.Ounces,
            Metric = amount.Metric,
            Counted = amount.Counted,
            Agrees = isTwoSided ? CalloutOf(amount)?.Agrees : null,
            Drinks = [.. drinks.Select(drink => Sheet.Drinks[drink].Name)],
            Ingredient = ties.Count > 0 ? Sheet.Drinks[ties[0].Drink].Lines[ties[0].Line].Ingredient : Fit.NameAt(k),
            IsInSpec = ties.Count > 0,
            Retracted = amount.Retracted,
            Repeat = Repeats[k],
            Mention = amount.Mention,
        };
    }

    // Late corrections take back what was said of the same line; the same amount said again is a repeat.
    private void Settle()
    {
        var said = new Dictionary<Tie, List<int>>();
        for (var k = 0; k < Amounts.Count; k++)
        {
            foreach (var tie in Ties[k])
            {
                if (!said.TryGetValue(tie, out var before))
                    said[tie] = before = [];
                if (Amounts[k].CorrectsEarlier)
                {
                    foreach (var earlier in before.Where(earlier => !Amounts[earlier].Mention && !IsSame(earlier, k)))
                        Amounts[earlier].Retracted = true;
                }

                if (!Amounts[k].Mention && !Amounts[k].Retracted)
                    Repeats[k] |= before.Exists(earlier => !Amounts[earlier].Mention && !Amounts[earlier].Retracted && IsSame(earlier, k));
                before.Add(k);
            }
        }

        for (var k = 0; k < Amounts.Count; k++)
            Repeats[k] &= !Amounts[k].Retracted;
    }

    private bool IsSame(int a, int b)
    {
        var (one, other) = (Amounts[a], Amounts[b]);
        if (one.HasVolume && other.HasVolume)
            return one.Millilitres(Sheet.Convention) is { } first && other.Millilitres(Sheet.Convention) is { } second && Math.Abs(first - second) <= 0.03 * Math.Max(first, second);
        return one.Counted is not null && one.Counted == other.Counted;
    }
}
