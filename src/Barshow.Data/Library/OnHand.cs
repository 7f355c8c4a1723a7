using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Library;

/// <summary>What of a drink the house already has.</summary>
internal static class OnHand
{
    /// <summary>The lines whose ingredient is neither on hand nor a staple, nor a prep or a juice of what is.</summary>
    public static IReadOnlyList<string> Missing(Spec spec, IngredientShelf shelf) =>
        [.. spec.Lines.Where(line => !line.Optional && !Has(line.Ingredient, shelf, [])).Select(line => line.Name).Distinct()];

    private static bool Has(Slug slug, IngredientShelf shelf, HashSet<Slug> asked)
    {
        if (!shelf.TryGet(slug, out var ingredient))
            return false;
        if (ingredient.Staple || ingredient.OnHand?.Middle is { } amount && amount > 0)
            return true;
        if (!asked.Add(slug))
            return false;
        if (ingredient.Prep is { } prep)
            return prep.Inputs.All(input => Has(input.Ingredient, shelf, asked));
        return ingredient.Kind == IngredientKind.Juice && shelf.All.Any(fruit => fruit.Produce?.Juice == slug && Has(fruit.Slug, shelf, asked));
    }
}
