namespace Barshow.Engine.Ingredients;

/// <summary>What an ingredient is at the bar.</summary>
public enum IngredientKind
{
    /// <summary>A distilled spirit.</summary>
    Spirit,

    /// <summary>A sweetened spirit.</summary>
    Liqueur,

    /// <summary>Vermouth, sherry, port and their kin.</summary>
    FortifiedWine,

    /// <summary>Still or sparkling wine.</summary>
    Wine,

    /// <summary>Beer or cider.</summary>
    Beer,

    /// <summary>Bitters, used by the dash.</summary>
    Bitters,

    /// <summary>Juice pressed from fruit or vegetables.</summary>
    Juice,

    /// <summary>A sugar solution.</summary>
    Syrup,

    /// <summary>A carbonated or bottled lengthener: soda, tonic, ginger beer.</summary>
    Mixer,

    /// <summary>Whole fruit, bought by the piece.</summary>
    Fruit,

    /// <summary>Whole vegetable, bought by the piece.</summary>
    Vegetable,

    /// <summary>Fresh herb, bought by the bunch.</summary>
    Herb,

    /// <summary>Egg, whole or parted.</summary>
    Egg,

    /// <summary>Milk, cream and coconut cream.</summary>
    Dairy,

    /// <summary>Dry sugar.</summary>
    Sugar,

    /// <summary>Salt.</summary>
    Salt,

    /// <summary>Dry spice.</summary>
    Spice,

    /// <summary>Sauce or condiment.</summary>
    Sauce,

    /// <summary>Coffee or tea.</summary>
    Infusion,

    /// <summary>Water and ice.</summary>
    Water,

    /// <summary>Preserved garnish: cherries, olives, onions.</summary>
    Preserve,

    /// <summary>Anything else.</summary>
    Other,
}
