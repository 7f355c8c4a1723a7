namespace Barshow.Engine.Measures.Reading;

/// <content>Ranges, multiples and sums.</content>
internal sealed partial class MeasureGrammar
{
    private static readonly Rational MostTimes = 100;

    /// <summary>range = ( "-" | "–" | "to" | "or" ) number, and "and" after "between".</summary>
    private int RangeOrTimes(int i, ref NumberRead low, ref NumberRead high, ref MeasureRead measure)
    {
        ref readonly var token = ref run[i];
        if (token.Has(Role.Times) || token.Is('×'))
            return Times(i, ref low, ref high);
        if (OrSo(i) is var orSo and > 0)
            return orSo;
        if (IsRangeMark(i, measure.From < i && run[measure.From].Lexeme?.Word == "between") is var at and > 0)
        {
            var end = Number(at, out var upper);
            if (end > 0 && !upper.IsArticle && !IsNumberInName(end) && (upper.Flaw == Flaw.None || low.Flaw == Flaw.None))
            {
                high = upper;
                return end;
            }
        }

        return i;

    }

    // "2 or so", "2-ish".
    private int OrSo(int i)
    {
        if (run[i].Has(Role.Or) && run[i + 1].Lexeme?.Word == "so")
            return i + 2;
        var ish = run[i].Is('-') ? i + 1 : i;
        return run[ish].Kind == TokenKind.Word && run.Touches(ish) && Is(run.TextOf(run[ish]), "ish") ? ish + 1 : -1;
    }

    /// <summary>times = ( "x" | "×" ) before what is counted: "2 x egg yolks"; "2 x 330 ml cans"; and "2 x 30 ml", which is 60 ml.</summary>
    private int Times(int i, ref NumberRead low, ref NumberRead high)
    {
        if (run[i + 1].Kind is TokenKind.End)
            return i;
        if (Number(i + 1, out var each) is var end and > 0 && each is { Flaw: Flaw.None, IsArticle: false }
            && UnitAt(end, true, out var unit) is var after and > 0 && unit.Unit.Kind is UnitKind.Volume or UnitKind.Mass
            && !(UnitAt(after, true, out var container) > 0 && (container.Use & UnitUse.Container) != 0))
        {
            low.Value *= each.Value;
            high = low;
            return end;
        }

        return i + 1;
    }

    private int IsRangeMark(int i, bool isBetween = false)
    {
        ref readonly var token = ref run[i];
        if (token.Kind == TokenKind.Mark && token.Mark is '-' or '–' or '~' or '−')
            return i + 1;
        return token.Has(Role.To) || token.Has(Role.Or) || token.Has(Role.And) && isBetween ? i + 1 : -1;
    }

    private bool IsUnitAhead(int i)
    {
        var at = run[i].Has(Role.Of) ? i + 1 : i;
        at = run[at].Has(Role.Article) ? at + 1 : at;
        return UnitAt(at, true, out var unit) > 0 && unit.Unit.Kind is UnitKind.Volume or UnitKind.Bar;
    }

    /// <summary>What may follow the unit: "and a half"; "or two"; a range whose unit is said twice; "plus" a second amount of a kindred unit.</summary>
    private int AfterMeasureUnit(int i, in UnitRead unit, ref NumberRead low, ref NumberRead high, ref MeasureRead measure)
    {
        measure.Unit = unit.Unit;
        measure.OtherUnit = unit.Other;
        measure.Repaired |= unit.Repaired;
        if (unit.Unit is null)
            return i;
        var next = i;
        if (low.Value.IsWhole && high.Value == low.Value)
        {
            var whole = low;
            next = AndShare(i, ref low);

            // "thirty mil and three quarter ounce": the share has a unit of its own.
            if (next > i && IsUnitAhead(next))
                (next, low) = (i, whole);
            high = low;
        }

        // "a dash or two".
        if (run[next].Has(Role.Or) && high.Value == low.Value && run[next + 1].Lexeme is { Cardinal: > 1 } && Number(next + 1, out var orMore) is var end and > 0
            && UnitAt(end, true, out _) < 0 && orMore.Value > low.Value)
        {
            high = orMore;
            return end;
        }

        if (OrSo(next) is var orSo and > 0)
            return orSo;

        // "25 ml x 2 gin".
        if (high.Value == low.Value && (run[next].Has(Role.Times) || run[next].Is('×')) && unit.Unit.Kind is UnitKind.Volume or UnitKind.Mass or UnitKind.Bar
            && Number(next + 1, out var times) is var afterTimes and > 0 && times is { Flaw: Flaw.None, IsArticle: false, Value.IsWhole: true }
            && times.Value <= MostTimes && UnitAt(afterTimes, true, out _) < 0 && !IsNumberInName(afterTimes))
        {
            low.Value *= times.Value;
            high = low;
            return afterTimes;
        }

        // "45 ml to 60 ml", "2 oz - 3 oz".
        if (high.Value == low.Value && IsRangeMark(next) is var at and > 0 && Number(at, out var upper) is var upperEnd and > 0
            && upper.Flaw == Flaw.None && !upper.IsArticle && UnitAt(upperEnd, true, out var upperUnit) is var afterUpper and > 0
            && upperUnit.Unit == unit.Unit && upper.Value > low.Value)
        {
            high = upper;
            return afterUpper;
        }

        return Sum(next, unit.Unit, ref low, ref high);
    }

    /// <summary>sum = ( "plus" | "+" | "and" ) number unit, where both units are ounces and spoons, or both metric.</summary>
    private int Sum(int i, Unit unit, ref NumberRead low, ref NumberRead high)
    {
        if (!(run[i].Has(Role.Plus) || run[i].Is('+') || run[i].Has(Role.And)) || low.Value != high.Value || low.Flaw != Flaw.None)
            return i;
        var next = Number(i + 1, out var more);
        if (next < 0 || more.Flaw != Flaw.None)
            return i;
        var end = UnitAt(next, true, out var moreUnit);
        if (end < 0)
            return i;
        var ratio = unit.Ounces is { } ounces && moreUnit.Unit.Ounces is { } moreOunces ? moreOunces / ounces
            : unit.Millilitres is { } millilitres && moreUnit.Unit.Millilitres is { } moreMillilitres ? moreMillilitres / millilitres
            : (Rational?)null;
        if (ratio is not { } each)
            return i;
        low.Value += more.Value * each;
        low.Repaired |= more.Repaired;
        high = low;
        return end;
    }
}
