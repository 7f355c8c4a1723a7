using System.Text;

namespace Barshow.Engine.Measures.Reading;

/// <content>What may follow a name: brackets, "to top", "optional", notes.</content>
internal sealed partial class LineGrammar
{
    /// <summary>bracket = "(" ( second | "optional" | open | note ) ")".</summary>
    private int Bracket(int i, int end, ref StringBuilder? note)
    {
        var close = i + 1;
        var depth = 1;
        while (close < end && run[close].Kind != TokenKind.End)
        {
            ref readonly var token = ref run[close];
            if (token.Kind == TokenKind.Mark)
            {
                if (token.Mark is '(' or '[' or '{')
                    depth++;
                else if (token.Mark is ')' or ']' or '}' && --depth == 0)
                    break;
            }

            close++;
        }

        var at = i + 1;
        var noteFrom = at;
        while (at < close)
        {
            if ((at == i + 1 || run[at - 1].Kind == TokenKind.Mark) && BracketSecond(at, close) is var second and > 0)
            {
                AppendNote(ref note, noteFrom, at);
                at = noteFrom = second;
                continue;
            }

            if (OptionalSuffix(at) is var optional and > 0)
            {
                AppendNote(ref note, noteFrom, at);
                at = noteFrom = optional;
                continue;
            }

            if (at == i + 1 && OpenSuffix(at, close, true, at) is var open and > 0)
            {
                at = noteFrom = open;
                continue;
            }

            at++;
        }

        AppendNote(ref note, noteFrom, close);
        return Math.Min(close + 1, end);
    }

    // "top with soda (about 60 ml)": the amount of what is left to the hand.
    private int OpenAmount(int i, int close)
    {
        if (_measure is not null || _flawed || _open is not (OpenMeasure.Top or OpenMeasure.Fill or OpenMeasure.Float or OpenMeasure.Rinse))
            return -1;
        var next = _amounts.Measure(i, out var measure);
        if (next < 0 || !measure.HasNumber || measure.Unit?.Kind != UnitKind.Volume)
            return -1;
        if (next < close && !IsSegmentEnd(next) && !(run[next].Kind == TokenKind.Mark && run[next].Mark is '/' or '|' or '·'))
            return -1;
        Take(measure);
        return Second(next);
    }

    private int BracketSecond(int i, int close)
    {
        if (OpenAmount(i, close) is var open and > 0)
            return open;
        if (_second is not null || _measure is null)
            return -1;
        var at = run[i].Has(Role.Or) ? i + 1 : i;
        var next = _amounts.Measure(at, out var measure);
        if (next < 0 || !IsOtherSide(measure) || next < close && !IsSegmentEnd(next) && !(run[next].Is('/') || run[next].Is('|')))
            return -1;
        TakeSecond(measure);
        return MoreSides(next);
    }

    /// <summary>open suffix = "to" ( "taste" | "top" [ "up" ] | "fill" | "float" | "rinse" ) | at the end "top" | "float" | "rinse".</summary>
    private int OpenSuffix(int i, int end, bool afterName, int noteFrom)
    {
        ref readonly var token = ref run[i];
        if (_open is not null)
            return -1;
        var atNoteStart = noteFrom == i;
        if (!afterName && !atNoteStart)
            return -1;
        var at = token.Has(Role.To) || run[i].Lexeme?.Word is "for" ? i + 1 : i;
        if (at > i && IsTaste(at))
        {
            _open = OpenMeasure.ToTaste;
            _measurePlace ??= PlaceOf(i, at + 1);
            return at + 1;
        }

        if (at == i && atNoteStart && run[i].Has(Role.Article))
            at++;
        if (at == i && run[i].Kind == TokenKind.Word && run[i].Length == 2 && Is(run.TextOf(run[i]), "as") && run[i + 1].Has(Role.Article))
            at += 2;
        if (run[at].Lexeme is not { Open: { } open } lexeme || (open is OpenMeasure.Splash or OpenMeasure.Squeeze or OpenMeasure.Crack && (!atNoteStart || _measure is not null)))
            return -1;
        var next = at + 1;
        if (run[next].Is('-') && run[next + 1].Has(Role.Up))
            next++;
        if (run[next].Has(Role.Up))
            next++;
        if (open == OpenMeasure.Float && run[next].Kind == TokenKind.Word && Is(run.TextOf(run[next]), "on"))
            next = run[next + 1].Has(Role.Determiner) ? next + 3 : next + 2;
        next = SkipVessel(next);
        var isEnd = next >= end || IsSegmentEnd(next);
        if (at == i && (!isEnd || lexeme.Word is "filled" or "topping" && !atNoteStart))
            return -1;
        if (at > i && !isEnd && lexeme.Word is not ("top" or "fill"))
            return -1;
        _open = open;
        _measurePlace ??= PlaceOf(i, next);
        return next;
    }

    private int OptionalSuffix(int i)
    {
        if (run[i].Has(Role.Optional))
        {
            _optional = true;
            return run[i + 1].Is('.') && run.Touches(i + 1) ? i + 2 : i + 1;
        }

        if (run[i].Kind != TokenKind.Word || run[i].Length != 2 || !Is(run.TextOf(run[i]), "if"))
            return -1;
        var next = run.TextOf(run[i + 1]);
        var isWish = Is(next, "desired") || Is(next, "wanted") || Is(next, "using") || Is(next, "preferred");
        if (isWish)
        {
            _optional = true;
            return i + 2;
        }

        if (Is(next, "you") && (Is(run.TextOf(run[i + 2]), "like") || Is(run.TextOf(run[i + 2]), "wish") || Is(run.TextOf(run[i + 2]), "want")))
        {
            _optional = true;
            return i + 3;
        }

        return -1;
    }

    // "freshly squeezed", "for the rim", "to garnish", "plus more", "juiced" at the end.
    private bool BeginsNote(int i, int end)
    {
        ref readonly var token = ref run[i];
        if (token.Is('+') || token.Is('&'))
            return IsAnotherAmount(i + 1);
        if (token.Lexeme is not { } lexeme)
            return false;
        if ((lexeme.Role & (Role.And | Role.Or)) != 0)
            return IsAnotherAmount(i + 1);
        if ((lexeme.Role & Role.NoteStart) != 0)
            return true;
        if ((lexeme.Role & Role.To) != 0)
            return run[i + 1].Kind == TokenKind.Word;
        if ((lexeme.Role & Role.Treatment) == 0)
            return false;
        ref readonly var next = ref run[i + 1];
        return i + 1 >= end || next.Kind == TokenKind.End || IsSegmentEnd(i + 1) || next.Has(Role.And) || next.Has(Role.In) || next.Has(Role.With) || Is(run.TextOf(next), "into");
    }

    // "gin or 1 oz vodka".
    private bool IsAnotherAmount(int i) => (run[i].Has(Role.Article) ? run[i + 1] : run[i]).Lexeme is { Unit: not null } unit && (unit.UnitUse & UnitUse.Closing) != 0
        || run[i].Kind is TokenKind.Digits or TokenKind.Vulgar
        && _amounts.Measure(i, out var measure) is var next and > 0 && (measure.Unit is not null || !_amounts.IsNumberInName(next));
}
