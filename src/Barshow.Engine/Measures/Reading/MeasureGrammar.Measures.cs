namespace Barshow.Engine.Measures.Reading;

/// <content>Amounts with their units.</content>
internal sealed partial class MeasureGrammar
{
    // Beyond any vessel at a bar: the largest keg holds some 60 litres, a barrel 200 to 300.
    private static readonly Rational MostMillilitres = 400_000;
    private static readonly Rational MostGrams = 400_000;
    private static readonly Rational MostThings = 10_000;

    /// <summary>measure = [ about ] [ manner ] ( number [ range ] [ manner ] [ unit ] | unit alone ) [ "and a half" ] [ range ] [ sum ].</summary>
    public int Measure(int i, out MeasureRead measure)
    {
        measure = new() { From = i };
        var at = SkipAbout(i);
        var opening = Manner(at, ref measure);
        if (opening > at && !IsMeasureStart(opening))
            (opening, measure.MannerFrom, measure.MannerTo) = (at, 0, 0);
        at = opening;
        if (run[at].Is('(') || run[at].Is('['))
            return -1;

        var isMinus = run[at].Kind == TokenKind.Mark && run[at].Mark is '-' or '−' && run.Touches(at + 1) && (run[at].Mark == '−' || at == 0 || !run.Touches(at));
        var next = isMinus ? Number(at + 1, out var low) : FiguresGluedToZ(at, out low, out var glued) ? glued : Number(at, out low);
        if (next < 0)
            return isMinus ? -1 : UnitAlone(at, ref measure);
        if (isMinus && low.IsArticle)
            return -1;
        if (isMinus)
            low.Flaw = Flaw.BelowNought;

        measure.HasNumber = true;
        if (SizedPiece(at, next, ref measure) is var piece and > 0)
            return piece;
        measure.IsArticle = low.IsArticle;
        measure.Vague = low.Value == 3 && run[next - 1].Has(Role.Vague);
        next = SaidAgain(next, low);
        var high = low;
        if (measure.Vague || run[next - 1].Lexeme is { Cardinal: 2, Word: "couple" or "pair" })
            next = run[next].Has(Role.Of) ? next + 1 : next;
        else if (!low.IsArticle)
            next = RangeOrTimes(next, ref low, ref high, ref measure);

        next = UnitOf(next, high, ref measure, out var unit);
        Heap(ref unit, ref measure);
        next = AfterMeasureUnit(next, unit, ref low, ref high, ref measure);
        measure.To = next;
        Settle(low, high, unit.Unit, ref measure);
        return next;
    }

    // "20z" is "2 oz" with a figure for the letter.
    private bool FiguresGluedToZ(int i, out NumberRead number, out int next)
    {
        number = default;
        next = i;
        ref readonly var figures = ref run[i];
        if (figures.Kind != TokenKind.Digits || figures.Length is < 2 or > 4 || !run.Touches(i + 1) || run[i + 1].Kind != TokenKind.Word)
            return false;
        var text = run.TextOf(figures);
        if (text[^1] != '0' || !(Is(run.TextOf(run[i + 1]), "z") || Is(run.TextOf(run[i + 1]), "zs")))
            return false;
        number.Value = new(Digits(i) / 10);
        number.Repaired = true;
        next = i + 1;
        return true;
    }

    // "two (2) dashes".
    private int SaidAgain(int i, in NumberRead number) =>
        run[i].Is('(') && Number(i + 1, out var again) is var next and > 0 && !again.IsArticle && again.Value == number.Value && run[next].Is(')') ? next + 1 : i;

    private int SkipAbout(int i)
    {
        var at = i;
        if (run[at].Has(Role.Up) && run[at + 1].Has(Role.To))
            at += 2;
        else if (run[at].Kind == TokenKind.Word && run[at].Length == 2 && Is(run.TextOf(run[at]), "at") && run[at + 1].Has(Role.About))
            at += 2;
        while (at < i + 4 && (run[at].Has(Role.About) || run[at].Is('~') || run[at].Is('≈') || run[at].Is('±')))
        {
            at++;
            if (run[at].Is('.') && run.Touches(at) && !run.Touches(at + 1))
                at++;
        }

        return at > i && run[at].Kind != TokenKind.End && (IsMeasureStart(at) || run[at].Has(Role.Manner)) ? at : i;
    }

    private bool IsMeasureStart(int i) =>
        run[i].Kind is TokenKind.Digits or TokenKind.Vulgar or TokenKind.Raised
        || run[i].Is('.') || run[i].Is('⅟')
        || run[i].Lexeme is { } lexeme && (lexeme.Cardinal is not null || lexeme.Share is not null || lexeme.Unit is not null || (lexeme.Role & (Role.Article | Role.Point)) != 0);

    /// <summary>Whether what follows a number makes it part of a name: "151-proof", "40%", "12 year old", "2:1".</summary>
    public bool IsNumberInName(int i)
    {
        ref readonly var token = ref run[i];
        if (token.Kind == TokenKind.Mark)
        {
            if (token.Mark is '%' or '°' or 'º' or '‰')
                return true;
            if (token.Mark is ':' or '/' && run.Touches(i) && run.Touches(i + 1) && run[i + 1].Kind is TokenKind.Digits or TokenKind.Vulgar)
                return true;
            return token.Mark == '-' && run.Touches(i) && run.Touches(i + 1) && run[i + 1].Kind == TokenKind.Word && run[i + 1].Lexeme?.Unit is null && run[i + 1].Lexeme?.Share is null && !run[i + 1].Has(Role.Length);
        }

        return token.Kind == TokenKind.Word && (token.Has(Role.NumberInName) || run.Touches(i) && token.Lexeme is null && !Lexicon.TryNearestUnit(run.TextOf(token), out _) && !run.TextOf(token).StartsWith("x", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The unit after a number, with "of an" after a share, words of manner before it, and "12-oz" before a can.</summary>
    private int UnitOf(int i, in NumberRead number, ref MeasureRead measure, out UnitRead unit)
    {
        if (UnitAt(i, true, out unit) is var direct and > 0)
            return direct;

        // "three quarters of an ounce", "half an ounce", "half a lime".
        if (number.IsShare)
        {
            var of = run[Hyphen(i)].Has(Role.Of) ? Hyphen(Hyphen(i) + 1) : Hyphen(i);
            var article = run[of].Has(Role.Article) || of > i && run[of].Lexeme is { Cardinal: 1 } ? Hyphen(of + 1) : of;
            if (article > i && UnitAt(article, true, out unit) is var shared and > 0)
                return shared;
            if (article > i && run[article].Has(Role.Manner) && UnitAt(article + 1, true, out unit) is var sharedManner and > 0)
            {
                (measure.MannerFrom, measure.MannerTo) = (article, article + 1);
                return sharedManner;
            }

            if (article > of)
            {
                unit = default;
                return article;
            }
        }

        var manner = i;
        while (manner < i + 2 && run[manner].Has(Role.Manner))
            manner++;
        if (manner > i && UnitAt(manner, true, out unit) is var mannered and > 0)
        {
            (measure.MannerFrom, measure.MannerTo) = (i, manner);
            return mannered;
        }

        if (SizedContainer(i, ref measure, out unit) is var container and > 0)
            return container;
        unit = default;
        return i;
    }

    /// <summary>unit alone = a unit that means one: "dash of bitters", "barspoon syrup", "sprig of mint".</summary>
    private int UnitAlone(int i, ref MeasureRead measure)
    {
        var end = UnitAt(i, false, out var unit);
        if (end < 0 || run[i].Lexeme?.Open is not null)
            return -1;
        var one = new NumberRead { Value = Rational.One };
        if ((unit.Use & UnitUse.Strong) != 0 && AndShare(end, ref one) is var half && half > end)
            (end, measure.HasNumber) = (half, true);
        else if ((unit.Use & UnitUse.Alone) == 0 && !(run[end].Has(Role.Of) && run[end + 1].Kind == TokenKind.Word))
            return -1;
        Heap(ref unit, ref measure);
        measure.Unit = unit.Unit;
        measure.OtherUnit = unit.Other;
        measure.To = end;
        Settle(one, one, unit.Unit, ref measure);
        return end;
    }

    // Past here a measure is an amount that a vessel at a bar can hold, or none.
    private static void Settle(in NumberRead low, in NumberRead high, Unit? unit, ref MeasureRead measure)
    {
        measure.Repaired |= low.Repaired | high.Repaired;
        measure.Doubtful |= low.Doubtful;
        var (from, to) = (Thousands(low, unit), Thousands(high, unit));
        measure.Flaw = low.Flaw != Flaw.None ? low.Flaw : high.Flaw;
        if (measure.Flaw == Flaw.None && (from.Sign == 0 || to.Sign == 0))
            measure.Flaw = Flaw.Nought;
        if (from > to)
        {
            (from, to) = (to, from);
            measure.Doubtful = true;
        }

        if (measure.Flaw == Flaw.None && IsTooMuch(to, unit))
            measure.Flaw = Flaw.TooMuch;
        if (measure.Flaw == Flaw.None)
            measure.Measure = Measures.Measure.Between(from, to, unit);
    }

    private static Rational Thousands(in NumberRead number, Unit? unit) =>
        number.MayBeThousands && unit is not null && (unit.IsDecimal && unit.Name is "ml" or "g" or "mg") ? number.Value * 1000 : number.Value;

    private static bool IsTooMuch(Rational amount, Unit? unit)
    {
        if (amount > MostMillilitres)
            return true;
        if (unit?.MillilitresUnder(Convention.Bar) is { } millilitres)
            return amount * millilitres > MostMillilitres;
        if (unit?.Grams is { } grams)
            return amount * grams > MostGrams;
        return amount > MostThings;
    }

    /// <summary>saying = up to four words between the two sides of one callout: "that's", "which is", "or", "i.e.".</summary>
    public int SkipSaying(int i)
    {
        for (var words = 0; words < 4; words++)
        {
            if (run[i].Has(Role.Or | Role.Saying))
                i++;
            else if (run[i].Length == 1 && run[i].Kind == TokenKind.Word && Is(run.TextOf(run[i]), "i") && run[i + 1].Is('.') && run[i + 2].Kind == TokenKind.Word && Is(run.TextOf(run[i + 2]), "e"))
                i += 3;
            else
                break;
            if (run[i].Is('.') || run[i].Is(','))
                i++;
        }

        return i;
    }
}
