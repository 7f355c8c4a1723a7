using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Episodes;

/// <summary>What every computation looks things up in: the house's settings, its ingredients and its kit.</summary>
/// <param name="House">The settings.</param>
/// <param name="Ingredients">The ingredients.</param>
/// <param name="Kit">Glasses, jiggers and tools.</param>
public sealed record Bar(House House, IngredientShelf Ingredients, BarKit Kit);
