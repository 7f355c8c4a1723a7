using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Cautions;

namespace Barshow.Engine.Callouts;

/// <summary>What a film is checked against, taken from its episode: the amounts as they are to be published.</summary>
internal static class EpisodeSheet
{
    public static FilmSheet Of(Episode episode, IngredientShelf shelf, string? description) => new()
    {
        Convention = episode.Convention,
        Title = episode.Title,
        BottleMillilitres = episode.Bottle?.Millilitres,
        Featured = episode.Bottle?.Name,
        Description = description,
        Disclosure = episode.Sponsor.Disclosure.Length > 0 ? episode.Sponsor.Disclosure : null,
        DisclosureBySeconds = episode.Sponsor.DisclosureBySeconds,
        MustSay = episode.Sponsor.MustSay,
        Avoid = episode.Sponsor.Avoid,
        Gifts = episode.Gifts,
        Drinks = [.. episode.Lineup.Select(drink => Drink(drink.Spec, shelf))],
    };

    private static SheetDrink Drink(Spec spec, IngredientShelf shelf) => new(spec.Name, [.. spec.Lines.Select(line => Line(line, shelf))])
    {
        Aliases = spec.Aliases,
        Garnish = spec.Garnish?.Text ?? "",
        Cautions = Cautions(spec, shelf),
    };

    private static SheetLine Line(SpecLine line, IngredientShelf shelf)
    {
        var known = line.Ingredient.IsEmpty ? shelf.Named(line.Name) : shelf[line.Ingredient];
        return new(line.Name, line.ToPublish)
        {
            Aliases = known is null ? [] : [known.Name, .. known.Aliases, .. known.RegionalNames.Where(regional => regional.Warning is null).Select(regional => regional.Name)],
            Optional = line.Optional,
        };
    }

    // What it certainly contains; what only a label can tell is printed with the cautions.
    private static IReadOnlyList<SheetCaution> Cautions(Spec spec, IngredientShelf shelf)
    {
        var cautions = DrinkCautions.Of(spec, shelf);
        var needed = new List<SheetCaution>();
        if (cautions.Hazards.Contains(Hazard.RawEgg))
            needed.Add(new("raw egg", ["egg-", "yolk-"]));
        foreach (var entry in cautions.Allergens.Where(entry => entry.Presence is AllergenPresence.Contains && entry.Allergen is not Allergen.Eggs))
        {
            var name = CautionWords.NameOf(entry.Allergen, "");
            needed.Add(new(name, [.. NameFolding.Fold($"{name} {entry.From} {entry.Through}").Split(' ').Where(word => word.Length > 2 && word is not ("cereals" or "containing")).Select(word => word.TrimEnd('s') + "-")]));
        }

        return [.. needed.DistinctBy(caution => caution.Name)];
    }
}
