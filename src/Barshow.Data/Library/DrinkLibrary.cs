using System.Linq.Expressions;
using Barshow.Data.Rows;
using Barshow.Data.Stores;
using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Microsoft.EntityFrameworkCore;

namespace Barshow.Data.Library;

/// <summary>The drinks of the library kept in memory for lists, searches and planners, and read again only where they changed.</summary>
/// <remarks>One for the whole program. Safe to ask from several circuits at once.</remarks>
public sealed class DrinkLibrary(IDbContextFactory<BarshowDb> contexts, BarStore bars)
{
    // No two are equal, because slugs are not.
    private static readonly Comparer<LibraryDrink> ByName = Comparer<LibraryDrink>.Create((one, other) =>
        string.CompareOrdinal(one.Folded, other.Folded) is not 0 and var order ? order : one.Spec.Slug.CompareTo(other.Spec.Slug));

    private volatile Loaded? _last;

    /// <summary>All drinks, by name, as they are saved now.</summary>
    public async Task<IReadOnlyList<LibraryDrink>> LoadAsync(CancellationToken cancel = default) => (await LoadedAsync(cancel)).Drinks;

    /// <summary>The drinks that a query leaves, the best answer to its text first, else by name.</summary>
    public async Task<IReadOnlyList<FoundDrink>> FindAsync(DrinkQuery query, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(query);
        var loaded = await LoadedAsync(cancel);
        var typed = NameFolding.Fold(query.Text);
        return [.. loaded.Drinks
            .Select(drink => (Drink: drink, Rank: NameSearch.Rank(typed, drink.Folded)))
            .Where(each => each.Rank is not null && Fits(each.Drink, query, loaded))
            .OrderBy(each => each.Rank)
            .Select(each => new FoundDrink(each.Drink, loaded.LastFeatured(each.Drink.Spec.Slug)))];
    }

    // What is quick to tell is asked first, so that a drink that is out anyway is not analysed.
    private static bool Fits(LibraryDrink drink, DrinkQuery query, Loaded loaded) =>
        (query.Family.Length == 0 || string.Equals(drink.Spec.Family, query.Family, StringComparison.OrdinalIgnoreCase))
        && (query.Method is null || drink.Spec.Method?.Kind == query.Method)
        && (query.Glass.IsEmpty || drink.Spec.Serve.Glass == query.Glass || drink.Spec.Serve.GlassesInstead.Contains(query.Glass))
        && (query.Tag.Length == 0 || drink.Spec.Tags.Contains(query.Tag, StringComparer.OrdinalIgnoreCase))
        && (query.Ingredient.IsEmpty || drink.Spec.Lines.Any(line => line.Ingredient == query.Ingredient))
        && (query.NotFeaturedSince is null || loaded.LastFeatured(drink.Spec.Slug) is not { } last || last < query.NotFeaturedSince)
        && (query.Base.Length == 0 || (drink.Base is { } its && (its.Class == query.Base || its.Slug.Text == query.Base)))
        && (!query.OnHandOnly || drink.Missing.Count == 0)
        && (query.StrengthFrom is null || drink.StrengthPercent >= query.StrengthFrom)
        && (query.StrengthTo is null || drink.StrengthPercent <= query.StrengthTo);

    private async Task<Loaded> LoadedAsync(CancellationToken cancel)
    {
        var bar = await bars.LoadAsync(cancel);
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await using var held = await db.HoldStateAsync(cancel);
        var state = await DatabaseState.ReadAsync(db, cancel);
        var last = _last;
        if (last is not null && last.State == state && ReferenceEquals(last.Bar, bar))
            return last;

        var changes = last is null ? null : await ChangesSince.ReadAsync(db, last.State, cancel);
        var rows = changes?.In("Drinks");
        var drinks = rows is null
            ? (await ReadAsync(db, row => row.DeletedAt == null, bar, cancel)).Order(ByName).ToList()
            : Kept(last!, bar).Where(drink => !rows.Contains(drink.Spec.Slug.Text)).ToList();
        if (rows?.Count > 0)
            Insert(drinks, await ReadAsync(db, row => row.DeletedAt == null && rows.Contains(row.Slug), bar, cancel));
        var featured = changes is not null && !changes.Touches("Features") ? last!.Featured : await db.Features.Where(row => row.DeletedAt == null).GroupBy(row => row.Drink).Select(group => new { group.Key, Last = group.Max(row => row.Date) }).ToDictionaryAsync(each => each.Key, each => each.Last, cancel);
        return _last = new(state, bar, drinks, featured);
    }

    private static IEnumerable<LibraryDrink> Kept(Loaded last, Bar bar)
    {
        if (ReferenceEquals(last.Bar, bar))
            return last.Drinks;
        var change = BarChange.Between(last.Bar, bar);
        return last.Drinks.Select(drink => drink.Under(bar, change));
    }

    private static async Task<List<LibraryDrink>> ReadAsync(BarshowDb db, Expression<Func<DrinkRow, bool>> which, Bar bar, CancellationToken cancel) =>
        [.. (await db.Drinks.AsNoTracking().Where(which).ToListAsync(cancel)).Select(row => new LibraryDrink(new Stored<Spec>(row.Document, row.Version, row.SavedAt, row.SavedBy), row.Folded, bar))];

    private static void Insert(List<LibraryDrink> sorted, List<LibraryDrink> more)
    {
        foreach (var drink in more)
            sorted.Insert(~sorted.BinarySearch(drink, ByName), drink);
    }

    private sealed record Loaded(DatabaseState State, Bar Bar, IReadOnlyList<LibraryDrink> Drinks, Dictionary<string, DateOnly> Featured)
    {
        public DateOnly? LastFeatured(Slug drink) => Featured.TryGetValue(drink.Text, out var day) ? day : null;
    }
}

/// <summary>A drink that a query found.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="LastFeatured">When it was last featured; null when it never was.</param>
public sealed record FoundDrink(LibraryDrink Drink, DateOnly? LastFeatured);
