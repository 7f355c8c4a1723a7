using Barshow.Engine.Ingredients;
using Barshow.Engine.Ingredients.Solutions;
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
        var density = ingredient.Composition.DensityGramsPerMillilitre is > 0 and var known ? known : LooseDensity(ingredient.Kind);
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
            (QuantityKind.Pieces, QuantityKind.Grams) => quantity.Amount / PiecesPerWhole(ingredient, quantity.Cut) * GramsEach(ingredient),
            (QuantityKind.Grams, QuantityKind.Pieces) => quantity.Amount / GramsEach(ingredient),
            _ => null,
        };
    }

    // Spoons of sugar and salt: granulated sugar as the nutrient database has it; salt 1.2 g/ml, common practice, no source; water at 20 °C (OIML R 22).
    private static double? LooseDensity(IngredientKind kind) => kind switch
    {
        IngredientKind.Sugar => SugarSolution.GranulatedGramsPerMillilitre,
        IngredientKind.Salt => 1.2,
        IngredientKind.Water => 0.998,
        _ => null,
    };

    // Produce that is sold by weight: one whole is the smallest pack, as its cuts are counted. A bean, a clove or a star of anise weighs no more than a gram.
    private static double? GramsEach(Ingredient ingredient) => ingredient switch
    {
        { Produce.Cuts.Count: > 0 } => ingredient.Packs.Select(pack => pack.Holds.Unit?.Grams is { } grams && pack.Holds.Middle is { } middle ? (middle * grams).ToDouble() : 0).Where(grams => grams > 0).Select(grams => (double?)grams).Min(),
        { Kind: IngredientKind.Spice or IngredientKind.Other } => Practice.SmallPieceGrams,
        _ => null,
    };

    /// <summary>What a measure of an ingredient counts, in its own unit; null for one without an amount.</summary>
    public static Quantity? QuantityOf(Measure measure, BarSizes sizes, Convention convention)
    {
        if (measure.Middle is not { } middle)
            return null;
        if (measure.Unit?.MillilitresUnder(convention, sizes) is { } each)
            return Quantity.Millilitres(Quantity.Product(middle, each));
        return measure.Unit?.Grams is { } grams
            ? Quantity.Grams(Quantity.Product(middle, grams))
            : Quantity.Pieces(middle.ToDouble(), measure.Unit == Unit.Piece ? null : measure.Unit);
    }

    // "1 can": what the smallest pack of that name holds.
    private static double? ContainerOf(Unit? cut, Ingredient ingredient) =>
        cut == Unit.Can || cut == Unit.Bottle
            ? ingredient.Packs.Where(pack => pack.Name.Contains(cut!.Spoken, StringComparison.OrdinalIgnoreCase))
                .Select(pack => pack.Holds.MillilitresNear(Convention.Bar)).FirstOrDefault(held => held > 0)
            : null;
}
