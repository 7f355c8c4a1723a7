namespace Barshow.Engine.Ingredients.Alcohol;

/// <summary>Ethanol on its own.</summary>
public static class Ethanol
{
    /// <summary>Grams in one millilitre at 20 °C: 789.24 kg/m³ (OIML R 22; Council Directive 76/766/EEC). Public-health formulas round it to 0.789.</summary>
    public const double GramsPerMillilitre = 0.78924;
}
