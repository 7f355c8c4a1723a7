namespace Barshow.Engine.Ingredients;

/// <summary>What an ingredient's kind settles about alcohol.</summary>
public static class IngredientKindAlcohol
{
    /// <summary>Whether everything of this kind holds alcohol unless its composition says otherwise.</summary>
    public static bool HoldsAlcohol(this IngredientKind kind) => kind is
        IngredientKind.Spirit or IngredientKind.Liqueur or IngredientKind.FortifiedWine or IngredientKind.Wine or IngredientKind.Beer or IngredientKind.Bitters;
}
