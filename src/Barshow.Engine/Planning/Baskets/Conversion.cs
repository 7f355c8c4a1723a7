using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>Turns what is needed, and what a pack holds, into one unit.</summary>
internal static class Conversion
{
    /// <summary>How many of a cut one whole piece gives: as the ingredient says, else by practice; 1 for whole pieces.</summary>
    public static int PiecesPerWhole(Ingredient? ingredient, Unit? cut) =>
        cut is null || cut == Unit.Piece || cut == Unit.Bunch
            ? 1
            : ingredient?.Produce?.Cuts.FirstOrDefault(known => known.Cut == cut && known.PerPiece > 0)?.PerPiece
                ?? (ingredient?.Kind is IngredientKind.Fruit or IngredientKind.Vegetable or IngredientKind.Herb ? Practice.CutsPerFruit(cut) : 1);

    /// <summary>The quantity in another kind of unit; whole pieces for pieces; null when nothing says how.</summary>
    public static double? To(QuantityKind kind, Quantity quantity, Ingredient ingredient)
    {
        if (quantity.Amount == 0)
            return 0;
        var density = ingredient.Composition.DensityGramsPerMillilitre is > 0 and var known ? known : (double?)null;
        var millilitresEach = ingredient.Produce?.JuiceMillilitres is > 0 and var juice ? juice
            : ingredient.Kind is IngredientKind.Egg ? Practice.EggMillilitres : (double?)null;
        return (quantity.Kind, kind) switch
        {
            (QuantityKind.Pieces, QuantityKind.Pieces) => quantity.Amount / PiecesPerWhole(ingredient, quantity.Cut),
            var (from, to) when from == to => quantity.Amount,
            (QuantityKind.Millilitres, QuantityKind.Grams) => quantity.Amount * density,
            (QuantityKind.Grams, QuantityKind.Millilitres) => quantity.Amount / density,
            (QuantityKind.Millilitres, QuantityKind.Pieces) => quantity.Amount / millilitresEach,
            (QuantityKind.Pieces, QuantityKind.Millilitres) when ContainerOf(quantity.Cut, ingredient) is { } each => quantity.Amount * each,
            (QuantityKind.Pieces, QuantityKind.Millilitres) => quantity.Amount / PiecesPerWhole(ingredient, quantity.Cut) * millilitresEach,
            _ => null,
        };
    }

    /// <summary>What a measure of an ingredient counts, in its own unit; null for one without an amount.</summary>
    public static Quantity? QuantityOf(Measure measure, BarSizes sizes, Convention convention)
    {
        if (measure.Middle is not { } middle)
            return null;
        if (measure.InMillilitres(convention, sizes) is { } millilitres)
            return Quantity.Millilitres(millilitres.ToDouble());
        return measure.Unit?.Grams is { } grams
            ? Quantity.Grams((middle * grams).ToDouble())
            : Quantity.Pieces(middle.ToDouble(), measure.Unit == Unit.Piece ? null : measure.Unit);
    }

    // "1 can": what the smallest pack of that name holds.
    private static double? ContainerOf(Unit? cut, Ingredient ingredient) =>
        cut == Unit.Can || cut == Unit.Bottle
            ? ingredient.Packs.Where(pack => pack.Name.Contains(cut!.Spoken, StringComparison.OrdinalIgnoreCase))
                .Select(pack => pack.Holds.InMillilitres(Convention.Bar)?.ToDouble()).FirstOrDefault(held => held > 0)
            : null;
}
