using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Engine.Publishing.Descriptions.Parts;

/// <summary>An ingredient of the lineup with the first amount it is used in.</summary>
/// <param name="Ingredient">The ingredient.</param>
/// <param name="First">The first amount a line asks for; null when none does.</param>
/// <param name="Drinks">How many drinks use it.</param>
internal sealed record UsedIngredient(Ingredient Ingredient, Measure? First, int Drinks)
{
    /// <summary>The known ingredients of a lineup's lines and garnishes, the most used first, then in lineup order.</summary>
    public static IReadOnlyList<UsedIngredient> Of(Episode episode, Bar bar)
    {
        var uses = episode.Lineup.SelectMany(drink =>
            drink.Spec.Lines.Select(line => (drink.Spec.Slug, line.Ingredient, Amount: line.ToPublish))
                .Concat(drink.Spec.Garnish is { Ingredient.IsEmpty: false } garnish ? [(drink.Spec.Slug, garnish.Ingredient, null)] : []));
        return [.. uses
            .Where(use => !use.Ingredient.IsEmpty)
            .GroupBy(use => use.Ingredient)
            .Where(group => bar.Ingredients.TryGet(group.Key, out _))
            .Select(group => new UsedIngredient(
                bar.Ingredients[group.Key]!,
                group.Select(use => use.Amount).FirstOrDefault(amount => amount is not null),
                group.Select(use => use.Slug).Distinct().Count()))
            .OrderByDescending(used => used.Drinks)];
    }

    /// <summary>The name as it stands in a sentence: "lime juice".</summary>
    public string InSentence => Casing.Inside(Ingredient.Name);

    /// <summary>The name of an ingredient by slug, as it stands in a sentence.</summary>
    public static string Named(Slug slug, Bar bar) => bar.Ingredients.TryGet(slug, out var known) ? Casing.Inside(known.Name) : slug.Text.Replace('-', ' ');
}
