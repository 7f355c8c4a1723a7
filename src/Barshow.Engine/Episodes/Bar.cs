using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Episodes;

/// <summary>What every computation looks things up in: the house's settings, its ingredients and its kit.</summary>
/// <param name="House">The settings.</param>
/// <param name="Ingredients">The ingredients.</param>
/// <param name="Kit">Glasses, jiggers and tools.</param>
public sealed record Bar(House House, IngredientShelf Ingredients, BarKit Kit)
{
    /// <summary>The bar as an episode finds it: the featured bottle has the strength on its own label.</summary>
    public Bar For(Episode episode)
    {
        ArgumentNullException.ThrowIfNull(episode);
        return episode.Bottle is { Strength: { } strength } bottle && Ingredients[bottle.Ingredient] is { } poured && poured.Composition.Strength != strength
            ? this with { Ingredients = Ingredients.With(poured with { Composition = poured.Composition with { Strength = strength } }) }
            : this;
    }
}
