namespace Barshow.Engine.Measures.Reading;

/// <content>How big or how full: words of manner, sized cans and pieces.</content>
internal sealed partial class MeasureGrammar
{
    /// <summary>manner = [ article ] one or two words of how full a measure is, before a number or a unit: "a scant", "heaped".</summary>
    private int Manner(int i, ref MeasureRead measure)
    {
        var at = run[i].Has(Role.Article) && run[i + 1].Has(Role.Manner) ? i + 1 : i;
        var from = at;
        while (at < from + 2 && run[at].Has(Role.Manner))
            at++;
        if (at == from || !(IsMeasureStart(at) || at > from && run[i].Has(Role.Article) && UnitAt(at, true, out _) > 0))
            return i;
        measure.MannerFrom = from;
        measure.MannerTo = at;
        return at;
    }

    /// <summary>sized piece = number [ "-" ] length piece: a "1-inch piece" is one piece, whose length goes into the note.</summary>
    private int SizedPiece(int from, int i, ref MeasureRead measure)
    {
        var at = run[i].Is('-') ? i + 1 : i;
        if (!run[at].Has(Role.Length) && !run[at].Is('″') && !run[at].Is('"'))
            return -1;
        var end = UnitAt(at + 1, true, out var unit);
        if (end < 0 || unit.Unit.Kind != UnitKind.Count)
        {
            if (!run[at].Has(Role.Length) || !(run[at + 1].Kind == TokenKind.Word))
                return -1;
            (unit.Unit, end) = (Unit.Piece, at + 1);
        }

        (measure.MannerFrom, measure.MannerTo, measure.Unit, measure.To) = (from, at + 1, unit.Unit, end);
        var one = new NumberRead { Value = Rational.One };
        Settle(one, one, unit.Unit, ref measure);
        return end;
    }

    // "heaped" belongs to the unit, whichever side of the number it stands.
    private void Heap(ref UnitRead unit, ref MeasureRead measure)
    {
        if (measure.MannerTo <= measure.MannerFrom || !IsHeaped(measure.MannerFrom, measure.MannerTo))
            return;
        var heaped = unit.Unit == Unit.Teaspoon ? Unit.HeapedTeaspoon : unit.Unit == Unit.Tablespoon ? Unit.HeapedTablespoon : null;
        if (heaped is null)
            return;
        unit.Unit = heaped;
        if (measure.MannerTo - measure.MannerFrom == 1)
            (measure.MannerFrom, measure.MannerTo) = (0, 0);
    }

    private bool IsHeaped(int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (run[i].Lexeme?.Word is "heaped" or "heaping" or "rounded")
                return true;
        }

        return false;
    }

    /// <summary>sized = [ "(" ] [ "x" ] number unit [ ")" ] container: the "12-oz can" of "1 12-oz can"; a "1-inch piece".</summary>
    private int SizedContainer(int i, ref MeasureRead measure, out UnitRead unit)
    {
        unit = default;
        var open = run[i].Is('(') ? i + 1 : i;
        if (run[open].Kind is not (TokenKind.Digits or TokenKind.Vulgar) && run[open].Lexeme?.Cardinal is null)
            return -1;
        var next = Number(open, out var size);
        if (next < 0 || size.Flaw != Flaw.None)
            return -1;
        UnitRead each = default;
        var dash = run[next].Is('-') ? next + 1 : next;
        var isLength = run[dash].Has(Role.Length) || run[next].Is('″') || run[next].Is('"');
        var after = isLength ? dash + 1 : UnitAt(next, true, out each);
        if (after < 0 || (!isLength && each.Unit?.Kind is not (UnitKind.Volume or UnitKind.Mass)))
            return -1;
        if (open > i)
        {
            if (!run[after].Is(')'))
                return -1;
            after++;
        }

        var container = UnitAt(after, true, out unit);
        if (container < 0 || (unit.Use & UnitUse.Container) == 0 && !(isLength && unit.Unit.Kind == UnitKind.Count))
            return -1;
        if (isLength)
            (measure.MannerFrom, measure.MannerTo) = (open, open > i ? after - 1 : after);
        else
            measure.Each = Measures.Measure.Of(size.Value, each.Unit);
        return container;
    }
}
