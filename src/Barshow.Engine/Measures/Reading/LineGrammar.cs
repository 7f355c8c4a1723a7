using Barshow.Engine.Findings;

namespace Barshow.Engine.Measures.Reading;

/// <summary>The grammar of an ingredient line, above that of amounts. One rule, one method.</summary>
internal sealed partial class LineGrammar(TokenRun run)
{
    private readonly MeasureGrammar _amounts = new(run);
    private List<Finding>? _findings;
    private Measure? _measure;
    private Measure? _second;
    private TextPlace? _measurePlace;
    private TextPlace? _secondPlace;
    private OpenMeasure? _open;
    private bool _optional;
    private bool _flawed;

    /// <summary>A list of names follows "each:", whose commas part names and begin no note.</summary>
    private bool _isListed;
    private string? _nameBefore;
    private string? _label;

    /// <summary>line = [ bullet ] [ label ] ( yield | open | leading | trailing | name ).</summary>
    public ReadLine Line()
    {
        var start = Bullet();
        start = Labels(start);
        if (run[start].Kind == TokenKind.End)
            return Done("", null, null);
        start = Lead(start);
        if (YieldLine(start) is { } ofFruit)
            return ofFruit;
        if (OpenLine(start) is { } open)
            return open;
        start = Invitation(start);
        return LeadingLine(start) ?? TrailingLine(start) ?? NameLine(start);
    }

    private ReadLine Done(string name, TextPlace? namePlace, string? note)
    {
        WeighOunces();
        var measure = _measure;
        if (_open is { } open)
            measure = measure?.As(open) ?? Measures.Measure.LeftOpen(open);
        if (name.Length == 0 && !_flawed)
            NothingNamed(measure);
        return new(run.Text)
        {
            Measure = measure,
            Second = _second,
            Name = name,
            Note = Joined(_label, Joined(_nameBefore, note)),
            Optional = _optional,
            MeasurePlace = _measurePlace,
            SecondPlace = _secondPlace,
            NamePlace = namePlace,
            Findings = _findings is null ? [] : _findings,
        };
    }

    private static string? Joined(string? first, string? second) =>
        first is null ? second : second is null ? first : $"{first}, {second}";

    private TextPlace PlaceOf(int from, int to)
    {
        var start = run[from].Start;
        return new(start, run[to - 1].End - start);
    }

    private static bool Is(ReadOnlySpan<char> word, string meant) => word.Equals(meant, StringComparison.OrdinalIgnoreCase);
}
