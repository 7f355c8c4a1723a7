using Barshow.Data.Rows;
using Barshow.Engine.Ingredients;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Archive.Import;

/// <summary>Takes an archive into the house: says beforehand what it will do, and then does all of it or nothing.</summary>
public sealed class HouseImport(IDbContextFactory<BarshowDb> contexts, TimeProvider clock)
{
    /// <summary>What importing the archive would add, change and leave. Nothing is written.</summary>
    public async Task<ImportPlan> PlanAsync(HouseArchive archive, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(archive);
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var held = await db.HoldStateAsync(cancel);
        return await StageAsync(db, archive, "", cancel);
    }

    /// <summary>Imports the archive in one transaction.</summary>
    /// <param name="archive">What was read.</param>
    /// <param name="agreed">The plan that the user agreed to; when it no longer holds, nothing is done. Null to take what comes.</param>
    /// <param name="savedBy">Who imports; empty when nobody signs.</param>
    /// <param name="cancel">Stops before anything is written, never half-way.</param>
    public async Task<ImportResult> ApplyAsync(HouseArchive archive, ImportPlan? agreed, string savedBy = "", CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(archive);
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        var plan = await StageAsync(db, archive, savedBy, cancel);
        if (plan.Objection is not null || (agreed is not null && !plan.DoesTheSameAs(agreed)))
            return new(plan, Done: false);
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(CancellationToken.None);
        return new(plan, Done: true);
    }

    /// <summary>Imports the archive in one transaction, if nothing has ever been saved here.</summary>
    /// <returns>Whether it was imported.</returns>
    /// <exception cref="InvalidDataException">The archive cannot be imported.</exception>
    public async Task<bool> ApplyToEmptyAsync(HouseArchive archive, string savedBy = "", CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(archive);
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var transaction = await db.Database.BeginTransactionAsync(cancel);
        if (await db.Changes.AnyAsync(cancel))
            return false;
        var plan = await StageAsync(db, archive, savedBy, cancel);
        if (plan.Objection is { } objection)
            throw new InvalidDataException(objection);
        await db.SaveChangesAsync(cancel);
        await transaction.CommitAsync(CancellationToken.None);
        return true;
    }

    // Every step is laid before the context; what is not saved afterwards was a plan only.
    private async Task<ImportPlan> StageAsync(BarshowDb db, HouseArchive archive, string savedBy, CancellationToken cancel)
    {
        var staging = new ImportStaging(db, archive, clock.GetUtcNow(), savedBy);
        await staging.StageAsync<HouseRow, Engine.Episodes.House>(ArchiveFormat.House, archive.House, cancel);
        await staging.StageAsync<KitRow, Engine.Specs.BarKit>(ArchiveFormat.Kit, archive.Kit, cancel);
        await staging.StageAsync<IngredientRow, Ingredient>(ArchiveFormat.Ingredients, archive.Ingredients, cancel);
        await staging.StageAsync<DrinkRow, Engine.Specs.Spec>(ArchiveFormat.Drinks, archive.Drinks, cancel);
        await staging.StageAsync<EpisodeRow, Engine.Episodes.Episode>(ArchiveFormat.Episodes, archive.Episodes, cancel);
        await staging.StageAsync<FeatureRow, Engine.Featured.Feature>(ArchiveFormat.Featured, archive.Featured, cancel);
        return staging.Plan with { Objection = Loop(db) };
    }

    // The staging has every ingredient before the context, as it is and as it is to be.
    private static string? Loop(BarshowDb db)
    {
        var preps = db.Ingredients.Local.Where(row => row.DeletedAt is null && row.Document.Prep is not null).OrderBy(row => row.Slug, StringComparer.Ordinal).Select(row => row.Document).ToList();
        var shelf = new IngredientShelf(preps);
        var loop = preps.Select(prep => PrepLoop.Of(prep, shelf)).FirstOrDefault(found => found.Count > 0);
        return loop is null ? null : $"Nothing can be imported: house preps would be made from one another in a circle ({string.Join(", which needs ", loop.Select(prep => prep.Name))}).";
    }
}
