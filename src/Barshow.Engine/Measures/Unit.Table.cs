namespace Barshow.Engine.Measures;

/// <content>The table of units.</content>
public sealed partial class Unit
{
    /// <summary>Millilitre.</summary>
    public static Unit Millilitre { get; } = new("ml", "mil", "mil", UnitKind.Volume) { Abbreviation = "ml", IsDecimal = true, Millilitres = 1 };

    /// <summary>Centilitre, 10 ml.</summary>
    public static Unit Centilitre { get; } = new("cl", "centilitre", "centilitres", UnitKind.Volume) { Abbreviation = "cl", IsDecimal = true, Millilitres = 10 };

    /// <summary>Decilitre, 100 ml.</summary>
    public static Unit Decilitre { get; } = new("dl", "decilitre", "decilitres", UnitKind.Volume) { Abbreviation = "dl", IsDecimal = true, Millilitres = 100 };

    /// <summary>Litre, 1000 ml.</summary>
    public static Unit Litre { get; } = new("l", "litre", "litres", UnitKind.Volume) { Abbreviation = "l", IsDecimal = true, Millilitres = 1000 };

    /// <summary>Fluid ounce; the convention fixes it.</summary>
    public static Unit Ounce { get; } = new("oz", "ounce", "ounces", UnitKind.Volume) { Abbreviation = "oz", Ounces = 1 };

    /// <summary>Teaspoon, a sixth of an ounce: 5 ml by the bar convention.</summary>
    public static Unit Teaspoon { get; } = new("tsp", "teaspoon", "teaspoons", UnitKind.Volume) { Abbreviation = "tsp", Ounces = new(1, 6) };

    /// <summary>Tablespoon, half an ounce: 15 ml by the bar convention.</summary>
    public static Unit Tablespoon { get; } = new("tbsp", "tablespoon", "tablespoons", UnitKind.Volume) { Abbreviation = "tbsp", Ounces = new(1, 2) };

    /// <summary>Cup, 8 ounces: 240 ml by the bar convention.</summary>
    public static Unit Cup { get; } = new("cup", "cup", "cups", UnitKind.Volume) { Ounces = 8 };

    /// <summary>Dash; a house size.</summary>
    public static Unit Dash { get; } = new("dash", "dash", "dashes", UnitKind.Bar) { HouseSize = sizes => sizes.Dash };

    /// <summary>Barspoon; a house size.</summary>
    public static Unit Barspoon { get; } = new("barspoon", "barspoon", "barspoons", UnitKind.Bar) { HouseSize = sizes => sizes.Barspoon };

    /// <summary>Splash; a house size.</summary>
    public static Unit Splash { get; } = new("splash", "splash", "splashes", UnitKind.Bar) { HouseSize = sizes => sizes.Splash };

    /// <summary>Drop; a house size.</summary>
    public static Unit Drop { get; } = new("drop", "drop", "drops", UnitKind.Bar) { HouseSize = sizes => sizes.Drop };

    /// <summary>Part, a share of the whole.</summary>
    public static Unit Part { get; } = new("part", "part", "parts", UnitKind.Part);

    /// <summary>Gram.</summary>
    public static Unit Gram { get; } = new("g", "gram", "grams", UnitKind.Mass) { Abbreviation = "g", IsDecimal = true, Grams = 1 };

    /// <summary>Kilogram.</summary>
    public static Unit Kilogram { get; } = new("kg", "kilogram", "kilograms", UnitKind.Mass) { Abbreviation = "kg", IsDecimal = true, Grams = 1000 };

    /// <summary>Leaf.</summary>
    public static Unit Leaf { get; } = new("leaf", "leaf", "leaves", UnitKind.Count);

    /// <summary>Sprig.</summary>
    public static Unit Sprig { get; } = new("sprig", "sprig", "sprigs", UnitKind.Count);

    /// <summary>Wedge.</summary>
    public static Unit Wedge { get; } = new("wedge", "wedge", "wedges", UnitKind.Count);

    /// <summary>Wheel.</summary>
    public static Unit Wheel { get; } = new("wheel", "wheel", "wheels", UnitKind.Count);

    /// <summary>Slice.</summary>
    public static Unit Slice { get; } = new("slice", "slice", "slices", UnitKind.Count);

    /// <summary>Twist of peel.</summary>
    public static Unit Twist { get; } = new("twist", "twist", "twists", UnitKind.Count);

    /// <summary>Cube.</summary>
    public static Unit Cube { get; } = new("cube", "cube", "cubes", UnitKind.Count);

    /// <summary>Pinch.</summary>
    public static Unit Pinch { get; } = new("pinch", "pinch", "pinches", UnitKind.Count);

    /// <summary>Piece.</summary>
    public static Unit Piece { get; } = new("piece", "piece", "pieces", UnitKind.Count);

    /// <summary>Bunch.</summary>
    public static Unit Bunch { get; } = new("bunch", "bunch", "bunches", UnitKind.Count);

    /// <summary>Can.</summary>
    public static Unit Can { get; } = new("can", "can", "cans", UnitKind.Count);

    /// <summary>Bottle.</summary>
    public static Unit Bottle { get; } = new("bottle", "bottle", "bottles", UnitKind.Count);
}
