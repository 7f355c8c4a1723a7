using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Planning;

/// <summary>Figures used where a spec or an ingredient leaves one open. All are common practice, no source, unless a source is named.</summary>
public static class Practice
{
    /// <summary>Millilitres of a top or fill that states no amount, where the glass is not known: what an ordinary highball takes.</summary>
    public const double TopMillilitres = 90;

    /// <summary>Millilitres of a rinse; most of it is thrown out, but all of it is bought.</summary>
    public const double RinseMillilitres = 5;

    /// <summary>Millilitres of a float.</summary>
    public const double FloatMillilitres = 15;

    /// <summary>Millilitres of a squeeze: what one wedge of lemon gives (USDA SR 26, NDB 09152, 5.9 g a wedge, fully pressed).</summary>
    public const double SqueezeMillilitres = 5;

    /// <summary>Grams planned for a coffee bean, a clove or a star of anise.</summary>
    public const double SmallPieceGrams = 1;

    /// <summary>Grams in a pinch.</summary>
    public const double PinchGrams = 0.3;

    /// <summary>Grams in a cube of sugar.</summary>
    public const double SugarCubeGrams = 4;

    /// <summary>Millilitres of a drink whose spec is given in parts, before ice.</summary>
    public const double PartsMillilitres = 90;

    /// <summary>Millilitres of white or yolk in one egg; a large egg's white is 32.1 ml (USDA SR 26, NDB 01124).</summary>
    public const double EggMillilitres = 30;

    /// <summary>Kinds bought and drunk as liquids: their default measure is a volume.</summary>
    public static bool IsLiquid(IngredientKind kind) => kind is IngredientKind.Spirit or IngredientKind.Liqueur or IngredientKind.FortifiedWine
        or IngredientKind.Wine or IngredientKind.Beer or IngredientKind.Bitters or IngredientKind.Juice or IngredientKind.Syrup
        or IngredientKind.Mixer or IngredientKind.Dairy or IngredientKind.Sauce or IngredientKind.Infusion or IngredientKind.Water;

    /// <summary>How many of a cut one piece of fruit gives where the ingredient does not say.</summary>
    public static int CutsPerFruit(Unit? cut) => cut switch
    {
        null => 1,
        _ when cut == Unit.Wedge => 8,
        _ when cut == Unit.Wheel || cut == Unit.Slice || cut == Unit.Twist => 6,
        _ when cut == Unit.Sprig => 12,
        _ when cut == Unit.Leaf => 60,
        _ => 1,
    };
}
