using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs.Cautions;

namespace Barshow.Engine.Publishing.Cautions;

/// <summary>What can hurt in a lineup: allergens, hazards, and ingredients that nothing is known of.</summary>
/// <param name="Allergens">By drink in lineup order, at most one of each class and source in a drink; what it contains before what may be in it.</param>
/// <param name="Hazards">By hazard, with the names of the drinks.</param>
/// <param name="Unknown">Ingredients the house does not know, with the names of the drinks: check the label.</param>
public sealed record LineupCautions(
    IReadOnlyList<DrinkAllergen> Allergens,
    IReadOnlyList<(Hazard Hazard, IReadOnlyList<string> Drinks)> Hazards,
    IReadOnlyList<(string Ingredient, IReadOnlyList<string> Drinks)> Unknown)
{
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
            var cautions = DrinkCautions.Of(drink.Spec, shelf);
            allergens.AddRange(cautions.Allergens);
            foreach (var hazard in cautions.Hazards)
                Name(hazards, hazard, drink.Name);
            foreach (var name in cautions.Unknown)
                Name(unknown, name, drink.Name);
        }

        return new(
            allergens,
            [.. hazards.Select(hazard => (hazard.Key, (IReadOnlyList<string>)hazard.Value))],
            [.. unknown.Select(item => (item.Key, (IReadOnlyList<string>)item.Value))]);
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
