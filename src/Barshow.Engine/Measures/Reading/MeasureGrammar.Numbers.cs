using System.Globalization;

namespace Barshow.Engine.Measures.Reading;

/// <content>Numbers in figures and in words.</content>
internal sealed partial class MeasureGrammar
{
    /// <summary>number = figures | words.</summary>
    public int Number(int i, out NumberRead number)
    {
        var next = Figured(i, out number);
        if (next < 0)
            next = Worded(i, out number);
        number.Value = WithoutDust(number.Value);
        return next;
    }

    // Nobody pours ten-thousandths. Without them no later sum or conversion can leave 64 bits.
    private static Rational WithoutDust(Rational value) =>
        value.Numerator > MostParts || value.Denominator > MostParts ? value.RoundTo(new(1, 10_000)) : value;

    /// <summary>figured = ( decimal | fraction | whole [ joiner fraction ] ), "1 1/2", "1-½", "22,5", ".75".</summary>
    private int Figured(int i, out NumberRead number)
    {
        number = default;
        ref readonly var first = ref run[i];
        switch (first.Kind)
        {
            case TokenKind.Vulgar or TokenKind.Raised:
                return Fraction(i, ref number);
            case TokenKind.Mark when first.Mark == '⅟' || first.Mark == '|':
                return first.Mark == '⅟' ? Fraction(i, ref number) : Whole(i, ref number, out _, out _);
            case TokenKind.Mark when first.Mark is '.' or ',' or '·' && run[i + 1].Kind == TokenKind.Digits && run.Touches(i + 1) && (i == 0 || !run.Touches(i)):
                return Decimals(0, i + 1, ref number);
            case TokenKind.Digits or TokenKind.Word:
                return Whole(i, ref number, out _, out _);
            default:
                return -1;
        }
    }

    private int Whole(int i, ref NumberRead number, out long value, out int figures)
    {
        var next = Figures(i, ref number, out value, out figures);
        if (next < 0)
            return -1;
        if (value > MostWhole)
        {
            number.Flaw = Flaw.TooMuch;
            return SkipFigures(next);
        }

        number.Value = new(value);
        if (Thousands(next, value) is var thousands and > 0)
        {
            number.Value = new(value * 1000 + Digits(thousands));
            return thousands + 1;
        }

        ref readonly var mark = ref run[next];
        if (mark.Kind == TokenKind.Mark && run.Touches(next) && run.Touches(next + 1) && IsFigure(next + 1))
        {
            if (mark.Mark is '.' or ',' or '·')
                return Decimals(value, next + 1, ref number);
            if (mark.Mark == '/')
                return Over(value, next + 1, ref number);
        }

        if (LooseStroke(next, value, ref number) is var loose and > 0)
            return Over(value, loose, ref number);

        var fraction = Joiner(next);
        var part = default(NumberRead);
        var end = fraction < 0 ? -1 : Fraction(fraction, ref part);
        if (end > 0 && part.Flaw == Flaw.None && part.Value < Rational.One && part.Value.Sign > 0)
        {
            number.Value += part.Value;
            number.Repaired |= part.Repaired;
            number.IsShare = true;
            return end;
        }

        return SharesAfter(next, ref number);
    }

    // "1 / 2", "1/ 2", "1//2": only where it makes a fraction that a bar knows. The index of the lower number.
    private int LooseStroke(int i, long upper, ref NumberRead number)
    {
        if (!run[i].Is('/'))
            return -1;
        var isDouble = run[i + 1].Is('/');
        var at = isDouble ? i + 2 : i + 1;
        if (run[at].Kind != TokenKind.Digits || (!isDouble && run.Touches(i) && run.Touches(at)))
            return -1;
        if (Digits(at) is not (2 or 3 or 4 or 8) || upper <= 0 || upper >= Digits(at))
            return -1;
        number.Repaired |= isDouble || run.Touches(i) != run.Touches(at);
        return at;
    }

    // "1 000", "1 500" with a narrow or no-break space, "1'000".
    private int Thousands(int i, long value)
    {
        if (value is < 1 or > 999)
            return -1;
        var isApostrophe = run[i].Kind == TokenKind.Mark && run[i].Mark is '\'' or '’' && run.Touches(i) && run.Touches(i + 1);
        var at = isApostrophe ? i + 1 : i;
        ref readonly var group = ref run[at];
        if (group.Kind != TokenKind.Digits || group.Length != 3 || run[at + 1].Is('/'))
            return -1;
        return isApostrophe || run.TextOf(group) is "000" || run.Text[group.Start - 1] is '\u00A0' or '\u2009' or '\u202F' ? at : -1;
    }

    /// <summary>figures = digits, with the letters that stand for figures when they touch one: "2O", "l5", "I½".</summary>
    private int Figures(int i, ref NumberRead number, out long value, out int figures)
    {
        value = 0;
        figures = 0;
        var next = i;
        var repaired = false;
        while (true)
        {
            ref readonly var token = ref run[next];
            if (next > i && (!run.Touches(next) || next > i + MostTokens))
                break;
            if (token.Kind == TokenKind.Digits)
            {
                foreach (var c in run.TextOf(token))
                    Push(CharUnicodeInfo.GetDecimalDigitValue(c), ref value, ref figures);
            }
            else if (IsFigureLetter(next, i, figures > 0))
            {
                foreach (var c in run.TextOf(token))
                    Push(Slip.FigureFor(c)!.Value, ref value, ref figures);
                repaired = true;
            }
            else
            {
                break;
            }

            next++;
        }

        if (next == i)
            return -1;
        number.Repaired |= repaired;
        return next;

        static void Push(int figure, ref long value, ref int figures)
        {
            if (figures < MostFigures)
                value = value * 10 + figure;
            if (figures > 0 || figure > 0 || value > 0)
                figures++;
            else
                figures = 1;
        }
    }

    // A letter is taken for a figure only where a person would: touching figures, or alone before a fraction or a unit.
    private bool IsFigureLetter(int index, int start, bool afterFigures)
    {
        ref readonly var token = ref run[index];
        if (token.Kind is not (TokenKind.Word or TokenKind.Mark) || token.Length > 2)
            return false;
        foreach (var c in run.TextOf(token))
        {
            if (Slip.FigureFor(c) is null)
                return false;
        }

        var last = run.TextOf(token)[^1];
        ref readonly var after = ref run[index + 1];
        var touched = run.Touches(index + 1);
        if (touched && after.Kind == TokenKind.Digits)
            return afterFigures || last != 'o' || token.Length == 1;
        if (afterFigures)
            return last is 'O' or 'o' or 'I' or 'S' && token.Length == 1 && (after.Kind == TokenKind.End || after.Lexeme?.Unit is not null || after.Kind == TokenKind.Word && last is 'O' or 'o')
                || last == 'l' && after.Lexeme is { IsStrongUnit: true };
        if (index != start)
            return false;
        if (last is 'O' or 'o')
            return touched && after.Kind == TokenKind.Mark && after.Mark is '.' or ',' && run[index + 2].Kind == TokenKind.Digits && run.Touches(index + 2);
        if (last is 'Z' or 'S')
            return token.Length == 1 && after.Lexeme is { IsStrongUnit: true, Word.Length: > 1 };
        if (last is not ('I' or 'l' or '|'))
            return false;
        if (after.Kind == TokenKind.Vulgar || (touched && after.Is('/') && run[index + 2].Kind == TokenKind.Digits))
            return true;
        if (token.Kind == TokenKind.Mark)
            return false;
        return after.Kind == TokenKind.Digits && run[index + 2].Is('/') || after.Lexeme is { IsStrongUnit: true } || (touched && after.Kind == TokenKind.Mark && after.Mark == '.' && run.Touches(index + 2) && run[index + 2].Kind == TokenKind.Digits);
    }

    private bool IsFigure(int index) => run[index].Kind == TokenKind.Digits || IsFigureLetter(index, -1, false);

    /// <summary>decimal = whole ("." | "," | "·") digits; "1,000.5" too.</summary>
    private int Decimals(long whole, int i, ref NumberRead number)
    {
        var comma = run[i - 1].Mark == ',';
        var part = default(NumberRead);
        var next = Figures(i, ref part, out var value, out _);
        if (next < 0)
            return -1;
        number.Repaired |= part.Repaired;
        var places = 0;
        for (var k = i; k < next; k++)
            places += run[k].Length;
        if (comma && places == 3 && whole is > 0 and < 1000)
        {
            number.MayBeThousands = true;
            if (IsMoreFigures(next, '.', out _))
            {
                number.MayBeThousands = false;
                return Decimals(whole * 1000 + value, next + 1, ref number);
            }

            if (IsMoreFigures(next, ',', out var group) && group == 3)
            {
                number.Flaw = Flaw.TooMuch;
                return SkipFigures(next);
            }
        }
        else if (IsMoreFigures(next, '.', out _) || IsMoreFigures(next, ',', out _) || IsMoreFigures(next, '/', out _))
        {
            number.Flaw = Flaw.Malformed;
            return SkipFigures(next);
        }

        if (whole > MostWhole)
        {
            number.Flaw = Flaw.TooMuch;
            return next;
        }

        value = PlacesOf(i, next, out var scale);
        number.Value = new Rational(whole) + new Rational(value, scale);
        return next;
    }

    private long PlacesOf(int from, int to, out long scale)
    {
        long value = 0;
        scale = 1;
        for (var i = from; i < to; i++)
        {
            foreach (var c in run.TextOf(run[i]))
            {
                if (scale >= SmallestPlace)
                    return value;
                value = value * 10 + (Slip.FigureFor(c) ?? CharUnicodeInfo.GetDecimalDigitValue(c));
                scale *= 10;
            }
        }

        return value;
    }

    private bool IsMoreFigures(int i, char mark, out int places)
    {
        places = run[i + 1].Length;
        return run[i].Is(mark) && run.Touches(i) && run.Touches(i + 1) && run[i + 1].Kind == TokenKind.Digits;
    }

    private int SkipFigures(int i)
    {
        var last = i + MostTokens;
        while (i < last && run.Touches(i) && (run[i].Kind == TokenKind.Digits || run[i].Kind == TokenKind.Mark && run[i].Mark is '.' or ',' or '/'))
            i++;
        return i;
    }

    /// <summary>fraction = vulgar | digits "/" digits | raised "/" lowered | "⅟" digits.</summary>
    private int Fraction(int i, ref NumberRead number)
    {
        ref readonly var token = ref run[i];
        if (token.Kind == TokenKind.Vulgar)
        {
            number.IsShare = true;
            VulgarFraction.TryValue(token.Mark, out number.Value);
            if (number.Value.Sign == 0)
                number.Flaw = Flaw.Nought;
            if (run.Touches(i + 1) && (run[i + 1].Kind == TokenKind.Vulgar || IsMoreFigures(i + 1, '/', out _)))
                number.Flaw = Flaw.Malformed;
            return i + 1;
        }

        if (token.Is('⅟'))
            return run[i + 1].Kind is TokenKind.Digits or TokenKind.Lowered ? Over(1, i + 1, ref number) : -1;
        if (token.Kind == TokenKind.Raised)
            return run[i + 1].Is('/') && run[i + 2].Kind is TokenKind.Lowered or TokenKind.Digits ? Over(Digits(i), i + 2, ref number) : -1;
        if (token.Kind == TokenKind.Digits || IsFigureLetter(i, i, false))
        {
            var upper = default(NumberRead);
            var next = Figures(i, ref upper, out var value, out _);
            if (next > 0 && run[next].Is('/') && run.Touches(next) && run.Touches(next + 1) && IsFigure(next + 1))
            {
                number.Repaired |= upper.Repaired;
                return Over(value, next + 1, ref number);
            }

            if (next > 0 && LooseStroke(next, value, ref number) is var loose and > 0)
                return Over(value, loose, ref number);
        }

        return -1;
    }

    /// <summary>What follows the stroke of a fraction.</summary>
    private int Over(long upper, int i, ref NumberRead number)
    {
        var lower = default(NumberRead);
        long value;
        int next;
        if (run[i].Kind == TokenKind.Lowered)
            (value, next) = (Digits(i), i + 1);
        else
            next = Figures(i, ref lower, out value, out _);
        if (next < 0)
            return -1;
        number.Repaired |= lower.Repaired;
        number.IsShare = upper < value;
        if (IsMoreFigures(next, '/', out _) || IsMoreFigures(next, '.', out _))
        {
            number.Flaw = Flaw.Malformed;
            return SkipFigures(next);
        }

        if (value == 0)
        {
            number.Flaw = Flaw.DividedByNought;
            return next;
        }

        if (upper > MostWhole || value > MostOver)
        {
            number.Flaw = Flaw.TooMuch;
            return next;
        }

        number.Value = new(upper, value);
        number.Doubtful = upper is > 10 and < 100 && upper > value && value is 2 or 3 or 4 or 8 && upper % 10 < value && upper % 10 > 0;
        return next;
    }

    private long Digits(int i)
    {
        long value = 0;
        foreach (var c in run.TextOf(run[i]))
        {
            if (value < 1_000_000_000)
                value = value * 10 + (int)char.GetNumericValue(c) switch { < 0 => c - '₀', var figure => figure };
        }

        return value;
    }

    /// <summary>joiner = nothing | "-" | "and" | "&amp;" | "+": between a whole number and its fraction. The index after it.</summary>
    private int Joiner(int i)
    {
        ref readonly var token = ref run[i];
        if (token.Kind == TokenKind.Mark)
        {
            if (token.Mark is '-' or '–')
                return run.Touches(i) && run.Touches(i + 1) ? i + 1 : -1;
            return token.Mark is '&' or '+' ? i + 1 : -1;
        }

        return token.Has(Role.And) ? i + 1 : i;
    }

    /// <summary>worded = [ article ] share | article | cardinal [ shares ] | [ cardinal ] "point" figures.</summary>
    private int Worded(int i, out NumberRead number)
    {
        number = default;
        ref readonly var first = ref run[i];
        if (first.Lexeme is not { } lexeme)
            return MisspeltNumber(i, ref number);
        if ((lexeme.Role & Role.Article) != 0)
            return AfterArticle(i, ref number);
        if (lexeme.Share is { } share)
            return IsHalfAndHalf(i) ? -1 : AfterShare(i + 1, share, ref number);
        if ((lexeme.Role & Role.Point) != 0)
            return PointFigures(i + 1, 0, ref number);
        if ((lexeme.Role & Role.Vague) != 0)
        {
            number.Value = lexeme.Cardinal!.Value;
            return i + 1;
        }

        var next = Cardinal(i, out var value, ref number);
        if (next < 0)
            return SoundsLikeNumber(i, ref number);
        number.Value = new(value);
        if (value == 0 && !run[next].Has(Role.Point))
            number.Flaw = Flaw.Nought;
        if (Overs(next, value, out var over) is var afterOver and > 0)
        {
            (number.Value, number.IsShare) = (over, over < Rational.One);
            return afterOver;
        }

        return run[next].Has(Role.Point) ? PointFigures(next + 1, value, ref number) : SharesAfter(next, ref number);
    }

    private int AfterArticle(int i, ref NumberRead number)
    {
        ref readonly var next = ref run[i + 1];
        if (next.Lexeme is { } lexeme)
        {
            if (lexeme.Share is { } share)
                return AfterShare(i + 2, share, ref number);
            if (lexeme.Scale is not null)
            {
                var end = Cardinal(i + 1, out var value, ref number);
                number.Value = new(value);
                return end;
            }

            if (lexeme.Cardinal is { } cardinal && (cardinal is 12 or 2 || (lexeme.Role & Role.Vague) != 0))
            {
                number.Value = cardinal;
                return i + 2;
            }
        }

        number.Value = Rational.One;
        number.IsArticle = true;
        return i + 1;
    }

    // "half a dozen" is six.
    private int AfterShare(int i, Rational share, ref NumberRead number)
    {
        number.Value = share;
        number.IsShare = true;
        var dozen = run[i].Has(Role.Article) ? i + 1 : i;
        if (run[dozen].Lexeme is not { Cardinal: 12 })
            return i;
        number.Value = share * 12;
        number.IsShare = false;
        return dozen + 1;
    }

    // Half-and-half is a kind of cream.
    private bool IsHalfAndHalf(int i)
    {
        var and = run[i + 1].Is('-') ? i + 2 : i + 1;
        var half = run[and + 1].Is('-') ? and + 2 : and + 1;
        return run[and].Has(Role.And) && run[half].Lexeme?.Share is not null && run[i].Lexeme!.Share == run[half].Lexeme!.Share;
    }

    /// <summary>cardinal = number words up to the millions: "twenty-two", "one hundred and five", "one fifty".</summary>
    private int Cardinal(int i, out long value, ref NumberRead number)
    {
        value = 0;
        long group = 0;
        var next = i;
        var words = 0;
        long last = long.MaxValue;
        while (words < 24)
        {
            var at = words > 0 && run[next].Is('-') && run.Touches(next) && run.Touches(next + 1) ? next + 1 : next;
            if (words > 0 && run[at].Has(Role.And) && last >= 100 && last % 100 == 0 && run[at + 1].Lexeme is { Cardinal: < 100, Word: not "dozen" } && ShareAt(at + 2) < 0)
                at++;
            var lexeme = run[at].Lexeme;
            if (lexeme?.Cardinal is { } small && (lexeme.Role & Role.Vague) == 0)
            {
                if (lexeme.Word is "dozen")
                {
                    if (words != 1 || group > 12)
                        break;
                    value = group * 12;
                    return at + 1;
                }

                if (lexeme.Word is "couple" or "pair" && words > 0)
                    break;
                var fits = words == 0 || last % 100 == 0 && last >= 100 || (last is >= 20 and < 100 && last % 10 == 0 && small is > 0 and < 10) || (group is > 0 and < 10 && last == group && small is >= 10 && words == 1);
                if (!fits)
                    break;
                group = group is > 0 and < 10 && last == group && small >= 10 ? group * 100 + small : group + small;
                last = small;
            }
            else if (lexeme?.Scale is { } scale && words > 0 && group > 0)
            {
                if (scale == 100)
                    group *= 100;
                else
                    (value, group) = (value + group * scale, 0);
                last = scale;
            }
            else
            {
                break;
            }

            words++;
            next = at + 1;
            if (value > 1_000_000_000 || group > 1_000_000_000)
                break;
        }

        if (words == 0 && run[i].Lexeme?.Scale is { } alone)
        {
            (group, next, words, last) = (alone, i + 1, 1, alone);
            while (words < 24)
            {
                var at = run[next].Has(Role.And) && run[next + 1].Lexeme?.Cardinal is < 100 ? next + 1 : next;
                var part = default(NumberRead);
                if (run[at].Lexeme?.Cardinal is null)
                    break;
                var end = Cardinal(at, out var rest, ref part);
                if (end < 0 || rest >= alone)
                    break;
                group += rest;
                next = end;
                break;
            }
        }

        if (words == 0)
            return -1;
        value += group;
        return next;
    }

    /// <summary>shares = share ("three quarters") | "and" ( [ article ] share | cardinal share | fraction ): "one and a half".</summary>
    private int SharesAfter(int i, ref NumberRead number)
    {
        if (number.Flaw is not (Flaw.None or Flaw.Nought))
            return i;
        if (run[i].Lexeme is { Cardinal: 12, Word: "dozen" })
        {
            number.Value *= 12;
            return i + 1;
        }

        var at = run[i].Is('-') && run.Touches(i) && run.Touches(i + 1) ? i + 1 : i;
        if (run[at].Lexeme?.Share is { } share && number.Value < new Rational(20) && number.Value.IsWhole)
        {
            if (IsHalfAndHalf(at))
                return i;
            // "1 half" and "three quarters"; but "1 half pint" keeps its pint.
            number.Value *= share;
            number.IsShare = true;
            return at + 1;
        }

        return AndShare(i, ref number);
    }

    /// <summary>"and a half", "and three quarters", "and ½": added to what was read.</summary>
    private int AndShare(int i, ref NumberRead number)
    {
        var isIn = (run[i].Has(Role.In) || run[i].Lexeme?.Word is "an") && run[i + 1].Has(Role.Article) && run[i + 2].Lexeme?.Share is not null;
        if (!run[i].Has(Role.And) && !run[i].Is('&') && !run[i].Is('+') && !isIn)
            return i;
        var at = run[i + 1].Has(Role.Article) ? i + 2 : i + 1;
        var part = default(NumberRead);
        int end;
        if (run[at].Lexeme?.Share is { } share)
        {
            part.Value = share;
            end = at + 1;
        }
        else if (run[at].Lexeme?.Cardinal is { } several && several is > 0 and < 20 && ShareAt(at + 1) is var shareAt and > 0)
        {
            part.Value = several * run[shareAt].Lexeme!.Share!.Value;
            end = shareAt + 1;
        }
        else if (run[at].Kind == TokenKind.Digits && ShareAt(at + 1) is var sharesAt and > 0)
        {
            part.Value = new Rational(Digits(at)) * run[sharesAt].Lexeme!.Share!.Value;
            end = sharesAt + 1;
        }
        else if (run[at].Lexeme?.Cardinal is not null && Cardinal(at, out var upper, ref part) is var overAt and > 0 && Overs(overAt, upper, out part.Value) is var afterOver and > 0)
        {
            end = afterOver;
        }
        else
        {
            end = Fraction(at, ref part);
        }

        if (end < 0 || part.Flaw != Flaw.None || part.Value >= Rational.One || part.Value.Sign <= 0)
            return i;
        number.Value += part.Value;
        number.Repaired |= isIn;
        number.IsShare = true;
        return end;
    }

    // "seven over forty-eight".
    private int Overs(int i, long upper, out Rational value)
    {
        value = default;
        if (!run[i].Has(Role.Over) || upper > MostWhole)
            return -1;
        var ignored = default(NumberRead);
        var next = Cardinal(i + 1, out var lower, ref ignored);
        if (next < 0 || lower is 0 or > MostOver)
            return -1;
        value = new(upper, lower);
        return next;
    }

    private int ShareAt(int i)
    {
        var at = run[i].Is('-') && run.Touches(i) && run.Touches(i + 1) ? i + 1 : i;
        return run[at].Lexeme?.Share is null ? -1 : at;
    }

    /// <summary>point figures = "point" ( digit words | tens [ digit ] | digits ): "point seven five", "one point two five".</summary>
    private int PointFigures(int i, long whole, ref NumberRead number)
    {
        long value = 0, scale = 1;
        var next = i;
        if (run[next].Kind == TokenKind.Digits && run[next].Length <= 6)
        {
            value = Digits(next);
            for (var place = 0; place < run[next].Length; place++)
                scale *= 10;
            next++;
        }
        else
        {
            while (scale < 1_000_000)
            {
                var lexeme = run[next].Lexeme;
                var figure = lexeme is { Cardinal: { } c } ? c : lexeme is { SoundsLike: 0 } ? 0 : -1;
                if (figure is >= 0 and < 10)
                {
                    value = value * 10 + figure;
                    scale *= 10;
                }
                else if (next == i && figure is >= 10 and < 100)
                {
                    value = figure;
                    scale = 100;
                    if (figure % 10 == 0 && run[next + 1].Is('-') && run[next + 2].Lexeme is { Cardinal: > 0 and < 10 } joined)
                    {
                        value += joined.Cardinal!.Value;
                        next += 2;
                    }
                    else if (figure >= 20 && figure % 10 == 0 && run[next + 1].Lexeme is { Cardinal: > 0 and < 10 } digit)
                    {
                        value += digit.Cardinal!.Value;
                        next++;
                    }

                    next++;
                    break;
                }
                else
                {
                    break;
                }

                next++;
            }
        }

        if (scale == 1)
            return -1;
        if (whole > MostWhole)
        {
            number.Flaw = Flaw.TooMuch;
            return next;
        }

        number.Value = new Rational(whole) + new Rational(value, scale);
        number.Flaw = number.Value.Sign == 0 ? Flaw.Nought : Flaw.None;
        return next;
    }

    private int SoundsLikeNumber(int i, ref NumberRead number)
    {
        if (run[i].Lexeme?.SoundsLike is not { } heard)
            return -1;
        if (heard == 0)
            return run[i + 1].Has(Role.Point) ? PointFigures(i + 2, 0, ref number) : -1;
        if (run[i + 1].Lexeme is not { IsStrongUnit: true } unit || unit.Word.Length < 2)
            return -1;
        number.Value = heard;
        number.Repaired = true;
        return i + 1;
    }

    // A misspelt number word is only looked for where a unit follows it.
    private int MisspeltNumber(int i, ref NumberRead number)
    {
        if (!mends || run[i].Kind != TokenKind.Word || run[i + 1].Lexeme is not { } after || !(after.IsStrongUnit || after.Share is not null || (after.Role & Role.And) != 0 && run[i + 2].Has(Role.Article)))
            return -1;
        if (!Lexicon.TryNearestNumber(run.TextOf(run[i]), out var meant))
            return -1;
        number.Repaired = true;
        if (meant.Share is { } share)
            return AfterShare(i + 1, share, ref number);
        number.Value = meant.Cardinal!.Value;
        return SharesAfter(i + 1, ref number);
    }
}
