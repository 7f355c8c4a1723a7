namespace Barshow.Engine.Measures.Reading;

/// <content>The other side of a dual amount.</content>
internal sealed partial class LineGrammar
{
    /// <summary>second = "(" measure ")" | ( "/" | "|" | "·" | "or" | "," | "-" ) measure, in the other family of units. The index after it.</summary>
    private int Second(int i)
    {
        if (_second is not null)
            return i;
        ref readonly var token = ref run[i];
        if (token.Kind == TokenKind.Mark && token.Mark is '(' or '[' or '{')
            return BracketedSecond(i);
        var at = i;
        if (token.Kind == TokenKind.Mark && token.Mark is '/' or '|' or '·' or ',' or '-' or '–' or '=' or '≈' or '~' or ':' or ';' or '\\')
            at++;
        at = _amounts.SkipSaying(at);
        if (at == i && token.Kind is not (TokenKind.Digits or TokenKind.Vulgar))
            return i;
        var next = _amounts.Measure(at, out var measure);
        if (next < 0 || !IsOtherSide(measure))
            return i;
        TakeSecond(measure);
        next = MoreSides(next);

        // The comma that closes "2 ounces, or 60 mil, of rum".
        return run[next].Is(',') && run[next + 1].Has(Role.Of) ? next + 1 : next;
    }

    private int BracketedSecond(int i)
    {
        var at = i + 1;
        at = run[at].Is('=') ? at + 1 : _amounts.SkipSaying(at);
        var next = _amounts.Measure(at, out var measure);
        if (next < 0 || !IsOtherSide(measure))
            return i;
        var end = MoreSides(next);
        if (run[end].Kind == TokenKind.Mark && run[end].Mark is ')' or ']' or '}')
        {
            TakeSecond(measure);
            return end + 1;
        }

        return i;
    }

    // A third way of saying it is passed over.
    private int MoreSides(int i)
    {
        while (run[i].Kind == TokenKind.Mark && run[i].Mark is '/' or '|' or '·' or '=' or ',' or ';' || run[i].Has(Role.Or))
        {
            var next = _amounts.Measure(i + 1, out var measure);
            if (next < 0 || !measure.HasNumber || measure.IsArticle || measure.Unit?.Kind is not (UnitKind.Volume or UnitKind.Bar or UnitKind.Mass or UnitKind.Part))
                return i;
            i = next;
        }

        return i;
    }

    private bool IsOtherSide(in MeasureRead measure)
    {
        if (!measure.HasNumber || measure.IsArticle || measure.Unit is not { Kind: UnitKind.Volume or UnitKind.Mass or UnitKind.Bar } unit)
            return false;
        if (_measure?.Unit is not { } first)
            return _measure is not null || _flawed;
        return first != unit;
    }

    private void TakeSecond(in MeasureRead measure)
    {
        _second = measure.Measure;
        _secondPlace = PlaceOf(measure.From, measure.To);
        Say(measure);
    }

    // "a splash" is left to the hand; "1 splash" is counted.
    private static OpenMeasure? LeftToTheHand(Unit? unit) =>
        unit == Unit.Splash ? OpenMeasure.Splash
        : unit == Unit.Squeeze ? OpenMeasure.Squeeze
        : unit == Unit.Crack ? OpenMeasure.Crack
        : null;

    private void Take(in MeasureRead measure)
    {
        _measure = measure.Measure;
        if ((measure.IsArticle || !measure.HasNumber) && LeftToTheHand(measure.Unit) is { } open)
            (_measure, _open) = (null, open);
        _measurePlace = PlaceOf(measure.From, measure.To);
        _flawed = measure.Flaw != Flaw.None;
        if (measure.Each is { } each)
            _second = each;
        if (measure.MannerTo > measure.MannerFrom)
            _nameBefore = TextOf(measure.MannerFrom, measure.MannerTo);
        Say(measure);
    }
}
