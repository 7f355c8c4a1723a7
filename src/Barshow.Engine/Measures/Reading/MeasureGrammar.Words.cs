namespace Barshow.Engine.Measures.Reading;

/// <content>Numbers in words.</content>
internal sealed partial class MeasureGrammar
{
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
        var start = i;
        i = Hyphen(i);
        var isIn = (run[i].Has(Role.In) || run[i].Lexeme?.Word is "an") && run[i + 1].Has(Role.Article) && run[i + 2].Lexeme?.Share is not null;
        if (!run[i].Has(Role.And) && !run[i].Is('&') && !run[i].Is('+') && !isIn)
            return start;
        var at = Hyphen(i + 1);
        if (run[at].Has(Role.Article))
            at = Hyphen(at + 1);
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
            return start;
        number.Value += part.Value;
        number.Repaired |= isIn || run[i].Kind == TokenKind.Word && (run.Touches(i) && run[i - 1].Kind == TokenKind.Word || run.Touches(i + 1) && run[i + 1].Kind == TokenKind.Word);
        number.IsShare = true;
        return end;
    }

    private int Hyphen(int i) => run[i].Is('-') && run.Touches(i) && run.Touches(i + 1) ? i + 1 : i;

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
