using Barshow.Engine.Findings;

namespace Barshow.Engine.Measures.Reading;

/// <summary>The grammar of measures in running speech, above that of amounts.</summary>
internal sealed class SpeechGrammar(TokenRun run, bool bareCounts)
{
    private readonly MeasureGrammar _amounts = new(run, mends: false);

    /// <summary>speech = { measure [ second ] | open | any word }.</summary>
    public List<FoundMeasure> Measures()
    {
        var found = new List<FoundMeasure>();
        var i = 0;
        while (run[i].Kind != TokenKind.End)
        {
            if (Found(i, out var next) is { } measure)
                found.Add(measure);
            i = Math.Max(next, i + 1);
        }

        return found;
    }

    private FoundMeasure? Found(int i, out int next)
    {
        next = -1;
        if (run[i].Kind is TokenKind.Digits && run.Touches(i) && run[i - 1].Kind == TokenKind.Mark && run[i - 1].Mark is ':' or '.' or ',')
            return null;
        if (Open(i, out next) is { } open)
            return open;
        next = _amounts.Measure(i, out var read);
        if (next < 0 || !read.HasNumber)
            return null;
        if (read.Measure is not { } measure)
            return null;
        if (read.Unit is null)
            return Counted(i, read, ref next);
        if (LeftToTheHand(read, i, next) is { } left)
            return left;
        if (!IsMeasured(read, next))
            return null;
        var first = new FoundMeasure(measure, PlaceOf(read.From, read.To)) { IsRepaired = read.Repaired };
        return WithSecond(first, ref next);
    }

    // "a part", "a bottle", "a piece" are said of anything; a lone letter is a unit only where it touches its figure.
    private bool IsMeasured(in MeasureRead read, int next)
    {
        if (run[next - 1].Length == 1 && run[next - 1].Kind == TokenKind.Word && !run.Touches(next - 1))
            return false;
        if (!read.IsArticle)
            return true;
        return read.Unit!.Kind is UnitKind.Volume or UnitKind.Bar or UnitKind.Mass || run[next].Has(Role.Of);
    }

    private FoundMeasure? LeftToTheHand(in MeasureRead read, int i, int next)
    {
        if (!read.IsArticle || !run[next].Has(Role.Of))
            return null;
        var open = read.Unit == Unit.Splash ? OpenMeasure.Splash
            : read.Unit == Unit.Squeeze ? OpenMeasure.Squeeze
            : read.Unit == Unit.Crack ? OpenMeasure.Crack
            : (OpenMeasure?)null;
        return open is { } hand ? new(Measure.LeftOpen(hand), PlaceOf(i, next)) : null;
    }

    /// <summary>counted = number name closing unit: "eight mint leaves".</summary>
    private FoundMeasure? Counted(int i, in MeasureRead read, ref int next)
    {
        if (read.IsArticle || _amounts.IsNumberInName(next))
            return null;
        var at = next;
        while (at < next + 3 && run[at].Kind == TokenKind.Word && run[at].Lexeme?.Unit is null && !run[at].Has(Role.Of | Role.And | Role.Or | Role.To))
            at++;
        if (at > next && run[at].Lexeme is { Unit: { } unit } closing && (closing.UnitUse & UnitUse.Closing) != 0)
        {
            var within = run.Text[run[next].Start..run[at - 1].End];
            next = at + 1;
            return new(Measure.Between(read.Measure!.Low!.Value, read.Measure.High!.Value, unit), PlaceOf(i, next)) { Within = within };
        }

        return bareCounts ? new(read.Measure!, PlaceOf(read.From, read.To)) { IsRepaired = read.Repaired } : null;
    }

    /// <summary>open = "top" [ "it" | "that" | "this" ] [ "up" | "off" ] "with".</summary>
    private FoundMeasure? Open(int i, out int next)
    {
        next = -1;
        if (run[i].Lexeme is not { Open: OpenMeasure.Top or OpenMeasure.Fill })
            return null;
        var at = i + 1;
        for (var words = 0; words < 3 && run[at].Kind == TokenKind.Word && !run[at].Has(Role.With); words++)
            at++;
        if (!run[at].Has(Role.With))
            return null;
        next = _amounts.Measure(at + 1, out var read);
        if (next > 0 && read is { HasNumber: true, IsArticle: false, Unit: not null, Measure: { } measure })
            return WithSecond(new(measure.As(run[i].Lexeme!.Open!.Value), PlaceOf(read.From, read.To)) { IsRepaired = read.Repaired }, ref next);
        next = at + 1;
        return new(Measure.LeftOpen(run[i].Lexeme!.Open!.Value), PlaceOf(i, next));
    }

    private FoundMeasure WithSecond(FoundMeasure first, ref int next)
    {
        if (first.Measure.Unit is not { Kind: UnitKind.Volume or UnitKind.Bar } unit)
            return first;
        var at = next;
        while (run[at].Kind == TokenKind.Mark && run[at].Mark is ',' or '(' or '[' or '/' or '·' or '|' or '=' or '–' or '-' or ';' or '.' && at < next + 2)
            at++;
        at = _amounts.SkipSaying(at);
        var end = _amounts.Measure(at, out var read);
        if (end < 0 || !read.HasNumber || read.IsArticle && unit.IsMetric == read.Unit?.IsMetric || read.Measure is not { Unit: { Kind: UnitKind.Volume } other } second
            || other.IsMetric == unit.IsMetric)
            return first;
        next = end;
        return first with { Second = second, SecondPlace = PlaceOf(read.From, read.To), IsRepaired = first.IsRepaired | read.Repaired };
    }

    private TextPlace PlaceOf(int from, int to) => new(run[from].Start, run[to - 1].End - run[from].Start);
}
