namespace Barshow.Engine.Ingredients.Solutions;

/// <summary>Table salt in water.</summary>
public static class Saline
{
    // What one gram of salt adds to the volume of water near 20 % by mass: 100 g of a 20 % brine fill 87.1 ml (1.148 g/ml at 20 °C; CRC Handbook, from memory), 80.1 ml of them water.
    private const double DissolvedMillilitresPerGram = 0.35;

    /// <summary>Millilitres of brine from salt and water.</summary>
    /// <param name="saltGrams">Grams of salt, 0 or more, no more than water dissolves (about 36 g to 100 ml).</param>
    /// <param name="waterMillilitres">Millilitres of water, 0 or more.</param>
    public static double YieldMillilitres(double saltGrams, double waterMillilitres) => waterMillilitres + saltGrams * DissolvedMillilitresPerGram;
}
