using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>The volume of a line whose amount is a volume, a dash, an open measure, a mass of liquid or an egg.</summary>
internal static class LineVolume
{
    // Common practice, no source: what stays in a glass that was coated and emptied.
    private const double RinseMillilitres = 1;

    // Common practice, no source: half an ounce.
    private const double FloatMillilitres = 15;

    // Common practice, no source: what one squeeze of a wedge gives.
    private const double SqueezeMillilitres = 5;

    // Common practice, no source: an egg white is poured as one ounce. One US large egg gives 33 g of white, 17 g of yolk, 50 g without its shell
    // (USDA National Nutrient Database SR 26, records 01124, 01125, 01123); at 1.03 g/ml that is 32, 16 and 48 ml.
    private const double EggWhiteMillilitres = 30;
    private const double EggYolkMillilitres = 16;
    private const double WholeEggMillilitres = 48;

    /// <summary>Millilitres; null when no volume can be made of the amount.</summary>
    public static double? Of(Ingredient ingredient, Measure? measure, LineUse use, AnalysisSetting setting)
    {
        if (measure is null)
            return use is LineUse.Rinsed ? RinseMillilitres : null;
        if (use is LineUse.Rinsed || measure.Open is OpenMeasure.Rinse)
            return RinseMillilitres;
        if (!measure.HasAmount)
            return OfOpen(measure.Open, use, setting);
        if (measure.Unit == Unit.Dash && ingredient.DashMillilitres is { } dash)
            return (measure.Low!.Value.ToDouble() + measure.High!.Value.ToDouble()) / 2 * dash.ToDouble();
        if (measure.MillilitresNear(setting.Convention, setting.Sizes) is { } volume)
            return volume;
        if (measure.Unit?.Grams is { } grams)
            return ingredient.Composition.DensityGramsPerMillilitre is > 0 and var density ? (measure.Middle!.Value * grams).ToDouble() / density : null;
        return ingredient.Kind is IngredientKind.Egg && (measure.Unit is null || measure.Unit == Unit.Piece) ? measure.Middle!.Value.ToDouble() * EggMillilitres(ingredient) : null;
    }

    /// <summary>Whether an amount without a volume rightly counts as nothing: leaves, pinches, cuts that give only their scent.</summary>
    public static bool IsNothingToDrink(Ingredient ingredient, Measure measure) =>
        measure.Open is OpenMeasure.Crack or OpenMeasure.ToTaste
        || measure.Unit is { Kind: UnitKind.Count }
        || ingredient.Kind is IngredientKind.Herb or IngredientKind.Spice or IngredientKind.Salt or IngredientKind.Preserve or IngredientKind.Vegetable or IngredientKind.Fruit;

    private static double? OfOpen(OpenMeasure? open, LineUse use, AnalysisSetting setting) => open switch
    {
        OpenMeasure.Splash => setting.Sizes.Splash.ToDouble(),
        OpenMeasure.Squeeze => SqueezeMillilitres,
        OpenMeasure.Float => FloatMillilitres,
        _ => use is LineUse.Floated ? FloatMillilitres : null,
    };

    private static double EggMillilitres(Ingredient egg)
    {
        if (egg.Produce is { JuiceMillilitres: > 0 and var stated })
            return stated;
        var name = NameFolding.Fold(egg.Name);
        return name.Contains("white", StringComparison.Ordinal) ? EggWhiteMillilitres
            : name.Contains("yolk", StringComparison.Ordinal) ? EggYolkMillilitres
            : WholeEggMillilitres;
    }
}
