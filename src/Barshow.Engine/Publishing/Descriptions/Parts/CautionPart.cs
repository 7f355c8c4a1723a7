using System.Globalization;
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
        var episode = results.Episode;
        var region = results.Bar.House.AudienceRegion;
        var cautions = LineupCautions.Of(episode, results.Bar.Ingredients);
        var lines = new List<string>();
        var contains = cautions.Allergens
            .Where(entry => entry.Presence is AllergenPresence.Contains)
            .GroupBy(entry => CautionWords.NameOf(entry.Allergen, entry.From, region))
            .Select(group => $"{group.Key} ({Drinks(group.Select(entry => entry.Drink), episode)})")
            .ToList();
        if (contains.Count > 0)
            lines.Add($"Contains: {string.Join("; ", contains)}.");
        // By ingredient, because that is the label to read.
        var check = cautions.Allergens
            .Where(entry => entry.Presence is AllergenPresence.CheckLabel)
            .GroupBy(entry => entry.Through)
            .Select(group => $"{Casing.Inside(group.Key)} for {string.Join(", ", group.Select(entry => CautionWords.NameOf(entry.Allergen, null, region)).Distinct())} ({Drinks(group.Select(entry => entry.Drink), episode)})")
            .Concat(cautions.Unknown.Select(item => $"{item.Ingredient}, allergens not known ({Drinks(item.Drinks, episode)})"))
            .ToList();
        if (check.Count > 0)
            lines.Add($"Check the label: {string.Join("; ", check)}.");
        lines.AddRange(cautions.Hazards.Select(hazard => $"{CautionWords.NameOf(hazard.Hazard)} ({Drinks(hazard.Drinks, episode)}): {CautionWords.Of(hazard.Hazard)}"));
        if (Strengths(results) is { Length: > 0 } strengths)
            lines.Add(strengths);
        lines.Add(CautionWords.Closing);
        return PartText.OfLines(DescriptionPart.Cautions, lines.Select(DescriptionText.Line));
    }

    /// <summary>The drinks by name, or in few words where it is all or nearly all of them: "all drinks", "all but Dry Dock".</summary>
    internal static string Drinks(IEnumerable<string> drinks, Episode episode)
    {
        var named = drinks.Distinct().ToList();
        var others = episode.Lineup.Select(drink => drink.Name).Distinct().Except(named).ToList();
        return named.Count < 3 ? string.Join(", ", named)
            : others.Count == 0 ? "all drinks"
            : others.Count <= 2 && others.Count < named.Count / 2 ? $"all but {string.Join(" and ", others)}"
            : string.Join(", ", named);
    }

    private static string Strengths(EpisodeResults results)
    {
        var region = results.Bar.House.DrinkRegion;
        var counted = results.Episode.Lineup
            .Where(drink => results.Analyses.TryGetValue(drink.Spec.Slug, out var analysis) && analysis.EthanolMillilitres > 0)
            .GroupBy(drink => AlcoholWords.Count(results.Analyses[drink.Spec.Slug], region))
            .OrderBy(group => double.Parse(group.Key, CultureInfo.InvariantCulture))
            .Select(group => $"{group.Key} ({Drinks(group.Select(drink => drink.Name), results.Episode)})")
            .ToList();
        return counted.Count == 0 ? "" : Casing.AtStart(AlcoholWords.UnitOf(region)) + ": " + string.Join(", ", counted) + ".";
    }
}
