using Barshow.Data.Rows;
using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Use;

/// <summary>Finds where an ingredient is used, before it is deleted.</summary>
public sealed class IngredientUseFinder(IDbContextFactory<BarshowDb> contexts)
{
    /// <summary>Everything outside the bin in which the ingredient is used.</summary>
    public async Task<IngredientUse> FindAsync(Slug ingredient, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        // SQLite finds the documents that hold the slug anywhere; what it stands for there is looked at below.
        var drinks = await HoldingAsync<DrinkRow, Spec>(db, """SELECT * FROM "Drinks" WHERE "DeletedAt" IS NULL AND instr("Document", {0}) > 0""", ingredient, cancel);
        var ingredients = await HoldingAsync<IngredientRow, Ingredient>(db, """SELECT * FROM "Ingredients" WHERE "DeletedAt" IS NULL AND instr("Document", {0}) > 0""", ingredient, cancel);
        var episodes = await HoldingAsync<EpisodeRow, Episode>(db, """SELECT * FROM "Episodes" WHERE "DeletedAt" IS NULL AND instr("Document", {0}) > 0""", ingredient, cancel);
        return new(
            [.. drinks.Where(spec => Uses(spec, ingredient)).Select(spec => new UsedIn(spec.Slug, spec.Name))],
            [.. ingredients.Where(each => each.Prep?.Inputs.Any(input => input.Ingredient == ingredient) ?? false).Select(each => new UsedIn(each.Slug, each.Name))],
            [.. episodes.Where(episode => Uses(episode, ingredient)).Select(episode => new UsedIn(episode.Slug, episode.Title))],
            [.. ingredients.Where(each => Names(each, ingredient)).Select(each => new UsedIn(each.Slug, each.Name))]);
    }

    private static async Task<List<T>> HoldingAsync<TRow, T>(BarshowDb db, string holding, Slug ingredient, CancellationToken cancel)
        where TRow : Row<T>
        where T : class
    {
        var quoted = $"\"{ingredient}\"";
        return await db.Set<TRow>().FromSqlRaw(holding, quoted).AsNoTracking().OrderBy(row => row.Name).ThenBy(row => row.Slug).Select(row => row.Document).ToListAsync(cancel);
    }

    private static bool Uses(Episode episode, Slug ingredient) =>
        episode.Bottle?.Ingredient == ingredient || episode.Lineup.Any(drink => Uses(drink.Spec, ingredient));

    private static bool Uses(Spec spec, Slug ingredient) =>
        spec.Lines.Any(line => line.Ingredient == ingredient) || spec.BaseSwaps.Contains(ingredient) || (spec.Garnish is { } garnish && Uses(garnish, ingredient));

    private static bool Uses(Garnish garnish, Slug ingredient) => garnish.Ingredient == ingredient || garnish.Instead.Any(other => Uses(other, ingredient));

    private static bool Names(Ingredient one, Slug ingredient) =>
        one.Slug != ingredient && (one.StandIns.Any(standIn => standIn.Ingredient == ingredient) || one.Produce?.Juice == ingredient);
}
