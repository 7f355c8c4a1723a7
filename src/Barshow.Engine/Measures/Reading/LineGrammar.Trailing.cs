namespace Barshow.Engine.Measures.Reading;

/// <content>Lines that name the ingredient first.</content>
internal sealed partial class LineGrammar
{
    /// <summary>trailing = name separator measure [ second ] [ note ]: "White rum: 2 oz", "lime juice, ¾ oz", "gin 60 ml", "mint leaves x 8".</summary>
    private ReadLine? TrailingLine(int i)
    {
        var at = TrailingMeasure(i + 1, mustClose: false);
        if (at < 0)
            return null;
        var next = _amounts.Measure(at, out var measure);
        Take(measure);
        if ((run[at - 1].Is('(') && run[next].Is(')')) || (run[at - 1].Is('[') && run[next].Is(']')))
            next++;
        next = Second(next);
        if (IsToldInPassing(i, at, next))
        {
            var told = NameAndNote(AfterMeasure(next));
            return Done(told.Name, told.Place, told.Note);
        }

        while (run[next].Kind == TokenKind.Mark && run[next].Mark is ')' or ']' or '}')
            next++;
        var nameEnd = at;
        while (nameEnd > i && IsNameEdge(nameEnd - 1))
            nameEnd--;
        if (run[nameEnd - 1].Has(Role.Times) && nameEnd - 1 > i)
            nameEnd--;
        while (nameEnd > i && IsNameEdge(nameEnd - 1))
            nameEnd--;
        if (nameEnd == i)
            return null;
        if (measure.Unit is null && measure.Measure is not null && run[nameEnd - 1].Lexeme is { Unit: { } unit } closing && (closing.UnitUse & UnitUse.Closing) != 0 && nameEnd - 1 > i)
        {
            _measure = Measures.Measure.Between(_measure!.Low!.Value, _measure.High!.Value, unit);
            nameEnd--;
        }

        var before = NameAndNote(i, end: nameEnd);
        var (rest, _, note) = NameAndNote(AfterMeasure(next), isRest: true);
        var after = rest.Length == 0 ? note : Joined(rest, note);
        return Done(before.Name, before.Place, Joined(before.Note, after));
    }

    // "Now we pour two ounces of white rum": what stands before the amount names nothing.
    private bool IsToldInPassing(int from, int at, int next) =>
        run[next].Has(Role.Of) && run[next + 1].Kind == TokenKind.Word && run[next + 1].Length > 2
        || run[next].Kind == TokenKind.Word && run[at - 1].Has(Role.Invitation) && run[at - 1].Lexeme!.Word is "add" or "pour" or "use" or "take" or "measure" or "muddle" or "shake" or "stir" or "with" or "plus"
            && at - from < 12;

    /// <summary>Where the measure of a trailing line begins: the first number with a unit, or a bare number after a separator at the end; -1 when there is none.</summary>
    private int TrailingMeasure(int i, bool mustClose)
    {
        for (var at = i; run[at].Kind != TokenKind.End; at++)
        {
            ref readonly var token = ref run[at];
            if (mustClose && token.Kind == TokenKind.Mark && token.Mark is '(' or '[')
                return -1;
            if (!CanBeginMeasure(at))
                continue;
            var next = _amounts.Measure(at, out var measure);
            if (next < 0)
                continue;
            if (measure.Unit is not null && (measure.HasNumber && !measure.IsArticle || IsSeparator(at - 1)) && Closes(next, mustClose, measure))
                return at;
            if (measure.Unit is null && measure.HasNumber && !measure.IsArticle && !mustClose && IsBareCountHere(at, next, measure))
                return at;
            at = Math.Max(at, next - 1);
        }

        return -1;
    }

    private bool CanBeginMeasure(int i)
    {
        ref readonly var token = ref run[i];
        if (token.Lexeme?.Share is { } share && (run[i - 1].Has(Role.And) && run[i - 2].Lexeme?.Share == share || run[i - 1].Is('-') && run[i - 2].Has(Role.And)))
            return false;
        return token.Kind switch
        {
            TokenKind.Digits or TokenKind.Vulgar or TokenKind.Raised => !(run.Touches(i) && run[i - 1].Kind == TokenKind.Mark && run[i - 1].Mark is ':' or '/' or '.' && run[i - 2].Kind == TokenKind.Digits),
            TokenKind.Mark => token.Mark is '.' or '⅟' or '~' && run[i + 1].Kind == TokenKind.Digits,
            TokenKind.Word => token.Lexeme is { } lexeme
                ? lexeme.Cardinal is not null || lexeme.Share is not null || (lexeme.Role & (Role.Article | Role.Point | Role.About | Role.Manner)) != 0 || lexeme.Unit is not null && IsSeparator(i - 1)
                : token.Length == 1 && Slip.FigureFor(run.TextOf(token)[0]) is not null,
            _ => false,
        };
    }

    private bool IsSeparator(int i) => run[i].Kind == TokenKind.Mark && run[i].Mark is ':' or '-' or '–' or ',' or '(' or '[' or '=' or '|' or ';' or '·' or '/' or '.' or '@';

    // What follows a trailing measure: the end, a bracket, a separator, or its second side.
    private bool Closes(int next, bool mustClose, in MeasureRead measure)
    {
        if (!mustClose)
            return true;
        if (measure.Unit!.Kind is not (UnitKind.Volume or UnitKind.Mass or UnitKind.Bar))
            return false;
        ref readonly var token = ref run[next];
        return token.Kind == TokenKind.End || token.Kind == TokenKind.Mark && token.Mark is '(' or '[' or '/' or '.' or '|';
    }

    private bool IsBareCountHere(int at, int next, in MeasureRead measure)
    {
        if (measure.Measure?.Low > MostBareCount || _amounts.IsNumberInName(next))
            return false;
        ref readonly var after = ref run[next];
        var closes = after.Kind == TokenKind.End || after.Kind == TokenKind.Mark && after.Mark is ')' or ']' or ',' or '.' or ';' or '(';
        if (!closes)
            return false;
        ref readonly var before = ref run[at - 1];
        if (before.Kind == TokenKind.Mark)
            return before.Mark is ':' or '-' or '–' or ',' or '(' or '[' or '=' or '|' or '×' or '·' or '/';
        return before.Has(Role.Times) || after.Kind == TokenKind.End && before.Kind == TokenKind.Word && measure.Measure?.Low <= new Rational(24)
            && !Is(run.TextOf(before), "no") && !Is(run.TextOf(before), "number");
    }
}
