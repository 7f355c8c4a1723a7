namespace Barshow.Engine.Measures.Reading;

/// <content>Lines that begin with what is left to the hand.</content>
internal sealed partial class LineGrammar
{
    /// <summary>open = ( "top" [ "up" ] | "fill" | "rinse" | "float" | "splash" | "squeeze" | "crack" | "to taste" ) [ "with" | "of" ] [ measure ] name; a rinse or a float may have the figure 1 before it.</summary>
    private ReadLine? OpenLine(int i)
    {
        var at = run[i].Has(Role.To) || run[i].Has(Role.Determiner) ? i + 1 : i;
        if (run[i].Has(Role.Article) && run[i + 1].Lexeme?.Open is not null)
            at = i + 1;
        else if (run[i].Has(Role.Article) && run[i + 1].Has(Role.Manner) && run[i + 2].Lexeme?.Open is not null)
            at = i + 2;
        else if (run[i].Has(Role.Manner) && run[i + 1].Lexeme?.Open is not null)
            at = i + 1;
        // One rinse or one float is a rinse or a float.
        else if (run[i].Kind is TokenKind.Digits && Is(run.TextOf(run[i]), "1") && run[i + 1].Lexeme?.Open is (OpenMeasure.Rinse or OpenMeasure.Float))
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
}
