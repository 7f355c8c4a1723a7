namespace Barshow.Engine.Measures.Reading;

/// <content>Unit words and open measures.</content>
internal static partial class Lexicon
{
    private static void AddUnits(Dictionary<string, Lexeme> words)
    {
        Strong(Unit.Millilitre, "ml mls mℓ ㎖ ㏄ mil mils mill mills milliliter milliliters millilitre millilitres cc ccs");
        Strong(Unit.Centilitre, "cl cls cℓ centiliter centiliters centilitre centilitres");
        Strong(Unit.Decilitre, "dl dls deciliter deciliters decilitre decilitres");
        Strong(Unit.Litre, "l ℓ ltr ltrs lt liter liters litre litres");
        Strong(Unit.Ounce, "oz ozs ounce ounces floz");
        Strong(Unit.Teaspoon, "tsp tsps teaspoon teaspoons teaspoonful teaspoonfuls teaspoonsful ts", UnitUse.Alone);
        Strong(Unit.Tablespoon, "tbsp tbsps tablespoon tablespoons tablespoonful tablespoonfuls tbs tbl tbls tblsp tblsps", UnitUse.Alone);
        Strong(Unit.Barspoon, "barspoon barspoons barspoonful barspoonfuls bsp bsps bspn bspns barsp bs", UnitUse.Alone);
        Strong(Unit.Cup, "cup cups cupful cupfuls");
        Strong(Unit.Pint, "pint pints");
        Strong(Unit.Quart, "quart quarts qt qts");
        Strong(Unit.Gallon, "gallon gallons gal gals");
        Strong(Unit.Gill, "gill gills");
        Strong(Unit.Milligram, "mg mgs milligram milligrams");
        Strong(Unit.Gram, "g gm gms gram grams gramme grammes");
        Strong(Unit.Kilogram, "kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes");
        Strong(Unit.Pound, "lb lbs pound pounds");
        Plain(Unit.Jigger, UnitUse.None, "jigger jiggers");
        Plain(Unit.Pony, UnitUse.None, "pony ponies");
        Plain(Unit.Wineglass, UnitUse.None, "wineglass wineglasses wineglassful wineglassfuls");
        Plain(Unit.Dessertspoon, UnitUse.Alone, "dessertspoon dessertspoons dessertspoonful dessertspoonfuls dsp dstspn dsrtspn");
        Plain(Unit.Nip, UnitUse.None, "nip nips");
        Plain(Unit.OpenShare, UnitUse.None, "measure measures");
        Plain(Unit.Glug, UnitUse.None, "glug glugs");
        Plain(Unit.Finger, UnitUse.None, "finger fingers");
        Plain(Unit.Shot, UnitUse.None, "shot shots");
        Plain(Unit.Dash, UnitUse.Alone, "dash dashes dsh ds");
        Plain(Unit.Drop, UnitUse.Alone, "drop drops gtt gtts drp drps droplet droplets");
        Plain(Unit.Part, UnitUse.None, "part parts");

        // Abbreviations that fit two units; the commoner is taken and both are named.
        Add(words, "pt pts", lexeme => lexeme with { Unit = Unit.Pint, OtherUnit = Unit.Part, UnitUse = UnitUse.Strong });
        Add(words, "t", lexeme => lexeme with { Unit = Unit.Teaspoon, OtherUnit = Unit.Tablespoon });
        Add(words, "c", lexeme => lexeme with { Unit = Unit.Cup, OtherUnit = Unit.Centilitre });
        Add(words, "gr", lexeme => lexeme with { Unit = Unit.Gram });
        Add(words, "d", lexeme => lexeme with { Unit = Unit.Dash, OtherUnit = Unit.Drop });

        Plain(Unit.Leaf, UnitUse.Closing, "leaf leaves leafs");
        Plain(Unit.Sprig, UnitUse.Closing, "sprig sprigs");
        Plain(Unit.Wedge, UnitUse.Closing, "wedge wedges");
        Plain(Unit.Wheel, UnitUse.Closing, "wheel wheels");
        Plain(Unit.Slice, UnitUse.Closing, "slice slices");
        Plain(Unit.Twist, UnitUse.Closing, "twist twists");
        Plain(Unit.Cube, UnitUse.Closing, "cube cubes");
        Plain(Unit.Piece, UnitUse.Closing | UnitUse.Container, "piece pieces pc pcs");
        Plain(Unit.Chunk, UnitUse.Closing, "chunk chunks");
        Plain(Unit.Strip, UnitUse.Closing, "strip strips swath swaths");
        Plain(Unit.Coin, UnitUse.Closing, "coin coins");
        Plain(Unit.Ring, UnitUse.Closing, "ring rings");
        Plain(Unit.Ribbon, UnitUse.Closing, "ribbon ribbons");
        Plain(Unit.Frond, UnitUse.Closing, "frond fronds");
        Plain(Unit.Pinch, UnitUse.Alone, "pinch pinches");
        Plain(Unit.Handful, UnitUse.Alone, "handful handfuls handsful");
        Plain(Unit.Stalk, UnitUse.Container, "stalk stalks stem stems");
        Plain(Unit.Stick, UnitUse.Container, "stick sticks");
        Plain(Unit.Knob, UnitUse.Container, "knob knobs thumb thumbs");
        Plain(Unit.Pod, UnitUse.Container, "pod pods");
        Plain(Unit.Scoop, UnitUse.None, "scoop scoops");
        Plain(Unit.Spoon, UnitUse.None, "spoon spoons spoonful spoonfuls");
        Plain(Unit.Spray, UnitUse.None, "spray sprays spritz spritzes");
        Plain(Unit.Bunch, UnitUse.None, "bunch bunches");
        Plain(Unit.Can, UnitUse.Container, "can cans tin tins");
        Plain(Unit.Glass, UnitUse.None, "glass glasses");
        Plain(Unit.Bottle, UnitUse.Container, "bottle bottles");
        Plain(Unit.Jar, UnitUse.Container, "jar jars");
        Plain(Unit.Carton, UnitUse.Container, "carton cartons");
        Plain(Unit.Bag, UnitUse.Container, "bag bags teabag teabags");

        Misspelt(Unit.Ounce, "onz ozz onze oza ox oxs os 0z");
        Misspelt(Unit.Millilitre, "mi nl rnl mlm mL1");
        Misspelt(Unit.Centilitre, "ci");
        Misspelt(Unit.Teaspoon, "tps tspn teasp");
        Misspelt(Unit.Tablespoon, "tpsb tbps tbspn tblspn tabelspoon tabelspoons");
        Misspelt(Unit.Barspoon, "bps");
        Misspelt(Unit.Dash, "dashs dahs dahses shake shakes");

        Open(OpenMeasure.Top, "top topped topping lengthen lengthened");
        Open(OpenMeasure.Fill, "fill filled");
        Open(OpenMeasure.Rinse, "rinse rinsed rinsing");
        Open(OpenMeasure.Float, "float floated floater");
        Open(OpenMeasure.Splash, "splash splashes", Unit.Splash);
        Open(OpenMeasure.Squeeze, "squeeze squeezes", Unit.Squeeze);
        Open(OpenMeasure.Crack, "crack cracks grind grinds", Unit.Crack);

        void Strong(Unit unit, string spellings, UnitUse use = UnitUse.None) =>
            Add(words, spellings, lexeme => lexeme with { Unit = unit, UnitUse = UnitUse.Strong | use });
        void Plain(Unit unit, UnitUse use, string spellings) =>
            Add(words, spellings, lexeme => lexeme with { Unit = unit, UnitUse = use });
        void Misspelt(Unit unit, string spellings) =>
            Add(words, spellings, lexeme => lexeme with { Unit = unit, UnitUse = UnitUse.Misspelt });
        void Open(OpenMeasure open, string spellings, Unit? unit = null) =>
            Add(words, spellings, lexeme => lexeme with { Open = open, Unit = unit });
    }
}
