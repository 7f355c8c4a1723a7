using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Demand;

/// <summary>Tells what a garnish is cut from and how much of it one drink takes.</summary>
internal static class GarnishReader
{
    /// <summary>The ingredient (null when the house does not know it) and the amount for one drink: as stated, else one of the cut its words name, else one of the kind's usual cut.</summary>
    public static (Ingredient? Ingredient, Quantity Each) Read(Garnish garnish, Bar bar, Convention convention)
    {
        var shelf = bar.Ingredients;
        var words = NameFolding.Fold(garnish.Text).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var cut = words.Select(CutNamed).LastOrDefault(found => found is not null);
        var ingredient = garnish.Ingredient.IsEmpty
            ? shelf.Named(garnish.Text) ?? shelf.Named(string.Join(' ', words.Where(word => CutNamed(word) is null)))
            : shelf[garnish.Ingredient];
        // Three drops of bitters are poured, not cut.
        if (garnish.Measure is { Unit.Kind: UnitKind.Volume or UnitKind.Bar or UnitKind.Mass } poured && AmountReader.Plain(poured, ingredient, convention, bar.House.BarSizes, null, shelf).Amount is { } amount)
            return (ingredient, amount);
        if (garnish.Measure is { Middle: { } middle } measure)
            return (ingredient, Quantity.Pieces(middle.ToDouble(), measure.Unit?.Kind is UnitKind.Count ? Plain(measure.Unit) : cut));
        return (ingredient, ingredient?.Kind is IngredientKind.Spice or IngredientKind.Salt or IngredientKind.Sugar
            ? Quantity.Grams(0)
            : Quantity.Pieces(1, cut ?? UsualCut(ingredient?.Kind)));
    }

    private static Unit? UsualCut(IngredientKind? kind) => kind switch
    {
        IngredientKind.Fruit => Unit.Wheel,
        IngredientKind.Herb => Unit.Sprig,
        IngredientKind.Vegetable => Unit.Slice,
        _ => null,
    };

    private static Unit? Plain(Unit unit) => unit == Unit.Piece ? null : unit;

    private static Unit? CutNamed(string word) => word switch
    {
        "wheel" or "wheels" => Unit.Wheel,
        "wedge" or "wedges" => Unit.Wedge,
        "slice" or "slices" => Unit.Slice,
        "twist" or "twists" or "peel" or "zest" => Unit.Twist,
        "leaf" or "leaves" => Unit.Leaf,
        "sprig" or "sprigs" => Unit.Sprig,
        "shell" or "shells" => Unit.Piece,
        _ => null,
    };
}
