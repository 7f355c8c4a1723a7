using System.Globalization;

namespace Barshow.Engine.Measures.Reading;

/// <content>What may stand before the line proper.</content>
internal sealed partial class LineGrammar
{
    /// <summary>bullet = dashes, dots, boxes, ticks and pictures; "1." and "1)" before a measure.</summary>
    private int Bullet()
    {
        var i = 0;
        while (IsBullet(i))
            i++;
        if (run[i].Is('[') && run[i + 2].Is(']') && run[i + 1].Kind == TokenKind.Word && run[i + 1].Length == 1)
            i += 3;
        else if (run[i].Is('[') && run[i + 1].Is(']'))
            i += 2;
        if (run[i].Kind == TokenKind.Digits && run[i].Length <= 2 && run[i + 1].Kind == TokenKind.Mark && run[i + 1].Mark is '.' or ')' or ':' && run.Touches(i + 1)
            && !run.Touches(i + 2) && run[i + 2].Kind != TokenKind.End)
            i += 2;
        else if (run[i].Is('(') && (run[i + 1].Kind == TokenKind.Digits && run[i + 1].Length <= 2 || IsListLetter(i + 1)) && run[i + 2].Is(')') && run[i + 3].Kind != TokenKind.End)
            i += 3;
        else if (IsListLetter(i) && run[i + 1].Is(')') && run.Touches(i + 1) && run[i + 2].Kind != TokenKind.End)
            i += 2;
        else if (i > 0 && run[i - 1].Is('#') && run[i].Kind == TokenKind.Digits && run[i].Length <= 2 && run.Touches(i) && run[i + 1].Kind != TokenKind.Word
            && _amounts.Measure(i + 1, out var measure) > 0 && measure.HasNumber)
            i++;
        return i;
    }

    // "a)", "(b)".
    private bool IsListLetter(int i) => run[i].Kind == TokenKind.Word && run[i].Length == 1;

    private bool IsBullet(int i)
    {
        ref readonly var token = ref run[i];
        if (token.Kind != TokenKind.Mark)
            return false;
        switch (token.Mark)
        {
            case '-' or '−':
                return !(run.Touches(i + 1) && run[i + 1].Kind is TokenKind.Digits or TokenKind.Vulgar or TokenKind.Raised)
                    && !(run.Touches(i + 1) && run[i + 1].Is('.') && run.Touches(i + 2));
            case '.' or ',':
                return !(run.Touches(i + 1) && run[i + 1].Kind == TokenKind.Digits);
            case '–' or '*' or '·' or '>' or '#' or '_' or '"' or '\'' or '“' or '‘' or '`' or '+' or ':' or ';' or '|' or '…' or '&':
                return token.Mark != '|' || !(run.Touches(i + 1) && run[i + 1].Kind == TokenKind.Vulgar || run.Touches(i + 1) && run[i + 1].Is('/') && run[i + 2].Kind == TokenKind.Digits);
            case '(' or '[' or '{' or '~' or '≈' or '⅟' or '<' or '%' or '$' or '=':
                return token.Mark is '=' or '<';
            default:
                return char.IsSurrogate(token.Mark) || CharUnicodeInfo.GetUnicodeCategory(token.Mark) is UnicodeCategory.OtherSymbol or UnicodeCategory.MathSymbol
                    or UnicodeCategory.OtherPunctuation or UnicodeCategory.DashPunctuation or UnicodeCategory.InitialQuotePunctuation or UnicodeCategory.PrivateUse;
        }
    }

    /// <summary>labels = "optional:" | "(optional)" | "garnish:" | "rim:", in any order.</summary>
    private int Labels(int i)
    {
        while (true)
        {
            var open = run[i].Is('(') || run[i].Is('[') ? i + 1 : i;
            if (run[open].Has(Role.Optional))
            {
                var end = open + 1;
                if (run[end].Is('.') && run.Touches(end))
                    end++;
                if (open > i && (run[end].Is(')') || run[end].Is(']')))
                    end++;
                else if (run[end].Is(':') || run[end].Is('-') || run[end].Is('–') || run[end].Is(','))
                    end++;
                _optional = true;
                i = end;
                continue;
            }

            if (run[i].Lexeme?.Word is "for" && run[i + 1].Has(Role.Determiner) && run[i + 2].Has(Role.Label) && run[i + 3].Is(':'))
                i += 2;
            if (run[i].Has(Role.Label) && (run[i + 1].Is(':') || run[i + 1].Is('-') || run[i + 1].Is('–') || run[i + 1].Has(Role.With)) && run[i + 2].Kind != TokenKind.End && _label is null)
            {
                _label = run.TextOf(run[i]).ToString().ToLowerInvariant();
                i += 2;
                continue;
            }

            return i;
        }
    }

    /// <summary>lead = what is said before an amount, with its commas: "um,", "so then,", "we've got", "from".</summary>
    private int Lead(int i)
    {
        var at = i;
        while (at < i + MostLead && run[at].Kind == TokenKind.Word && run[at].Has(Role.Filler | Role.Lead) && !IsFigureOne(at))
        {
            at++;
            while (run[at].Kind == TokenKind.Mark && run[at].Mark is ',' or '…' or '.' && !run.Touches(at + 1))
                at++;
        }

        if (at == i)
            return i;
        if (run[at].Lexeme?.Open is not null)
            return at;
        return _amounts.Measure(at, out var measure) > 0 && (measure.HasNumber && !measure.IsArticle || measure.Unit is not null) ? at : i;
    }

    private const int MostLead = 12;

    // The letter of "I½ oz" and "I oz" is a figure; that of "I use" is a word.
    private bool IsFigureOne(int i) => run[i].Length == 1 && (run[i + 1].Kind != TokenKind.Word || run[i + 1].Lexeme?.Unit is not null);

    /// <summary>invitation = "add", "then", "plus" ... before a measure.</summary>
    private int Invitation(int i)
    {
        var at = i;
        while (at < i + 3 && run[at].Has(Role.Invitation | Role.And) && run[at].Kind == TokenKind.Word)
        {
            at++;
            if (run[at].Is(',') || run[at].Is(':') || run[at].Kind == TokenKind.Word && Is(run.TextOf(run[at]), "by"))
                at++;
        }

        if (at > i && run[at].Has(Role.In))
            at++;
        return at > i && _amounts.Measure(at, out var measure) > 0 && (measure.HasNumber || measure.Unit is not null) ? at : i;
    }
}
