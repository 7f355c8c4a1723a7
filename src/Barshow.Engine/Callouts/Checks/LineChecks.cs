using Barshow.Engine.Callouts.Segments;
using Barshow.Engine.Callouts.Speech;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts.Checks;

/// <summary>Amounts against the lines of the specs.</summary>
internal static class LineChecks
{
    private const double Tolerance = 0.03;

    // A spoon or a dash is no exact volume: against millilitres it is only held to its order of size.
    private const double SpoonTolerance = 0.35;

    private static readonly Phrase SameAgain = new("same amount|again|of|for|measure|goes|with", "the same", "equal amount|measure|amounts", "likewise", "ditto", "equal parts", "as much");

    public static IEnumerable<Finding> Findings(TaughtFilm film)
    {
        for (var k = 0; k < film.Amounts.Count; k++)
        {
            if (film.Amounts[k].Mention || film.Amounts[k].Retracted)
                continue;
            var agrees = film.CalloutOf(film.Amounts[k])?.Agrees ?? true;
            if (!agrees && !film.Repeats[k])
                yield return CheckSentences.PairDisagrees(film, k);
            foreach (var finding in OfTies(film, k))
                yield return finding;
            if (film.Ties[k].Count == 0 && IsStranger(film, k))
                yield return CheckSentences.NotInSpec(film, k, film.StretchOf(k)!.Drinks[0]);
        }

        for (var drink = 0; drink < film.Sheet.Drinks.Count; drink++)
        {
            foreach (var finding in OfDrink(film, drink))
                yield return finding;
        }
    }

    private static IEnumerable<Finding> OfTies(TaughtFilm film, int k)
    {
        var wrong = film.Ties[k].Where(tie => Differs(film, film.Amounts[k], film.Sheet.Drinks[tie.Drink].Lines[tie.Line].Measure)).ToList();
        foreach (var tie in wrong)
        {
            // The same wrong amount said again is one mistake.
            if (!(film.Repeats[k] && film.PouredFor(tie.Drink, tie.Line).First() != k))
                yield return CheckSentences.Differs(film, k, tie);
        }
    }

    // A pair whose sides disagree differs from the spec only when neither side is the spec's.
    private static bool Differs(TaughtFilm film, SpokenAmount amount, Measure? wanted)
    {
        if (wanted is not { HasAmount: true, Open: null } || amount.Counted is { Open: not null, HasAmount: false } && !amount.HasVolume)
            return false;
        var convention = film.Sheet.Convention;
        if (amount.HasVolume && wanted.InMillilitres(convention) is { } millilitres && wanted.Unit!.Kind == UnitKind.Volume)
        {
            return new[] { amount.Ounces, amount.Metric }.OfType<Measure>().All(side => IsOff(side, wanted, convention));
        }

        if (amount.Counted is not { HasAmount: true } said)
            return amount.HasVolume && wanted.InMillilitres(convention) is { } loose && !Within(amount.Millilitres(convention) ?? 0, loose.ToDouble(), SpoonTolerance);
        if (said.Unit?.Name == wanted.Unit?.Name || said.Unit is null || wanted.Unit is null)
            return said.High < wanted.Low || said.Low > wanted.High;
        if (said.InMillilitres(convention) is { } one && wanted.InMillilitres(convention) is { } other)
            return !Within(one.ToDouble(), other.ToDouble(), said.Unit.Kind == UnitKind.Volume && wanted.Unit.Kind == UnitKind.Volume ? Tolerance : SpoonTolerance);
        return false;
    }

    private static bool IsOff(Measure side, Measure wanted, Convention convention)
    {
        var each = side.Unit!.MillilitresUnder(convention)!.Value;
        var (low, high) = ((side.Low!.Value * each).ToDouble(), (side.High!.Value * each).ToDouble());
        var of = wanted.Unit!.MillilitresUnder(convention)!.Value;
        var (from, to) = ((wanted.Low!.Value * of).ToDouble(), (wanted.High!.Value * of).ToDouble());
        return high < from * (1 - Tolerance) - 1e-9 || low > to * (1 + Tolerance) + 1e-9;
    }

    private static bool Within(double said, double wanted, double tolerance) => Math.Abs(said - wanted) <= tolerance * Math.Max(said, wanted) + 1e-9;

    // Something is named right at the amount that the drink does not have.
    private static bool IsStranger(TaughtFilm film, int k)
    {
        var amount = film.Amounts[k];
        if (film.StretchOf(k) is not { Drinks.Count: > 0 } stretch || film.Fit.NameAt(k) is null || film.Fit.WeightAt(k) < 0.45)
            return false;
        if (amount.Counted is { } counted && !amount.HasVolume && counted.Unit?.Kind is UnitKind.Mass or UnitKind.Count)
            return false;
        if (amount.Counted is { Open: not null } && !amount.HasVolume && IsByHand(amount.Counted))
            return false;
        if (amount.Counted?.Unit is { } unit && !amount.HasVolume && (unit == Unit.Cup || unit == Unit.Litre || unit == Unit.Pint || unit == Unit.Quart))
            return false;
        return stretch.Drinks.All(drink => !IsKnown(film, k, drink));
    }

    private static bool IsByHand(Measure measure) => measure.Open is OpenMeasure.Squeeze or OpenMeasure.Crack or OpenMeasure.Splash or OpenMeasure.ToTaste;

    private static bool IsKnown(TaughtFilm film, int k, int drink)
    {
        for (var line = 0; line < film.Sheet.Drinks[drink].Lines.Count; line++)
        {
            if (film.Fit.Named(k, drink, line) >= 0.3)
                return true;
        }

        return false;
    }

    private static IEnumerable<Finding> OfDrink(TaughtFilm film, int drink)
    {
        var stretches = film.Stretches.Where(stretch => stretch.Drinks.Contains(drink)).ToList();
        if (stretches.Count == 0)
        {
            if (film.Speech.Tokens.Count > 0)
                yield return CheckSentences.DrinkNotSaid(film, drink);
            yield break;
        }

        for (var line = 0; line < film.Sheet.Drinks[drink].Lines.Count; line++)
        {
            var wanted = film.Sheet.Drinks[drink].Lines[line];
            var poured = film.PouredFor(drink, line).ToList();
            if (poured.Count == 0)
            {
                if (IsExpected(wanted) && !IsSaidOtherwise(film, drink, line, stretches))
                    yield return CheckSentences.NotSaid(film, drink, line, stretches);
                continue;
            }

            // Spoons, dashes and what is left to the hand are the same in both worlds.
            var amounts = poured.ConvertAll(k => film.Amounts[k]);
            var hasOunces = amounts.Exists(amount => amount.Ounces is not null);
            var hasMetric = amounts.Exists(amount => amount.Metric is not null);
            if (hasOunces != hasMetric && wanted.Measure is not { Open: not null } && !amounts.Exists(amount => amount.Counted is { HasAmount: true }))
                yield return CheckSentences.OneUnitOnly(film, drink, line, poured.First(k => film.Amounts[k].HasVolume));
        }
    }

    private static bool IsExpected(SheetLine line) => !line.Optional && line.Measure is not null;

    // Left to the hand, counted as one, or "the same of vermouth": the ingredient alone says it.
    private static bool IsSaidOtherwise(TaughtFilm film, int drink, int line, List<Stretch> stretches)
    {
        var measure = film.Sheet.Drinks[drink].Lines[line].Measure!;
        var isOne = measure is { HasAmount: true, IsRange: false } && measure.Low == Rational.One && measure.Unit?.Kind is null or UnitKind.Count or UnitKind.Bar && measure.Unit != Unit.Dash && measure.Unit != Unit.Barspoon;
        foreach (var stretch in stretches)
        {
            var (first, last) = (film.Speech.SentenceOf[stretch.From], film.Speech.SentenceOf[stretch.To - 1]);
            for (var sentence = first; sentence <= last; sentence++)
            {
                var from = Math.Max(stretch.From, film.Speech.SentenceStarts[sentence]);
                var to = Math.Min(stretch.To, film.Speech.SentenceStarts[sentence + 1]);
                var heard = film.Words.Heard(from, to);
                if (film.Words.Match(drink, line, heard, isPhrase: false) < 0.45)
                    continue;
                if (measure.Open is not null || isOne || SameAgain.IsIn(film.Speech, from, to))
                    return true;
                if (OpenSaid.IsIn(film.Speech, from, to) && !film.Amounts.Exists(amount => amount.From >= from && amount.From < to && !amount.Mention && amount.HasVolume))
                    return true;
            }
        }

        return false;
    }

    private static readonly Phrase OpenSaid = new("top|topped|topping", "fill|filled it|up|with", "lengthen", "to the top|brim|rim");
}
