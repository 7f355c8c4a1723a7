using Barshow.Data.Rows;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>The ingredients, house preps among them.</summary>
public sealed class IngredientStore(IDbContextFactory<BarshowDb> contexts, TimeProvider clock) : SluggedStore<IngredientRow, Ingredient>(contexts, clock)
{
    /// <summary>The ingredients outside the bin, by name.</summary>
    public async Task<IReadOnlyList<IngredientSummary>> ListAsync(CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        var rows = await db.Ingredients
            .Where(row => row.DeletedAt == null)
            .OrderBy(row => row.Folded)
            .Select(row => new { row.Slug, row.Name, row.Folded, row.Kind, row.Class, row.StrengthPercent, row.IsPrep, row.Staple, row.OnHand, row.Version, row.SavedAt, row.SavedBy })
            .ToListAsync(cancel);
        return [.. rows.Select(row => new IngredientSummary(
            Slug.Parse(row.Slug), row.Name, row.Folded, row.Kind, row.Class, row.StrengthPercent, row.IsPrep, row.Staple, row.OnHand, row.Version, row.SavedAt, row.SavedBy))];
    }

    /// <summary>The ingredients that answer what was typed, the best answer first; all of them, by name, for nothing typed.</summary>
    public async Task<IReadOnlyList<IngredientSummary>> SearchAsync(string text, CancellationToken cancel = default)
    {
        var typed = NameFolding.Fold(text);
        return [.. (await ListAsync(cancel))
            .Select(each => (Ingredient: each, Rank: NameSearch.Rank(typed, each.Folded)))
            .Where(each => each.Rank is not null)
            .OrderBy(each => each.Rank)
            .Select(each => each.Ingredient)];
    }

    private protected override async Task<string?> ObjectionAsync(BarshowDb db, Ingredient value, CancellationToken cancel)
    {
        if (value.Prep is null)
            return null;
        var preps = await db.Ingredients.AsNoTracking().Where(row => row.DeletedAt == null && row.IsPrep && row.Slug != value.Slug.Text).Select(row => row.Document).ToListAsync(cancel);
        var loop = PrepLoop.Of(value, new(preps));
        return loop.Count == 0 ? null
            : $"{value.Name} cannot be made this way: {string.Join(", which needs ", loop.Select(prep => prep.Name))}. Take one of them out of the inputs.";
    }
}

/// <summary>An ingredient as lists show it.</summary>
/// <param name="Slug">The name it is kept under.</param>
/// <param name="Name">The name that is shown.</param>
/// <param name="Folded">Its name, other names and names elsewhere, folded, one a line.</param>
/// <param name="Kind">What it is at the bar.</param>
/// <param name="Class">The class that kinship is judged by; empty when it is its own.</param>
/// <param name="StrengthPercent">Strength in percent; null when it is not known.</param>
/// <param name="IsPrep">Whether it is made in the house.</param>
/// <param name="Staple">Whether a home is assumed to have it.</param>
/// <param name="OnHand">Whether some of it is in the house.</param>
/// <param name="Version">Counts its saves from 1.</param>
/// <param name="SavedAt">When it was saved.</param>
/// <param name="SavedBy">Who saved it.</param>
public sealed record IngredientSummary(
    Slug Slug, string Name, string Folded, IngredientKind Kind, string Class, double? StrengthPercent, bool IsPrep, bool Staple, bool OnHand, int Version, DateTimeOffset SavedAt, string SavedBy);
