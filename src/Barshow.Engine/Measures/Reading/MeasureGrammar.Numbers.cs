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
        if (Power(next) is var power and > 0)
        {
            number.Flaw = Flaw.Power;
            return power;
        }

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
        if (end > 0 && part.Flaw == Flaw.Malformed)
        {
            number.Flaw = Flaw.Malformed;
            return SkipFigures(end);
        }

        if (end > 0 && part.Flaw == Flaw.None && part.Value < Rational.One && part.Value.Sign > 0)
        {
            number.Value += part.Value;
            number.Repaired |= part.Repaired || (run[next].Kind == TokenKind.Mark && run[next].Mark is '.' or ',');
            number.IsShare = true;
            return end;
        }

        return SharesAfter(next, ref number);
    }

    // "1e3", "1E-2".
    private int Power(int i)
    {
        if (run[i].Kind != TokenKind.Word || run[i].Length != 1 || !run.Touches(i) || !Is(run.TextOf(run[i]), "e"))
            return -1;
        var at = run[i + 1].Kind == TokenKind.Mark && run[i + 1].Mark is '-' or '+' && run.Touches(i + 1) ? i + 2 : i + 1;
        return run[at].Kind == TokenKind.Digits && run.Touches(at) ? SkipFigures(at + 1) : -1;
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
                || last is 'l' or 'B' or 'Z' && after.Lexeme is { IsStrongUnit: true };
        if (index != start)
            return false;
        if (last is 'O' or 'o')
            return touched && after.Kind == TokenKind.Mark && after.Mark is '.' or ',' && run[index + 2].Kind == TokenKind.Digits && run.Touches(index + 2);
        if (last is 'Z' or 'S' or 'B')
            return token.Length == 1 && after.Lexeme is { IsStrongUnit: true, Word.Length: > 1 };
        if (last is not ('I' or 'l' or '|'))
            return false;
        if (after.Kind == TokenKind.Vulgar || (touched && after.Is('/') && run[index + 2].Kind == TokenKind.Digits))
            return true;
        if (token.Kind == TokenKind.Mark)
            return false;
        return after.Kind == TokenKind.Digits && run[index + 2].Is('/') || after.Lexeme is { IsStrongUnit: true } || (touched && after.Kind == TokenKind.Mark && after.Mark == '.' && run.Touches(index + 2) && run[index + 2].Kind == TokenKind.Digits);
    }

    private bool IsFigure(int index) => run[index].Kind == TokenKind.Digits || IsFigureLetter(index, -1, false)
        || mends && run[index].Kind == TokenKind.Word && run[index].Length == 1 && IsFigureLetter(index, index, false);
}
