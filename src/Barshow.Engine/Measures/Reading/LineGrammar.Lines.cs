namespace Barshow.Engine.Measures.Reading;

/// <content>The shapes of a line.</content>
internal sealed partial class LineGrammar
{
    // A bare number above this names something ("151 rum") and counts nothing.
    private static readonly Rational MostBareCount = 60;

    /// <summary>yield = [ "the" ] [ "freshly squeezed" ] ( "juice" | "zest" | "white" ... ) [ "and" ... ] ( "of" | "from" ) measure name.</summary>
    private ReadLine? YieldLine(int i)
    {
        var at = run[i].Has(Role.Determiner) || run[i].Has(Role.Article) ? i + 1 : i;
        var from = at;
        while (at < from + 3 && (run[at].Has(Role.Quality) || run[at].Has(Role.Treatment)))
            at++;
        var part = at;
        if (!run[part].Has(Role.Yield))
            return null;
        at = part + 1;
        while (at < part + 5 && (run[at].Has(Role.And) || run[at].Is('&') || run[at].Is('+')) && run[at + 1].Has(Role.Yield))
            at += 2;
        var yieldEnd = at;
        if (run[at].Has(Role.Of) || run[at].Has(Role.From) || run[at].Is(':'))
            at++;
        var next = _amounts.Measure(at, out var measure);
        if (next < 0 || !measure.HasNumber || measure.Unit?.Kind is UnitKind.Volume or UnitKind.Mass or UnitKind.Bar)
            return null;
        Take(measure);
        next = Second(next);
        var of = run[next].Has(Role.Of) ? next + 1 : next;
        var isEgg = run[part].Lexeme!.Word is "white" or "whites" or "yolk" or "yolks" && run[of].Kind == TokenKind.Word && run.TextOf(run[of]).StartsWith("egg", StringComparison.OrdinalIgnoreCase);
        if (isEgg)
        {
            var (_, _, eggNote) = NameAndNote(of, skipFirst: 1);
            return Done(run[part].Lexeme!.Word.StartsWith("white", StringComparison.Ordinal) ? "egg white" : "egg yolk", PlaceOf(of, of + 1), eggNote);
        }

        _nameBefore = TextOf(from, yieldEnd);
        var (name, place, note) = NameAndNote(of);
        return Done(name, place, note);
    }

    /// <summary>leading = measure [ second ] [ "of" ] name.</summary>
    private ReadLine? LeadingLine(int i)
    {
        var open = run[i].Is('(') || run[i].Is('[') ? i + 1 : i;
        var next = _amounts.Measure(open, out var measure);
        if (next < 0)
            return null;
        if (open > i)
        {
            if (measure.Unit is null)
                return null;
            var close = BothInBracket(next, measure);
            if (!(run[close].Is(')') || run[close].Is(']')))
            {
                (_measure, _second, _secondPlace, _findings) = (null, null, null, null);
                return null;
            }

            next = close + 1;
        }

        if (measure.Unit is null)
        {
            if (measure.HasNumber && !measure.IsArticle && _amounts.IsNumberInName(next))
                return null;
            if (measure.Measure?.Low > MostBareCount && run[next].Kind == TokenKind.Word && measure.Flaw == Flaw.None)
                return null;
            if (TrailingMeasure(next, mustClose: true) > 0)
                return null;
        }

        Take(measure);
        next = measure.Flaw == Flaw.Malformed ? next : Second(next);
        next = AnotherAmount(next);
        var nameStart = AfterMeasure(next);
        if (measure.Unit is null && measure.Measure is not null && ClosingUnit(nameStart) is { } closed)
            return closed;
        if (measure.Unit is null && measure.Measure is not null && run[nameStart].Lexeme?.Word is "peel" or "peels" or "zest" or "rind" or "rinds"
            && run[nameStart + 1].Has(Role.Of) && run[nameStart + 2].Kind == TokenKind.Word)
        {
            // "1 peel of orange" is said as "zest of 1 orange" is.
            _nameBefore = Joined(_nameBefore, TextOf(nameStart, nameStart + 1));
            nameStart += 2;
        }

        var (name, place, note) = NameAndNote(nameStart);
        return Done(name, place, note);
    }

    // "(60 ml / 2 oz) rum".
    private int BothInBracket(int i, in MeasureRead first)
    {
        if (run[i].Kind != TokenKind.Mark || run[i].Is(')') || run[i].Is(']'))
            return i;
        _measure = first.Measure;
        return Second(i);
    }

    // "8 mint leaves" are eight leaves of mint.
    private ReadLine? ClosingUnit(int i)
    {
        var end = i;
        while (run[end].Kind == TokenKind.Word && !run[end].Has(Role.Of | Role.Or | Role.NoteStart | Role.With | Role.To) || run[end].Is('-') && end > i || run[end].Is('\''))
        {
            if (run[end].Lexeme is { Unit: not null } lexeme && (lexeme.UnitUse & UnitUse.Closing) != 0 && end > i)
                break;
            if (end > i && run[end].Has(Role.And))
                return null;
            end++;
        }

        if (run[end].Lexeme is not { Unit: { } unit } closing || (closing.UnitUse & UnitUse.Closing) == 0 || end == i)
            return null;
        var after = end + 1;
        if (run[after].Kind == TokenKind.Word && !run[after].Has(Role.NoteStart | Role.Treatment | Role.To | Role.Optional | Role.Label | Role.And | Role.Or | Role.Plus | Role.With))
            return null;
        _measure = Measures.Measure.Between(_measure!.Low!.Value, _measure.High!.Value, unit);
        var name = i;
        while (name < end - 1 && run[name].Has(Role.Manner) && !run[name].Has(Role.Quality))
            name++;
        if (name > i)
            _nameBefore = Joined(_nameBefore, TextOf(i, name));
        i = name;
        var place = PlaceOf(i, end);
        var (rest, _, note) = NameAndNote(after);
        return Done(TextOf(i, end)!, place, rest.Length == 0 ? note : Joined(rest, note));
    }

    /// <summary>A line without any amount: an ingredient left to the hand, or nothing that can be understood.</summary>
    private ReadLine NameLine(int i)
    {
        if (StrayUnit(i) is var unit and >= 0)
        {
            Unreadable(i, unit);
            var (rest, restPlace, restNote) = NameAndNote(AfterMeasure(unit + 1));
            return Done(rest, restPlace, restNote);
        }

        if (run[i].Has(Role.Determiner) && run[i + 1].Kind == TokenKind.Word)
            i++;
        var (name, place, note) = NameAndNote(i);
        return Done(name, place, note);
    }

    // A unit of volume with a word before it that is no number: "twelvety ml".
    private int StrayUnit(int i)
    {
        for (var at = i; at < i + 4; at++)
        {
            if (run[at].Lexeme is { IsStrongUnit: true } unit && (unit.Word.Length > 1 && at > i || at == i && unit.Word is "ml" or "cl" or "oz"))
                return at;
            if (run[at].Kind == TokenKind.End)
                return -1;
        }

        return -1;
    }

    private bool IsNameEdge(int i) => run[i].Kind == TokenKind.Mark && run[i].Mark is not ('%' or ')' or ']' or '!' or '?' or '"' or '\'' or '’' or '°' or '”')
        || run[i].Has(Role.Of) || run[i].Has(Role.About);

    private int SkipSeparators(int i)
    {
        while (run[i].Kind == TokenKind.Mark && run[i].Mark is ':' or '-' or '–' or ',' or '=' or '|' or ';' or '·' or '.' or '/' or '…' or '*' or '_' or '>' or '`' or '»' or '›')
            i++;
        return i;
    }

    // "half an ounce of, uh, simple syrup".
    private int SkipFillers(int i)
    {
        var at = SkipSeparators(i);
        while (FillerAt(at) is var next and > 0)
            at = SkipSeparators(next);
        return run[at].Kind == TokenKind.End ? i : at;
    }

    private int FillerAt(int i) => run[i].Has(Role.Filler) ? i + 1
        : run[i].Kind == TokenKind.Word && Is(run.TextOf(run[i]), "you") && run[i + 1].Kind == TokenKind.Word && Is(run.TextOf(run[i + 1]), "know") ? i + 2
        : -1;

    // Between an amount and its ingredient: "of", a separator, "each".
    private int AfterMeasure(int i)
    {
        i = SkipSeparators(i);
        if (_measure?.Unit is { Kind: UnitKind.Volume or UnitKind.Mass } && run[i].Lexeme is { Unit: { Kind: UnitKind.Count } } container
            && (container.UnitUse & UnitUse.Container) != 0 && (run[i + 1].Kind == TokenKind.Word))
        {
            // "a 12 oz can of cola" gives the amount; the can is by the way.
            _nameBefore = Joined(_nameBefore, TextOf(i, i + 1));
            i++;
        }

        if (run[i].Lexeme?.Word is "max" or "maximum" or "min" or "minimum" or "approx")
            i++;
        if (run[i].Kind == TokenKind.Word && run[i].Length == 4 && Is(run.TextOf(run[i]), "each") && (run[i + 1].Kind == TokenKind.Word || run[i + 1].Is(':')))
        {
            _isListed = run[i + 1].Is(':');
            _nameBefore = Joined(_nameBefore, "each");
            i++;
        }

        i = SkipFillers(i);
        if (run[i].Has(Role.Of))
            i++;
        i = SkipFillers(i);
        if (run[i].Kind == TokenKind.Word && (Is(run.TextOf(run[i]), "the") || Is(run.TextOf(run[i]), "some")) && run[i + 1].Kind == TokenKind.Word)
            i++;
        return SkipSeparators(i);
    }
}
