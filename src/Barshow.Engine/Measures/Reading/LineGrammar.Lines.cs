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

    /// <summary>open = ( "top" [ "up" ] | "fill" | "rinse" | "float" | "splash" | "squeeze" | "crack" | "to taste" ) [ "with" | "of" ] [ measure ] name.</summary>
    private ReadLine? OpenLine(int i)
    {
        var at = run[i].Has(Role.To) || run[i].Has(Role.Determiner) ? i + 1 : i;
        if (run[i].Has(Role.Article) && run[i + 1].Lexeme?.Open is not null)
            at = i + 1;
        else if (run[i].Has(Role.Article) && run[i + 1].Has(Role.Manner) && run[i + 2].Lexeme?.Open is not null)
            at = i + 2;
        else if (run[i].Has(Role.Manner) && run[i + 1].Lexeme?.Open is not null)
            at = i + 1;
        if (run[i].Has(Role.To) && IsTaste(i + 1))
        {
            _open = OpenMeasure.ToTaste;
            _measurePlace = PlaceOf(i, i + 2);
            return AfterOpen(SkipSeparators(i + 2));
        }

        if (run[at].Lexeme?.Open is not { } open)
            return null;
        var next = at + 1;
        if (run[next].Is('-') && run[next + 1].Has(Role.Up))
            next++;
        if (run[next].Has(Role.Up))
            next++;
        if (run[next].Kind == TokenKind.Word && run[next].Length == 2 && Is(run.TextOf(run[next]), "it"))
            next += run[next + 1].Has(Role.Up) ? 2 : 1;
        var vessel = SkipVessel(next);
        if (vessel > next && (run[vessel].Has(Role.With) || run[vessel].Is(':') || run[vessel].Is(',')))
            next = vessel;
        var isPlain = next == at + 1;
        if (run[next].Has(Role.With) || run[next].Has(Role.Of) || run[next].Is(':') || run[next].Is('-') && !run.Touches(next) || run[next].Is('–'))
            next++;
        else if (isPlain && !CanStandBare(open, at, next))
            return null;
        if (run[next].Kind == TokenKind.End)
            return null;
        if (at > i && run[at - 1].Has(Role.Manner))
            _nameBefore = TextOf(at - 1, at);
        _open = open;
        _measurePlace = PlaceOf(i, at + 1);
        return AfterOpen(next);
    }

    // "top soda" and "float dark rum" are said so; "top shelf gin" is not, nor "crack pepper" without a mill in sight.
    private bool CanStandBare(OpenMeasure open, int at, int next) =>
        run[next].Kind is TokenKind.Digits or TokenKind.Vulgar
        || run[next].Kind == TokenKind.Word && !Is(run.TextOf(run[next]), "shelf") && run[at].Lexeme!.Word is "top" or "float" or "rinse" or "splash" or "squeeze" or "fill" or "topped" or "lengthen";

    private int SkipVessel(int i)
    {
        var at = run[i].Has(Role.Determiner) ? i + 1 : i;
        if (run[at].Kind != TokenKind.Word)
            return i;
        var word = run.TextOf(run[at]);
        return Is(word, "glass") || Is(word, "drink") || Is(word, "coupe") || Is(word, "tumbler") ? at + 1 : i;
    }

    private ReadLine AfterOpen(int i)
    {
        var next = _amounts.Measure(i, out var measure);
        if (next > 0 && (measure.HasNumber && !measure.IsArticle || measure.Unit is not null) && !_amounts.IsNumberInName(next))
        {
            Take(measure);
            i = Second(next);
        }

        var (name, place, note) = NameAndNote(AfterMeasure(i));
        return Done(name, place, note);
    }

    private bool IsTaste(int i) => run[i].Kind == TokenKind.Word && run[i].Length == 5 && Is(run.TextOf(run[i]), "taste");

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
        var nameStart = AfterMeasure(next);
        if (measure.Unit is null && measure.Measure is not null && ClosingUnit(nameStart) is { } closed)
            return closed;
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
        while (run[i].Kind == TokenKind.Mark && run[i].Mark is ':' or '-' or '–' or ',' or '=' or '|' or ';' or '·' or '.' or '/' or '…' or '*' or '_')
            i++;
        return i;
    }

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
        if (run[i].Kind == TokenKind.Word && run[i].Length == 4 && Is(run.TextOf(run[i]), "each") && run[i + 1].Kind == TokenKind.Word)
        {
            _nameBefore = Joined(_nameBefore, "each");
            i++;
        }

        if (run[i].Has(Role.Of))
            i++;
        if (run[i].Kind == TokenKind.Word && run[i].Length == 3 && Is(run.TextOf(run[i]), "the") && run[i + 1].Kind == TokenKind.Word)
            i++;
        return SkipSeparators(i);
    }
}
