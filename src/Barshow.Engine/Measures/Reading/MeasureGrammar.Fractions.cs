using System.Globalization;

namespace Barshow.Engine.Measures.Reading;

/// <content>Decimals and fractions in figures.</content>
internal sealed partial class MeasureGrammar
{
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
        while (i < last && run.Touches(i) && (run[i].Kind is TokenKind.Digits or TokenKind.Vulgar || run[i].Kind == TokenKind.Mark && run[i].Mark is '.' or ',' or '/'))
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
            if (token.Mark is '.' or ',')
                return run.Touches(i) && run.Touches(i + 1) && run[i + 1].Kind == TokenKind.Vulgar ? i + 1 : -1;
            return token.Mark is '&' or '+' ? i + 1 : -1;
        }

        return token.Has(Role.And) ? i + 1 : i;
    }
}
