namespace Barshow.Engine.Measures.Reading;

/// <summary>A unit as it was read.</summary>
internal struct UnitRead
{
    public Unit Unit;
    public Unit? Other;
    public UnitUse Use;
    public bool Repaired;
}

/// <content>Units.</content>
internal sealed partial class MeasureGrammar
{
    /// <summary>unit = [ "-" ] [ system ] unit word [ "." ], "fl. oz.", "bar spoons", "12-oz".</summary>
    /// <param name="i">Where it may begin.</param>
    /// <param name="afterNumber">Whether a number stands before it: only then is a misspelling looked for and a lone letter taken.</param>
    /// <param name="unit">What was read.</param>
    private int UnitAt(int i, bool afterNumber, out UnitRead unit)
    {
        unit = default;
        if (run[i].Is('-') && run.Touches(i) && run.Touches(i + 1) && run[i + 1].Kind == TokenKind.Word)
            i++;
        else if (afterNumber && mends && run[i].Kind == TokenKind.Mark && run[i].Mark is '-' or '/' or '.' or ':' && run[i + 1].Lexeme is { IsStrongUnit: true, Word.Length: > 1 })
            i++;
        if (afterNumber && (OunceWithFigure(i) is var zero and > 0 ? zero : mends ? OunceWithTwo(i) : -1) is var ounce and > 0)
        {
            unit = new() { Unit = Unit.Ounce, Use = UnitUse.Strong, Repaired = true };
            return AfterUnit(ounce, ref unit);
        }

        ref readonly var word = ref run[i];
        if (word.Kind != TokenKind.Word)
            return -1;
        if (SystemUnit(i, ref unit) is var system and > 0)
            return system;
        if (TwoWordUnit(i, ref unit) is var two and > 0)
            return two;
        if (word.Lexeme is { Unit: { } known } lexeme)
        {
            if (!afterNumber && word.Length == 1)
                return -1;
            unit.Unit = known;
            unit.Other = lexeme.OtherUnit;
            unit.Use = lexeme.UnitUse;
            unit.Repaired = (lexeme.UnitUse & UnitUse.Misspelt) != 0 || mends && afterNumber && run.Touches(i) && run[i - 1].Kind == TokenKind.Word;
            if (unit.Repaired && !(afterNumber && mends))
                return -1;
            if (lexeme.Word == "t" && run.TextOf(word)[0] == 'T')
                (unit.Unit, unit.Other) = (Unit.Tablespoon, Unit.Teaspoon);
            return AfterUnit(i + 1, ref unit);
        }

        return afterNumber && mends ? MisspeltUnit(i, ref unit) : -1;
    }

    // "0z", a figure nought for the letter: after "2 " or glued to it in "20z".
    private int OunceWithFigure(int i)
    {
        var at = run[i].Kind == TokenKind.Digits && run.TextOf(run[i]) is "0" ? i + 1 : i;
        return run[at].Kind == TokenKind.Word && run[at].Length <= 2 && run.Touches(at) && run[at - 1].Kind == TokenKind.Digits
            && run.TextOf(run[at - 1])[^1] == '0' && (Is(run.TextOf(run[at]), "z") || Is(run.TextOf(run[at]), "zs")) ? at + 1 : -1;
    }

    // "o2", "O2": a figure two for the letter.
    private int OunceWithTwo(int i) =>
        run[i].Kind == TokenKind.Word && run[i].Length == 1 && Is(run.TextOf(run[i]), "o") && run[i + 1].Kind == TokenKind.Digits && run.Touches(i + 1)
            && run.TextOf(run[i + 1]) is "2" && !run.Touches(i + 2) ? i + 2 : -1;

    // "US fl oz", "imperial ounces", "Australian tablespoon", "metric cup".
    private int SystemUnit(int i, ref UnitRead unit)
    {
        ref readonly var word = ref run[i];
        if (word.Lexeme is not null || word.Length is < 2 or > 10 || !TrySystem(run.TextOf(word), out var system))
            return -1;
        var at = run[i + 1].Is('.') && run.Touches(i + 1) ? i + 2 : i + 1;
        var part = default(UnitRead);
        if (run[at].Kind != TokenKind.Word)
            return -1;
        var end = UnitAt(at, afterNumber: true, out part);
        if (end < 0 || (part.Use & UnitUse.Strong) == 0)
            return -1;
        unit = part;
        unit.Unit = (system, part.Unit.Name) switch
        {
            (System.American, "oz") => Unit.UsOunce,
            (System.Imperial, "oz") => Unit.ImperialOunce,
            (System.Metric or System.Australian, "tsp") => Unit.MetricTeaspoon,
            (System.Metric, "tbsp") => Unit.MetricTablespoon,
            (System.Australian, "tbsp") => Unit.AustralianTablespoon,
            (System.Metric or System.Australian, "cup") => Unit.MetricCup,
            _ => part.Unit,
        };
        return end;
    }

    private enum System
    {
        American,
        Imperial,
        Metric,
        Australian,
        Liquid,
    }

    private static bool TrySystem(ReadOnlySpan<char> word, out System system)
    {
        (system, var known) = word switch
        {
            _ when Is(word, "us") || Is(word, "american") => (System.American, true),
            _ when Is(word, "imperial") || Is(word, "imp") || Is(word, "uk") || Is(word, "british") => (System.Imperial, true),
            _ when Is(word, "metric") => (System.Metric, true),
            _ when Is(word, "au") || Is(word, "aus") || Is(word, "aussie") || Is(word, "australian") => (System.Australian, true),
            _ when Is(word, "liquid") || Is(word, "fluid") => (System.Liquid, true),
            _ => default,
        };
        return known;
    }

    private static bool Is(ReadOnlySpan<char> word, string meant) => word.Equals(meant, StringComparison.OrdinalIgnoreCase);

    // "fl. oz.", "bar spoons", "tea-spoon", "wine glass".
    private int TwoWordUnit(int i, ref UnitRead unit)
    {
        ref readonly var word = ref run[i];
        if (word.Length > 7)
            return -1;
        var text = run.TextOf(word);
        var meant = Is(text, "fl") ? Unit.Ounce
            : Is(text, "bar") ? Unit.Barspoon
            : Is(text, "tea") ? Unit.Teaspoon
            : Is(text, "dessert") ? Unit.Dessertspoon
            : Is(text, "table") ? Unit.Tablespoon
            : Is(text, "wine") ? Unit.Wineglass
            : null;
        if (meant is null)
            return -1;
        var at = i + 1;
        if (run[at].Kind == TokenKind.Mark && run[at].Mark is '.' or '-' or '/')
            at++;
        ref readonly var second = ref run[at];
        var fits = second.Kind == TokenKind.Word && (meant == Unit.Ounce
            ? second.Lexeme?.Unit == Unit.Ounce
            : meant == Unit.Wineglass
                ? Is(run.TextOf(second), "glass") || Is(run.TextOf(second), "glasses")
                : second.Lexeme?.Unit == Unit.Spoon);
        if (!fits)
            return -1;
        unit = new() { Unit = meant, Use = UnitUse.Strong | UnitUse.Alone };
        return AfterUnit(at + 1, ref unit);
    }

    // A full stop that closes the abbreviation, and the weight of an ounce.
    private int AfterUnit(int i, ref UnitRead unit)
    {
        if (run[i].Is('.') && run.Touches(i) && !(run.Touches(i + 1) && run[i + 1].Kind == TokenKind.Digits))
            i++;
        if (unit.Unit != Unit.Ounce)
            return i;
        if (run[i].Kind == TokenKind.Word && run[i].Lexeme is null && IsWeight(i, out var end))
        {
            unit.Unit = Unit.WeightOunce;
            return end;
        }

        if (run[i].Is('(') && IsWeight(i + 1, out var inner) && run[inner].Is(')'))
        {
            unit.Unit = Unit.WeightOunce;
            return inner + 1;
        }

        return i;
    }

    private bool IsWeight(int i, out int end)
    {
        end = i + 1;
        if (run[i].Kind != TokenKind.Word)
            return false;
        var word = run.TextOf(run[i]);
        if (Is(word, "by"))
        {
            end = i + 2;
            return run[i + 1].Kind == TokenKind.Word && Is(run.TextOf(run[i + 1]), "weight");
        }

        if (Is(word, "wt") || Is(word, "avoirdupois") || Is(word, "avdp"))
        {
            if (run[end].Is('.') && run.Touches(end))
                end++;
            return true;
        }

        return Is(word, "weight");
    }

    private int MisspeltUnit(int i, ref UnitRead unit)
    {
        ref readonly var word = ref run[i];
        if (word.Lexeme is not null)
            return -1;
        var text = run.TextOf(word);

        // "m.l."
        if (text.Length == 1 && run[i + 1].Is('.') && run.Touches(i + 1) && run.Touches(i + 2) && run[i + 2].Length == 1 && run[i + 2].Kind == TokenKind.Word
            && (Is(text, "m") && Is(run.TextOf(run[i + 2]), "l") || Is(text, "o") && Is(run.TextOf(run[i + 2]), "z")))
        {
            unit = new() { Unit = Is(text, "m") ? Unit.Millilitre : Unit.Ounce, Use = UnitUse.Strong };
            return AfterUnit(i + 3, ref unit);
        }

        // A figure one for the letter at the end: "45 m1", "4 c1".
        if (text.Length == 1 && text[0] is 'm' or 'M' or 'c' or 'C' && run.Touches(i + 1)
            && (run[i + 1].Kind == TokenKind.Digits && run.TextOf(run[i + 1]) is "1" || run[i + 1].Is('|')))
        {
            unit = new() { Unit = text[0] is 'm' or 'M' ? Unit.Millilitre : Unit.Centilitre, Use = UnitUse.Strong, Repaired = true };
            return AfterUnit(i + 2, ref unit);
        }

        if (text.Length < 4 || !Lexicon.TryNearestUnit(text, out var meant))
            return -1;
        unit = new() { Unit = meant.Unit!, Other = meant.OtherUnit, Use = meant.UnitUse, Repaired = true };
        return AfterUnit(i + 1, ref unit);
    }
}
