using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>Tells what is done with an ingredient from how its line is written.</summary>
public static class LineUses
{
    /// <summary>The use that a line's measure, ingredient and note speak of.</summary>
    /// <param name="measure">The line's measure; null when it has none.</param>
    /// <param name="ingredient">The ingredient; null when the house does not know it.</param>
    /// <param name="note">How it is cut or treated.</param>
    /// <param name="method">How the drink is made; null when it was not said.</param>
    public static LineUse Of(Measure? measure, Ingredient? ingredient, string? note, MethodKind? method)
    {
        var noted = note ?? "";
        if (measure?.Open is OpenMeasure.Top or OpenMeasure.Fill || noted.Contains("to top", StringComparison.OrdinalIgnoreCase))
            return LineUse.Topped;
        if (measure?.Open is OpenMeasure.Float || noted.Contains("float", StringComparison.OrdinalIgnoreCase))
            return LineUse.Floated;
        if (measure?.Open is OpenMeasure.Rinse || noted.Contains("rinse", StringComparison.OrdinalIgnoreCase))
            return LineUse.Rinsed;
        if (NameFolding.Fold(noted).Split(' ').Contains("rim"))
            return LineUse.Rimmed;

        // What holds gas is never shaken or stirred: it is poured on when the rest is made.
        if (ingredient?.Fizzy == true)
            return LineUse.Topped;
        var muddled = noted.Contains("muddle", StringComparison.OrdinalIgnoreCase)
            || (method is MethodKind.MuddledAndBuilt or MethodKind.MuddledAndShaken && ingredient?.Kind is IngredientKind.Herb or IngredientKind.Fruit or IngredientKind.Vegetable);
        return muddled ? LineUse.Muddled : LineUse.Mixed;
    }
}
