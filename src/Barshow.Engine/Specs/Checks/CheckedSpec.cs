using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Specs.Checks;

/// <summary>A spec with its ingredients looked up, as every check sees it.</summary>
internal sealed class CheckedSpec(Spec spec, AnalysisSetting setting)
{
    public Spec Spec => spec;

    public AnalysisSetting Setting => setting;

    public MethodKind? Method => spec.Method?.Kind;

    public IReadOnlyList<CheckedLine> Lines { get; } = [.. spec.Lines.Select(line => new CheckedLine(line, setting.Ingredients[line.Ingredient], line.At(setting.Layer)))];

    /// <summary>Whether it is moved with ice in a closed or open vessel and then poured.</summary>
    public bool IsShaken => Method is MethodKind.Shaken or MethodKind.MuddledAndShaken;

    public Finding About(FindingKind kind, string message, string remedy) => new(kind, spec.Name, message, remedy) { Drink = spec.Name };

    public Finding About(FindingKind kind, CheckedLine line, string message, string remedy) =>
        new(kind, line.Line.Name, message, remedy) { Drink = spec.Name, Ingredient = line.Line.Name, Line = line.Line.BriefLine };
}

/// <summary>A line with its ingredient, null when the house does not know it, and its amount.</summary>
internal sealed record CheckedLine(SpecLine Line, Ingredient? Ingredient, Measure? Measure)
{
    /// <summary>Whether it goes in with the rest, and is not topped, floated, rinsed or rimmed.</summary>
    public bool IsMixed => Line.Use is LineUse.Mixed or LineUse.Muddled && Measure?.Open is not (OpenMeasure.Top or OpenMeasure.Fill or OpenMeasure.Float or OpenMeasure.Rinse);
}
