using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Cautions;

/// <summary>An allergen in one drink.</summary>
/// <param name="Drink">The drink's name.</param>
/// <param name="Allergen">The class.</param>
/// <param name="Presence">How sure one is.</param>
/// <param name="Through">The ingredient that brings it, by name.</param>
/// <param name="From">What it comes from, to be named beside the class: "almond"; null when the class says it.</param>
public sealed record DrinkAllergen(string Drink, Allergen Allergen, AllergenPresence Presence, string Through, string? From);

/// <summary>What can hurt in one drink. Nothing is ever said to be free from an allergen, and nothing here says that anyone may drink or drive.</summary>
/// <param name="Allergens">At most one of each class and source; what it contains before what may be in it.</param>
/// <param name="Hazards">Each once, in the order of <see cref="Hazard"/>.</param>
/// <param name="Unknown">Ingredients the house does not know, by name: check the label.</param>
public sealed record DrinkCautions(IReadOnlyList<DrinkAllergen> Allergens, IReadOnlyList<Hazard> Hazards, IReadOnlyList<string> Unknown)
{
    private const int DeepestPrep = 12;

    // A spirit of 50 % and more lights without warming (insurer's guidance on flamed drinks).
    private const double LightsFromPercent = 50;

    /// <summary>The union over a drink's lines, rim and garnishes, those that will do instead among them, house preps taken apart into what they are made of.</summary>
    public static DrinkCautions Of(Spec spec, IngredientShelf shelf)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(shelf);
        var allergens = new List<DrinkAllergen>();
        var hazards = new SortedSet<Hazard>(spec.Hazards);
        var unknown = new List<string>();
        foreach (var (slug, name) in Used(spec))
        {
            if (!shelf.TryGet(slug, out var ingredient))
            {
                unknown.Add(name);
                continue;
            }

            foreach (var part in WithInputs(ingredient, shelf, DeepestPrep))
            {
                allergens.AddRange(part.Allergens.Select(entry => new DrinkAllergen(spec.Name, entry.Allergen, entry.Presence, ingredient.Name, entry.From)));
                hazards.UnionWith(part.Hazards);
                if (part.Composition.Strength is { Percent: >= LightsFromPercent })
                    hazards.Add(Hazard.OverproofSpirit);
            }
        }

        return new(
            [.. allergens.OrderBy(entry => entry.Presence).ThenBy(entry => entry.Allergen).DistinctBy(Source)],
            [.. hazards],
            [.. unknown.Distinct(StringComparer.OrdinalIgnoreCase)]);
    }

    /// <summary>Every caution as a sentence: allergens, labels to read, hazards, and last to follow local rules.</summary>
    /// <param name="region">Where the audience is, as a region code; it settles spellings.</param>
    public IReadOnlyList<string> Sentences(string region)
    {
        var sentences = new List<string>();
        var contains = Named(AllergenPresence.Contains, region);
        if (contains.Count > 0)
            sentences.Add($"Contains {string.Join(", ", contains)}.");
        var labels = Named(AllergenPresence.CheckLabel, region);
        if (labels.Count > 0)
            sentences.Add($"Check the label for {string.Join(", ", labels)}.");
        if (Unknown.Count > 0)
            sentences.Add($"Check the label of {string.Join(", ", Unknown)}: the house does not know what is in it.");
        sentences.AddRange(Hazards.Select(hazard => $"{CautionWords.NameOf(hazard)}: {LowerFirst(CautionWords.Of(hazard))}"));
        sentences.Add(CautionWords.Closing);
        return sentences;
    }

    // A class that is certainly in the drink needs no second entry for a label that may name it too.
    private static (Allergen, string?) Source(DrinkAllergen entry) => (entry.Allergen, entry.Presence is AllergenPresence.Contains ? entry.From : entry.Through);

    private List<string> Named(AllergenPresence presence, string region) =>
        [.. Allergens.Where(entry => entry.Presence == presence)
            .Select(entry => presence is AllergenPresence.Contains
                ? entry.From is { } from ? $"{CautionWords.NameOf(entry.Allergen, region)} ({from})" : CautionWords.NameOf(entry.Allergen, region)
                : $"{CautionWords.NameOf(entry.Allergen, region)} ({entry.Through.ToLowerInvariant()})")
            .Distinct()];

    private static string LowerFirst(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    private static IEnumerable<(Slug Slug, string Name)> Used(Spec spec) =>
        spec.Lines.Select(line => (line.Ingredient, line.Name)).Concat(Used(spec.Garnish));

    private static IEnumerable<(Slug Slug, string Name)> Used(Garnish? garnish)
    {
        if (garnish is null)
            yield break;
        if (!garnish.Ingredient.IsEmpty)
            yield return (garnish.Ingredient, garnish.Text);
        foreach (var other in garnish.Beside.Concat(garnish.Instead).SelectMany(Used))
            yield return other;
    }

    private static IEnumerable<Ingredient> WithInputs(Ingredient ingredient, IngredientShelf shelf, int deepest)
    {
        yield return ingredient;
        if (deepest == 0 || ingredient.Prep is not { } prep)
            yield break;
        foreach (var input in prep.Inputs)
        {
            if (!shelf.TryGet(input.Ingredient, out var inner) || inner.Slug == ingredient.Slug)
                continue;
            foreach (var part in WithInputs(inner, shelf, deepest - 1))
                yield return part;
        }
    }
}
