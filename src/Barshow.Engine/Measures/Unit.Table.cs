namespace Barshow.Engine.Measures;

/// <content>The table of units.</content>
public sealed partial class Unit
{
    // Stands before the units because each of them adds itself to it when it is made.
    private static readonly Dictionary<string, Unit> Known = new(StringComparer.Ordinal);

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

    /// <summary>Fluid ounce of the United States wherever the convention stands: 231 cubic inches of 16.387064 ml to the gallon, 128 to the gallon (NIST Handbook 44, Appendix C).</summary>
    public static Unit UsOunce { get; } = new("us-oz", "US ounce", "US ounces", UnitKind.Volume) { Abbreviation = "US oz", Millilitres = 231 * new Rational(16_387_064, 1_000_000) / 128 };

    /// <summary>Imperial fluid ounce wherever the convention stands: 4546.09 ml to the gallon, 160 to the gallon (UK Weights and Measures Act 1985, Schedule 1).</summary>
    public static Unit ImperialOunce { get; } = new("imperial-oz", "imperial ounce", "imperial ounces", UnitKind.Volume) { Abbreviation = "imperial oz", Millilitres = new Rational(454_609, 100) / 160 };

    /// <summary>Teaspoon, a sixth of an ounce (NIST Handbook 44, Appendix C): 5 ml by the bar convention.</summary>
    public static Unit Teaspoon { get; } = new("tsp", "teaspoon", "teaspoons", UnitKind.Volume) { Abbreviation = "tsp", Ounces = new(1, 6) };

    /// <summary>Metric teaspoon, 5 ml (21 CFR 101.9(b)(5)(viii); NSW Health metric spoon table).</summary>
    public static Unit MetricTeaspoon { get; } = new("metric-tsp", "metric teaspoon", "metric teaspoons", UnitKind.Volume) { Abbreviation = "metric tsp", Millilitres = 5 };

    /// <summary>Heaped teaspoon of something dry, taken as two level ones. Common practice, no source.</summary>
    public static Unit HeapedTeaspoon { get; } = new("heaped-tsp", "heaped teaspoon", "heaped teaspoons", UnitKind.Volume) { Abbreviation = "heaped tsp", Ounces = new(2, 6) };

    /// <summary>Tablespoon, half an ounce (NIST Handbook 44, Appendix C): 15 ml by the bar convention.</summary>
    public static Unit Tablespoon { get; } = new("tbsp", "tablespoon", "tablespoons", UnitKind.Volume) { Abbreviation = "tbsp", Ounces = new(1, 2) };

    /// <summary>Dessertspoon, two teaspoons: 10 ml by the bar convention. Common practice, no source.</summary>
    public static Unit Dessertspoon { get; } = new("dessertspoon", "dessertspoon", "dessertspoons", UnitKind.Volume) { Ounces = new(2, 6) };

    /// <summary>Metric tablespoon, 15 ml (21 CFR 101.9(b)(5)(viii)).</summary>
    public static Unit MetricTablespoon { get; } = new("metric-tbsp", "metric tablespoon", "metric tablespoons", UnitKind.Volume) { Abbreviation = "metric tbsp", Millilitres = 15 };

    /// <summary>Australian tablespoon, four metric teaspoons, 20 ml (NSW Health metric cup and spoon table).</summary>
    public static Unit AustralianTablespoon { get; } = new("au-tbsp", "Australian tablespoon", "Australian tablespoons", UnitKind.Volume) { Abbreviation = "AU tbsp", Millilitres = 20 };

    /// <summary>Heaped tablespoon of something dry, taken as two level ones. Common practice, no source.</summary>
    public static Unit HeapedTablespoon { get; } = new("heaped-tbsp", "heaped tablespoon", "heaped tablespoons", UnitKind.Volume) { Abbreviation = "heaped tbsp", Ounces = 1 };

    /// <summary>Cup, 8 ounces (NIST Handbook 44, Appendix C): 240 ml by the bar convention, as on nutrition labels (21 CFR 101.9(b)(5)(viii)).</summary>
    public static Unit Cup { get; } = new("cup", "cup", "cups", UnitKind.Volume) { Ounces = 8 };

    /// <summary>Metric cup, 250 ml (NSW Health metric cup and spoon table).</summary>
    public static Unit MetricCup { get; } = new("metric-cup", "metric cup", "metric cups", UnitKind.Volume) { Millilitres = 250 };

    /// <summary>Pint: 16 US ounces or 20 imperial ones, as the convention goes; 480 ml by the bar convention.</summary>
    public static Unit Pint { get; } = new("pint", "pint", "pints", UnitKind.Volume) { Ounces = 16, ImperialOunces = 20 };

    /// <summary>Quart, two pints.</summary>
    public static Unit Quart { get; } = new("quart", "quart", "quarts", UnitKind.Volume) { Ounces = 32, ImperialOunces = 40 };

    /// <summary>Gallon, eight pints.</summary>
    public static Unit Gallon { get; } = new("gallon", "gallon", "gallons", UnitKind.Volume) { Ounces = 128, ImperialOunces = 160 };

    /// <summary>Gill, a quarter of a pint.</summary>
    public static Unit Gill { get; } = new("gill", "gill", "gills", UnitKind.Volume) { Ounces = 4, ImperialOunces = 5 };

    /// <summary>Jigger of the old books, one and a half ounces (USDA SR26, NDB 14037, household measure; NIAAA standard drink sheet).</summary>
    public static Unit Jigger { get; } = new("jigger", "jigger", "jiggers", UnitKind.Volume) { Ounces = new(3, 2) };

    /// <summary>Pony of the old books, one ounce. Common practice, no source.</summary>
    public static Unit Pony { get; } = new("pony", "pony", "ponies", UnitKind.Volume) { Ounces = 1 };

    /// <summary>Nip, 30 ml (Australian Government, standard drinks guide, spirits).</summary>
    public static Unit Nip { get; } = new("nip", "nip", "nips", UnitKind.Volume) { Millilitres = 30 };

    /// <summary>Wineglass of the old books, two ounces; books differ. Common practice, no source.</summary>
    public static Unit Wineglass { get; } = new("wineglass", "wineglass", "wineglasses", UnitKind.Volume) { Ounces = 2 };

    /// <summary>Shot; a house size.</summary>
    public static Unit Shot { get; } = new("shot", "shot", "shots", UnitKind.Bar) { HouseSize = sizes => sizes.Shot };

    /// <summary>Dash; a house size.</summary>
    public static Unit Dash { get; } = new("dash", "dash", "dashes", UnitKind.Bar) { HouseSize = sizes => sizes.Dash };

    /// <summary>Barspoon; a house size.</summary>
    public static Unit Barspoon { get; } = new("barspoon", "barspoon", "barspoons", UnitKind.Bar) { HouseSize = sizes => sizes.Barspoon };

    /// <summary>Splash; a house size.</summary>
    public static Unit Splash { get; } = new("splash", "splash", "splashes", UnitKind.Bar) { HouseSize = sizes => sizes.Splash };

    /// <summary>Drop; a house size.</summary>
    public static Unit Drop { get; } = new("drop", "drop", "drops", UnitKind.Bar) { HouseSize = sizes => sizes.Drop };

    /// <summary>The white of one egg; a house size.</summary>
    public static Unit EggWhite { get; } = new("egg-white", "egg white", "egg whites", UnitKind.Bar) { HouseSize = sizes => sizes.EggWhite };

    /// <summary>Part, a share of the whole.</summary>
    public static Unit Part { get; } = new("part", "part", "parts", UnitKind.Part);

    /// <summary>Measure of no stated size, a share of the whole.</summary>
    public static Unit OpenShare { get; } = new("measure", "measure", "measures", UnitKind.Part);

    /// <summary>Milligram.</summary>
    public static Unit Milligram { get; } = new("mg", "milligram", "milligrams", UnitKind.Mass) { Abbreviation = "mg", IsDecimal = true, Grams = new(1, 1000) };

    /// <summary>Gram.</summary>
    public static Unit Gram { get; } = new("g", "gram", "grams", UnitKind.Mass) { Abbreviation = "g", IsDecimal = true, Grams = 1 };

    /// <summary>Kilogram.</summary>
    public static Unit Kilogram { get; } = new("kg", "kilogram", "kilograms", UnitKind.Mass) { Abbreviation = "kg", IsDecimal = true, Grams = 1000 };

    /// <summary>Pound avoirdupois, 453.59237 g (international yard and pound agreement 1959; NIST Handbook 44, Appendix C).</summary>
    public static Unit Pound { get; } = new("lb", "pound", "pounds", UnitKind.Mass) { Abbreviation = "lb", Grams = new(45_359_237, 100_000) };

    /// <summary>Ounce of weight, a sixteenth of a pound: no volume, and never the fluid ounce.</summary>
    public static Unit WeightOunce { get; } = new("oz-weight", "ounce by weight", "ounces by weight", UnitKind.Mass) { Abbreviation = "oz by weight", Grams = new Rational(45_359_237, 100_000) / 16 };

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

    /// <summary>Chunk.</summary>
    public static Unit Chunk { get; } = new("chunk", "chunk", "chunks", UnitKind.Count);

    /// <summary>Strip of peel.</summary>
    public static Unit Strip { get; } = new("strip", "strip", "strips", UnitKind.Count);

    /// <summary>Coin, a round slice of root or peel.</summary>
    public static Unit Coin { get; } = new("coin", "coin", "coins", UnitKind.Count);

    /// <summary>Ring.</summary>
    public static Unit Ring { get; } = new("ring", "ring", "rings", UnitKind.Count);

    /// <summary>Ribbon.</summary>
    public static Unit Ribbon { get; } = new("ribbon", "ribbon", "ribbons", UnitKind.Count);

    /// <summary>Frond.</summary>
    public static Unit Frond { get; } = new("frond", "frond", "fronds", UnitKind.Count);

    /// <summary>Stalk.</summary>
    public static Unit Stalk { get; } = new("stalk", "stalk", "stalks", UnitKind.Count);

    /// <summary>Stick.</summary>
    public static Unit Stick { get; } = new("stick", "stick", "sticks", UnitKind.Count);

    /// <summary>Knob of root.</summary>
    public static Unit Knob { get; } = new("knob", "knob", "knobs", UnitKind.Count);

    /// <summary>Pod.</summary>
    public static Unit Pod { get; } = new("pod", "pod", "pods", UnitKind.Count);

    /// <summary>Scoop.</summary>
    public static Unit Scoop { get; } = new("scoop", "scoop", "scoops", UnitKind.Count);

    /// <summary>Spoonful, of no stated spoon.</summary>
    public static Unit Spoon { get; } = new("spoon", "spoon", "spoons", UnitKind.Count);

    /// <summary>Squeeze.</summary>
    public static Unit Squeeze { get; } = new("squeeze", "squeeze", "squeezes", UnitKind.Count);

    /// <summary>Crack of the mill.</summary>
    public static Unit Crack { get; } = new("crack", "crack", "cracks", UnitKind.Count);

    /// <summary>Spray of an atomiser.</summary>
    public static Unit Spray { get; } = new("spray", "spray", "sprays", UnitKind.Count);

    /// <summary>Handful.</summary>
    public static Unit Handful { get; } = new("handful", "handful", "handfuls", UnitKind.Count);

    /// <summary>Glug from the bottle.</summary>
    public static Unit Glug { get; } = new("glug", "glug", "glugs", UnitKind.Count);

    /// <summary>Finger's breadth in the glass.</summary>
    public static Unit Finger { get; } = new("finger", "finger", "fingers", UnitKind.Count);

    /// <summary>Bunch.</summary>
    public static Unit Bunch { get; } = new("bunch", "bunch", "bunches", UnitKind.Count);

    /// <summary>Can.</summary>
    public static Unit Can { get; } = new("can", "can", "cans", UnitKind.Count);

    /// <summary>Glass, of no stated size.</summary>
    public static Unit Glass { get; } = new("glass", "glass", "glasses", UnitKind.Count);

    /// <summary>Bottle.</summary>
    public static Unit Bottle { get; } = new("bottle", "bottle", "bottles", UnitKind.Count);

    /// <summary>Jar.</summary>
    public static Unit Jar { get; } = new("jar", "jar", "jars", UnitKind.Count);

    /// <summary>Carton.</summary>
    public static Unit Carton { get; } = new("carton", "carton", "cartons", UnitKind.Count);

    /// <summary>Bag.</summary>
    public static Unit Bag { get; } = new("bag", "bag", "bags", UnitKind.Count);
}
