using Barshow.Data.Rows;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Stores;

/// <summary>The drinks of the library.</summary>
public sealed class DrinkStore(IDbContextFactory<BarshowDb> contexts, TimeProvider clock) : SluggedStore<DrinkRow, Spec>(contexts, clock)
{
    private volatile Listed? _last;

    /// <summary>The drinks outside the bin, by name; read again when one of them changed.</summary>
    public async Task<IReadOnlyList<DrinkSummary>> ListAsync(CancellationToken cancel = default)
    {
        await using var db = await OpenAsync(cancel);
        await using var held = await db.HoldStateAsync(cancel);
        var state = await DatabaseState.ReadAsync(db, cancel);
        if (_last is { } kept && (kept.State == state || (await ChangesSince.ReadAsync(db, kept.State, cancel))?.Touches("Drinks") == false))
        {
            _last = kept with { State = state };
            return kept.Drinks;
        }

        var rows = await db.Drinks
            .Where(row => row.DeletedAt == null)
            .OrderBy(row => row.Folded)
            .Select(row => new { row.Slug, row.Name, row.Folded, row.Family, row.Method, row.Glass, row.Parent, row.Version, row.SavedAt, row.SavedBy })
            .ToListAsync(cancel);
        IReadOnlyList<DrinkSummary> drinks = [.. rows.Select(row => new DrinkSummary(
            Slug.Parse(row.Slug), row.Name, row.Folded, row.Family, row.Method, SlugOrNone(row.Glass), SlugOrNone(row.Parent), row.Version, row.SavedAt, row.SavedBy))];
        _last = new(state, drinks);
        return drinks;
    }

    private sealed record Listed(DatabaseState State, IReadOnlyList<DrinkSummary> Drinks);

    private static Slug SlugOrNone(string text) => text.Length == 0 ? default : Slug.Parse(text);
}

/// <summary>A drink as lists show it.</summary>
/// <param name="Slug">The name it is kept under.</param>
/// <param name="Name">The name that is shown.</param>
/// <param name="Folded">Its name and other names, folded, one a line.</param>
/// <param name="Family">The family; empty when none is named.</param>
/// <param name="Method">The method; null when it was not said.</param>
/// <param name="Glass">The glass; empty when none is named.</param>
/// <param name="Parent">The drink it is a variation of; empty for none.</param>
/// <param name="Version">Counts its saves from 1.</param>
/// <param name="SavedAt">When it was saved.</param>
/// <param name="SavedBy">Who saved it.</param>
public sealed record DrinkSummary(
    Slug Slug, string Name, string Folded, string Family, MethodKind? Method, Slug Glass, Slug Parent, int Version, DateTimeOffset SavedAt, string SavedBy);
