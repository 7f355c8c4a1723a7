using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>What every computation looks things up in, read again only where it changed.</summary>
/// <remarks>One for the whole program. Safe to ask from several circuits at once.</remarks>
public sealed class BarStore(IDbContextFactory<BarshowDb> contexts)
{
    private volatile Loaded? _last;

    /// <summary>The house's settings, its ingredients and its kit as they are saved now.</summary>
    public async Task<Bar> LoadAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var held = await db.HoldStateAsync(cancel);
        var state = await DatabaseState.ReadAsync(db, cancel);
        if (_last is { } kept && (kept.State == state || await IsUntouchedAsync(db, kept.State, cancel)))
        {
            _last = kept with { State = state };
            return kept.Bar;
        }

        var house = await db.Houses.Where(row => row.DeletedAt == null).Select(row => new RowMark(row.Id, row.Version, row.SavedAt)).SingleOrDefaultAsync(cancel);
        var kit = await db.Kits.Where(row => row.DeletedAt == null).Select(row => new RowMark(row.Id, row.Version, row.SavedAt)).SingleOrDefaultAsync(cancel);
        var ingredients = await db.Ingredients.Where(row => row.DeletedAt == null).OrderBy(row => row.Slug).Select(row => new RowMark(row.Id, row.Version, row.SavedAt)).ToListAsync(cancel);

        var last = _last;
        if (last is not null && last.HouseMark == house && last.KitMark == kit && last.IngredientMarks.SequenceEqual(ingredients))
        {
            _last = last with { State = state };
            return last.Bar;
        }

        var houseNow = last is not null && last.HouseMark == house ? last.Bar.House : await db.Houses.Where(row => row.DeletedAt == null).Select(row => row.Document).SingleOrDefaultAsync(cancel) ?? new House();
        var kitNow = last is not null && last.KitMark == kit ? last.Bar.Kit : await db.Kits.Where(row => row.DeletedAt == null).Select(row => row.Document).SingleOrDefaultAsync(cancel) ?? new BarKit();
        var known = last?.Known ?? [];
        var changed = ingredients.Where(mark => !known.ContainsKey(mark)).Select(mark => mark.Id).ToList();
        var read = await db.Ingredients.Where(row => changed.Contains(row.Id)).Select(row => new { row.Id, row.Document }).ToDictionaryAsync(row => row.Id, row => row.Document, cancel);
        var now = ingredients.ToDictionary(mark => mark, mark => known.TryGetValue(mark, out var same) ? same : read[mark.Id]);
        var bar = new Bar(houseNow, new IngredientShelf(ingredients.Select(mark => now[mark])), kitNow);
        _last = new(state, bar, house, kit, ingredients, now);
        return bar;
    }

    private static async Task<bool> IsUntouchedAsync(BarshowDb db, DatabaseState since, CancellationToken cancel) =>
        await ChangesSince.ReadAsync(db, since, cancel) is { } changes && !changes.Touches("House") && !changes.Touches("Kit") && !changes.Touches("Ingredients");

    private sealed record Loaded(DatabaseState State, Bar Bar, RowMark HouseMark, RowMark KitMark, IReadOnlyList<RowMark> IngredientMarks, Dictionary<RowMark, Ingredient> Known);
}
