using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>Turns the lines of a spec into volumes with what is in them.</summary>
internal sealed class LineReckoner(Spec spec, AnalysisSetting setting)
{
    private readonly List<Finding> _findings = [];
    private readonly List<string> _unknown = [];

    /// <summary>What the lines left unsaid.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Ingredients that count as nothing in something.</summary>
    public IReadOnlyList<string> Unknown => _unknown;

    public LineContent Of(SpecLine line)
    {
        var ingredient = setting.Ingredients[line.Ingredient];
        var measure = line.At(setting.Layer);
        var place = PlaceOf(line, ingredient, measure);
        if (place is LinePlace.Outside)
            return Nothing(line, ingredient, place);
        var openTop = place is LinePlace.Top && measure is null or { HasAmount: false, Open: OpenMeasure.Top or OpenMeasure.Fill };
        if (ingredient is null)
            return OfUnknown(line, place, measure, openTop);
        if (openTop)
            return Content(line, ingredient, place, 0, isOpenTop: true);
        if (MixedSolids.Of(ingredient, measure, setting) is { } solid)
            return Solid(line, ingredient, place, solid);
        if (PressedFruit.Of(ingredient, measure, line.Use, setting) is { } pressed)
            return Content(line, pressed.Juice, place, pressed.Millilitres, isOpenTop: false) with { Ingredient = ingredient };
        if (LineVolume.Of(ingredient, measure, line.Use, setting) is { } millilitres)
            return Content(line, ingredient, place, millilitres, isOpenTop: false);
        if (measure is null || !LineVolume.IsNothingToDrink(ingredient, measure))
            _findings.Add(AnalysisSentences.AmountNotCounted(spec, line, measure));
        return Nothing(line, ingredient, place);
    }

    private static LineContent Nothing(SpecLine line, Ingredient? ingredient, LinePlace place) => new(line, ingredient, place, 0, 0, 0, 0, false);

    // Fizz is never shaken or diluted: it goes on top even where the line does not say so.
    private static LinePlace PlaceOf(SpecLine line, Ingredient? ingredient, Measure? measure) => line.Use switch
    {
        LineUse.Rimmed => LinePlace.Outside,
        LineUse.Floated or LineUse.Rinsed => LinePlace.Float,
        LineUse.Topped => LinePlace.Top,
        _ => measure?.Open switch
        {
            OpenMeasure.Top or OpenMeasure.Fill => LinePlace.Top,
            OpenMeasure.Float or OpenMeasure.Rinse => LinePlace.Float,
            _ => ingredient?.Fizzy == true ? LinePlace.Top : LinePlace.Tin,
        },
    };

    private LineContent OfUnknown(SpecLine line, LinePlace place, Measure? measure, bool openTop)
    {
        _unknown.Add(line.Name);
        _findings.Add(AnalysisSentences.IngredientUnknown(spec, line));
        var millilitres = openTop ? 0 : measure?.MillilitresNear(setting.Convention, setting.Sizes) ?? 0;
        return new(line, null, place, millilitres, 0, 0, 0, openTop);
    }

    private LineContent Content(SpecLine line, Ingredient ingredient, LinePlace place, double millilitres, bool isOpenTop)
    {
        var known = KnownContent.Of(ingredient, setting);
        if (known.StrengthIsMissing && (millilitres > 0 || isOpenTop))
            Missing(AnalysisSentences.StrengthUnknown(spec, line, millilitres));
        else if (known.RestIsMissing && (millilitres > 0 || isOpenTop))
            Missing(AnalysisSentences.SugarAndAcidUnknown(spec, line, known));
        return new(line, ingredient, place, millilitres, known.Strength, known.SugarPerMillilitre, known.AcidPerMillilitre, isOpenTop);

        void Missing(Finding finding)
        {
            _unknown.Add(line.Name);
            _findings.Add(finding);
        }
    }

    private static LineContent Solid(SpecLine line, Ingredient ingredient, LinePlace place, MixedSolid solid) => solid.Millilitres > 0
        ? new(line, ingredient, place, solid.Millilitres, 0, solid.SugarGrams / solid.Millilitres, 0, false)
        : Nothing(line, ingredient, place);
}
