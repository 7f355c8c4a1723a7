using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Planning.Demand;

/// <summary>Turns a line's measure into millilitres, grams or pieces.</summary>
internal sealed class AmountReader
{
    private readonly Convention _convention;
    private readonly Bar _bar;
    private readonly Spec _spec;
    private readonly double _millilitresPerPart;

    public AmountReader(Convention convention, Bar bar, Spec spec)
    {
        _convention = convention;
        _bar = bar;
        _spec = spec;
        var parts = spec.Lines.Where(line => line.Planned?.Unit?.Kind is UnitKind.Part).Sum(line => line.Planned!.Middle!.Value.ToDouble());
        _millilitresPerPart = parts > 0 ? Practice.PartsMillilitres / parts : 0;
    }

    /// <summary>What was made of an amount: null when it cannot be counted; the ingredient when it is another than the line's (the juice of a fruit).</summary>
    internal readonly record struct Reading(Quantity? Amount, Ingredient? Ingredient = null, params IReadOnlyList<Finding> Findings);

    /// <summary>What one drink takes of a line.</summary>
    public Reading Read(SpecLine line, Ingredient? ingredient)
    {
        if (line.Planned is not { } measure)
            return new(new Quantity(0, KindOf(ingredient)));
        if (measure.Unit?.Kind is UnitKind.Part && measure.Middle is { } parts)
            return new(Quantity.Millilitres(parts.ToDouble() * _millilitresPerPart), null, PlanningFindings.PartsAssumed(_spec));
        if (measure is { HasAmount: false, Open: { } open })
            return Open(open, line, ingredient);
        return Plain(measure, ingredient, _convention, _bar.House.BarSizes, line.Note, _bar.Ingredients);
    }

    /// <summary>An amount with a number in it.</summary>
    public static Reading Plain(Measure measure, Ingredient? ingredient, Convention convention, BarSizes sizes, string? note, IngredientShelf shelf)
    {
        if (measure.Middle is not { } middle)
            return new(new Quantity(0, KindOf(ingredient)));
        var amount = middle.ToDouble();
        if (measure.Unit == Unit.Dash && ingredient?.DashMillilitres is { } dash)
            return new(Quantity.Millilitres(amount * dash.ToDouble()));
        // A product of exact fractions need not fit; what is bought need not be exact.
        if (measure.Unit?.MillilitresUnder(convention, sizes) is { } each)
            return Poured(Quantity.Product(middle, each), ingredient, shelf);
        if (measure.Unit?.Grams is { } grams)
            return new(Quantity.Grams(amount * grams.ToDouble()));
        if (measure.Unit == Unit.Pinch)
            return new(Quantity.Grams(amount * Practice.PinchGrams));
        if (measure.Unit == Unit.Cube && ingredient?.Kind is IngredientKind.Sugar)
            return new(Quantity.Grams(amount * Practice.SugarCubeGrams));
        if (measure.Unit?.Kind is null or UnitKind.Count)
            return Counted(amount, measure.Unit, ingredient, note, shelf);
        return default;
    }

    // Millilitres of a fruit are its juice.
    private static Reading Poured(double millilitres, Ingredient? ingredient, IngredientShelf shelf) =>
        ingredient?.Produce is { Juice.IsEmpty: false, JuiceMillilitres: > 0 } produce && shelf[produce.Juice] is { } juice
            ? new(Quantity.Millilitres(millilitres), juice)
            : new(Quantity.Millilitres(millilitres));

    // "Juice of half a lime", whether the line names the lime or its juice.
    private static Reading Counted(double amount, Unit? unit, Ingredient? ingredient, string? note, IngredientShelf shelf)
    {
        var whole = unit is null || unit == Unit.Piece;
        if (whole && ingredient is { Kind: IngredientKind.Juice } && Pressing.FruitOf(ingredient, shelf) is { } fruit)
            return new(Quantity.Millilitres(amount * fruit.Produce!.JuiceMillilitres));
        if (whole && ingredient?.Produce is { JuiceMillilitres: > 0 } produce && shelf[produce.Juice] is { } juice
            && note?.Contains("juice", StringComparison.OrdinalIgnoreCase) is true)
            return new(Quantity.Millilitres(amount * produce.JuiceMillilitres), juice);
        return new(Quantity.Pieces(amount, whole ? null : unit));
    }

    private Reading Open(OpenMeasure open, SpecLine line, Ingredient? ingredient)
    {
        double? assumed = open switch
        {
            OpenMeasure.Top or OpenMeasure.Fill => ToTheWashLine() ?? Practice.TopMillilitres,
            OpenMeasure.Rinse => Practice.RinseMillilitres,
            OpenMeasure.Float => Practice.FloatMillilitres,
            OpenMeasure.Splash => _bar.House.BarSizes.Splash.ToDouble(),
            OpenMeasure.Squeeze => Practice.SqueezeMillilitres,
            _ => null,
        };
        if (assumed is not { } millilitres || KindOf(ingredient) is QuantityKind.Grams)
            return new(new Quantity(0, KindOf(ingredient)));
        if (open is OpenMeasure.Squeeze && ingredient?.Kind is IngredientKind.Fruit)
            return new(Quantity.Pieces(1, Unit.Wedge));
        return Poured(millilitres, ingredient, _bar.Ingredients) with { Findings = [PlanningFindings.OpenAmountAssumed(_spec, line, open, millilitres)] };
    }

    // What an open top comes to in the drink's own glass, up to the next 5 ml; null where the glass is not known.
    private double? ToTheWashLine()
    {
        if (_spec.Lines.Count(line => line.Planned is { HasAmount: false, Open: OpenMeasure.Top or OpenMeasure.Fill }) != 1)
            return null;
        var analysis = DrinkAnalyser.Analyse(_spec, new AnalysisSetting(_bar.Ingredients, _bar.Kit) { Convention = _convention, Sizes = _bar.House.BarSizes });
        return analysis.WashLine is not null && analysis.ToppedMillilitres.Middle > 0 ? Math.Ceiling(analysis.ToppedMillilitres.Middle / 5) * 5 : null;
    }

    private static QuantityKind KindOf(Ingredient? ingredient) => ingredient?.Kind switch
    {
        IngredientKind.Salt or IngredientKind.Sugar or IngredientKind.Spice => QuantityKind.Grams,
        IngredientKind.Fruit or IngredientKind.Vegetable or IngredientKind.Herb or IngredientKind.Egg or IngredientKind.Preserve or IngredientKind.Other => QuantityKind.Pieces,
        _ => QuantityKind.Millilitres,
    };
}
