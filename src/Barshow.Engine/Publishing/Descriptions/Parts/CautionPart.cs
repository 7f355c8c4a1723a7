using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Publishing.Cautions;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Specs.Cautions;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>Allergens, hazards and strength; always last of what is said of the drinks and never shortened.</summary>
internal static class CautionPart
{
    public static PartText Write(EpisodeResults results)
    {
        var house = results.Bar.House;
        var cautions = LineupCautions.Of(results.Episode, results.Bar.Ingredients);
        var all = results.Episode.Lineup.Count;
        var lines = new List<string>();
        lines.AddRange(Allergens(cautions, AllergenPresence.Contains, house).Take(1).Select(line => "Contains: " + line));
        lines.AddRange(Allergens(cautions, AllergenPresence.CheckLabel, house).Take(1).Select(line => "Check the label for: " + line));
        if (cautions.Unknown.Count > 0)
            lines.Add($"Allergens not known, read the label: {string.Join("; ", cautions.Unknown.Select(item => $"{item.Ingredient} ({string.Join(", ", item.Drinks)})"))}.");
        lines.AddRange(cautions.Hazards.Select(hazard => $"{CautionWords.NameOf(hazard.Hazard)} ({(hazard.Drinks.Count == all && all > 2 ? "all drinks" : string.Join(", ", hazard.Drinks))}): {CautionWords.Of(hazard.Hazard)}"));
        if (Strengths(results) is { Length: > 0 } strengths)
            lines.Add(strengths);
        lines.Add(CautionWords.Closing);
        return PartText.OfLines(DescriptionPart.Cautions, lines.Select(DescriptionText.Line));
    }

    // One line: "egg (Late Ferry); almond, tree nuts (Dune, Kelp)."
    private static IEnumerable<string> Allergens(LineupCautions cautions, AllergenPresence presence, House house)
    {
        var classes = cautions.Allergens
            .Where(entry => entry.Presence == presence)
            .GroupBy(entry => (entry.Allergen, From: presence is AllergenPresence.Contains ? entry.From : null))
            .OrderBy(group => group.Key.Allergen)
            .Select(group => Named(group.Key.Allergen, group.Key.From, house)
                + $" ({(presence is AllergenPresence.CheckLabel ? string.Join(", ", group.Select(entry => Casing.Inside(entry.Through)).Distinct()) + ": " : "")}{string.Join(", ", group.Select(entry => entry.Drink).Distinct())})")
            .ToList();
        if (classes.Count > 0)
            yield return string.Join("; ", classes) + ".";
    }

    private static string Named(Allergen allergen, string? from, House house)
    {
        var name = CautionWords.NameOf(allergen, house.AudienceRegion);
        return string.IsNullOrWhiteSpace(from) || from == name ? name : $"{from}, of the {name}";
    }

    private static string Strengths(EpisodeResults results)
    {
        var region = results.Bar.House.DrinkRegion;
        var counted = results.Episode.Lineup
            .Where(drink => results.Analyses.TryGetValue(drink.Spec.Slug, out var analysis) && analysis.EthanolMillilitres > 0)
            .Select(drink => $"{drink.Name} {AlcoholWords.Count(results.Analyses[drink.Spec.Slug], region)}")
            .ToList();
        return counted.Count == 0 ? "" : Casing.AtStart(AlcoholWords.UnitOf(region)) + ": " + string.Join(", ", counted) + ".";
    }
}
