using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Publishing.Cautions;

/// <summary>An allergen in one drink.</summary>
/// <param name="Drink">The drink's name.</param>
/// <param name="Allergen">The class.</param>
/// <param name="Presence">How sure one is.</param>
/// <param name="Through">The ingredient that brings it, by name.</param>
/// <param name="From">What it comes from, to be named beside the class: "almond"; null when the class says it.</param>
public sealed record DrinkAllergen(string Drink, Allergen Allergen, AllergenPresence Presence, string Through, string? From);

/// <summary>What can hurt in a lineup: allergens, hazards, and ingredients that nothing is known of.</summary>
/// <param name="Allergens">By drink in lineup order, at most one of each class and source in a drink; what it contains before what may be in it.</param>
/// <param name="Hazards">By hazard, with the names of the drinks.</param>
/// <param name="Unknown">Ingredients the house does not know, with the names of the drinks: check the label.</param>
public sealed record LineupCautions(
    IReadOnlyList<DrinkAllergen> Allergens,
    IReadOnlyList<(Hazard Hazard, IReadOnlyList<string> Drinks)> Hazards,
    IReadOnlyList<(string Ingredient, IReadOnlyList<string> Drinks)> Unknown)
{
    private const int DeepestPrep = 12;

    /// <summary>The union over every drink's lines, garnishes and rims, house preps taken apart into what they are made of.</summary>
    public static LineupCautions Of(Episode episode, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(shelf);
        var allergens = new List<DrinkAllergen>();
        var hazards = new SortedDictionary<Hazard, List<string>>();
        var unknown = new Dictionary<string, List<string>>();
        foreach (var drink in episode.Lineup)
        {
            var found = new List<DrinkAllergen>();
            foreach (var hazard in drink.Spec.Hazards)
                Name(hazards, hazard, drink.Name);
            foreach (var (slug, name) in Used(drink.Spec))
            {
                if (!shelf.TryGet(slug, out var ingredient))
                {
                    Name(unknown, name, drink.Name);
                    continue;
                }

                foreach (var part in WithInputs(ingredient, shelf, DeepestPrep))
                {
                    found.AddRange(part.Allergens.Select(entry => new DrinkAllergen(drink.Name, entry.Allergen, entry.Presence, ingredient.Name, entry.From)));
                    foreach (var hazard in part.Hazards)
                        Name(hazards, hazard, drink.Name);
                }
            }

            allergens.AddRange(found
                .OrderBy(entry => entry.Presence)
                .ThenBy(entry => entry.Allergen)
                .DistinctBy(entry => (entry.Allergen, entry.Presence is AllergenPresence.Contains ? entry.From : entry.Through)));
        }

        return new(
            allergens,
            [.. hazards.Select(hazard => (hazard.Key, (IReadOnlyList<string>)hazard.Value))],
            [.. unknown.Select(item => (item.Key, (IReadOnlyList<string>)item.Value))]);
    }

    private static IEnumerable<(Slug Slug, string Name)> Used(Spec spec) =>
        spec.Lines.Select(line => (line.Ingredient, line.Name))
            .Concat(spec.Garnish is { Ingredient.IsEmpty: false } garnish ? [(garnish.Ingredient, garnish.Text)] : []);

    private static IEnumerable<Ingredient> WithInputs(Ingredient ingredient, IngredientShelf shelf, int deepest)
    {
        yield return ingredient;
        if (deepest == 0 || ingredient.Prep is not { } prep)
            yield break;
        foreach (var input in prep.Inputs)
            if (shelf.TryGet(input.Ingredient, out var inner))
                foreach (var part in WithInputs(inner, shelf, deepest - 1))
                    yield return part;
    }

    private static void Name<T>(IDictionary<T, List<string>> names, T key, string drink)
        where T : notnull
    {
        if (!names.TryGetValue(key, out var drinks))
            names[key] = drinks = [];
        if (!drinks.Contains(drink))
            drinks.Add(drink);
    }
}
