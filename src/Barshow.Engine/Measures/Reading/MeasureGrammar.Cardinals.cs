namespace Barshow.Engine.Measures.Reading;

/// <content>Cardinal number words and spoken decimals.</content>
internal sealed partial class MeasureGrammar
{
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
}
