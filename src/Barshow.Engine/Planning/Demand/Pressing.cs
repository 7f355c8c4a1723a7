using Barshow.Engine.Ingredients;

namespace Barshow.Engine.Planning.Demand;

/// <summary>Which fruit a juice is pressed from.</summary>
public static class Pressing
{
    /// <summary>The fruit on the shelf whose juice this is; null when there is none.</summary>
    public static Ingredient? FruitOf(Ingredient juice, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(juice);
        ArgumentNullException.ThrowIfNull(shelf);
        return shelf.All.FirstOrDefault(candidate => candidate.Produce is { JuiceMillilitres: > 0 } produce && produce.Juice == juice.Slug);
    }

    /// <summary>Whether a juice is pressed from fruit rather than bought: it is sold in no pack, and a fruit gives it.</summary>
    public static bool IsPressed(Ingredient juice, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(juice);
        return juice.Packs.Count == 0 && FruitOf(juice, shelf) is not null;
    }
}
