using Barshow.Engine.Ingredients;
using Barshow.Engine.Ingredients.Solutions;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>Dry sugar that dissolves in a drink.</summary>
/// <param name="SugarGrams">Grams of sugar.</param>
/// <param name="Millilitres">What it adds to the volume once dissolved.</param>
internal readonly record struct MixedSolid(double SugarGrams, double Millilitres);

/// <summary>Reckons dry sugar by the gram, the spoon and the cube.</summary>
internal static class MixedSolids
{
    // What a gram of sucrose adds to the water it dissolves in: at 50 °Bx, 100 g of solution less 50 g of water (ICUMSA density of sucrose).
    private static readonly double DissolvedMillilitresPerGram = 2 / SugarSolution.OneToOneByWeight.GramsPerMillilitre - 1 / Water.KilogramsPerCubicMetre(20) * 1000;

    // USDA National Nutrient Database SR 26, record 19335: one cube of granulated sugar. Cubes sold in Europe weigh up to twice that.
    private const double CubeGrams = 2.3;

    // Common practice, no source: between two fingers.
    private const double PinchGrams = 0.4;

    /// <summary>The sugar of an amount; null when the ingredient is no dry sugar or the amount cannot be weighed.</summary>
    public static MixedSolid? Of(Ingredient ingredient, Measure? measure, AnalysisSetting setting)
    {
        if (ingredient.Kind is not IngredientKind.Sugar || measure?.Middle is not { } amount)
            return null;
        double? grams = measure.Unit switch
        {
            { Grams: { } each } => (amount * each).ToDouble(),
            _ when measure.Unit == Unit.Pinch => amount.ToDouble() * PinchGrams,
            _ when measure.Unit is null || measure.Unit == Unit.Cube || measure.Unit == Unit.Piece => amount.ToDouble() * CubeGrams,
            _ => measure.MillilitresNear(setting.Convention, setting.Sizes) * (ingredient.Composition.DensityGramsPerMillilitre ?? SugarSolution.GranulatedGramsPerMillilitre),
        };
        return grams is { } weight ? new(weight, weight * DissolvedMillilitresPerGram) : null;
    }
}
