using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>Dry sugar that dissolves in a drink.</summary>
/// <param name="SugarGrams">Grams of sugar.</param>
/// <param name="Millilitres">What it adds to the volume once dissolved.</param>
internal readonly record struct MixedSolid(double SugarGrams, double Millilitres);

/// <summary>Reckons dry sugar by the gram, the spoon and the cube.</summary>
internal static class MixedSolids
{
    // A gram of sucrose adds 0.62 ml to the water it dissolves in (ICUMSA density of a 50 °Bx solution, 1.2297 g/ml: 100 g fill 81.3 ml, 50 ml of them water).
    private const double DissolvedMillilitresPerGram = 0.624;

    // Common practice, no source: one small sugar cube.
    private const double CubeGrams = 4;

    // Common practice, no source: between two fingers.
    private const double PinchGrams = 0.4;

    // Loose granulated sugar: 4.2 g to the US teaspoon of 4.93 ml (kitchen tables; from memory).
    private const double BulkGramsPerMillilitre = 0.85;

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
            _ => measure.InMillilitres(setting.Convention, setting.Sizes)?.ToDouble() * (ingredient.Composition.DensityGramsPerMillilitre ?? BulkGramsPerMillilitre),
        };
        return grams is { } weight ? new(weight, weight * DissolvedMillilitresPerGram) : null;
    }
}
