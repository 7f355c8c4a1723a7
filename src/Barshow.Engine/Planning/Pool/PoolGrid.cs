using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Pool;

/// <summary>The lineup as a grid of drinks and ingredients, what is shared first. Ingredients stand as the specs name them: a syrup is a syrup, not its sugar and water.</summary>
/// <param name="Columns">The ingredients: those in most drinks first, then those bought before those at home, then in the order of the specs.</param>
/// <param name="Rows">The drinks in viewer order.</param>
public sealed record PoolGrid(IReadOnlyList<PoolColumn> Columns, IReadOnlyList<PoolRow> Rows)
{
    /// <summary>The grid of an episode.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="bar">What it is looked up in.</param>
    /// <param name="viewerBasket">The viewer's basket, for what dropping an ingredient saves.</param>
    public static PoolGrid Of(Episode episode, Bar bar, Basket viewerBasket)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        ArgumentNullException.ThrowIfNull(viewerBasket);
        var uses = episode.Lineup
            .SelectMany(drink => drink.Spec.Lines.Select(line => (Drink: drink, Line: line, Ingredient: bar.Ingredients[line.Ingredient])))
            .ToList();
        PoolColumn[] columns =
        [
            .. uses.GroupBy(use => KeyOf(use.Line))
                .Select(group => Column(group.Key, [.. group], episode, bar, viewerBasket))
                .OrderByDescending(column => column.Drinks).ThenBy(column => column.AtHome),
        ];
        return new(columns, [.. episode.Lineup.Select(drink => new PoolRow(drink.Spec.Slug, drink.Name,
            [.. columns.Select(column => new PoolCell([.. drink.Spec.Lines.Where(line => KeyOf(line) == column.Key).Select(line => line.Planned)]))]))]);
    }

    private static Slug KeyOf(SpecLine line) => line.Ingredient.IsEmpty ? Slug.Of(line.Name) : line.Ingredient;

    private static PoolColumn Column(Slug key, List<(LineupDrink Drink, SpecLine Line, Ingredient? Ingredient)> uses, Episode episode, Bar bar, Basket viewerBasket)
    {
        var ingredient = uses[0].Ingredient;
        var drinks = uses.Select(use => use.Drink.Spec.Slug).Distinct().ToList();
        var bought = drinks.Count == 1
            ? viewerBasket.Items.FirstOrDefault(item => item.Drinks is [var only] && only == drinks[0] && (item.Slug == key || item.Ingredient?.Produce?.Juice == key))
            : null;
        return new(key, ingredient?.Name ?? uses[0].Line.Name, drinks.Count, ingredient?.Staple == true, bought?.Cost, Shoot(uses, episode, bar.House));
    }

    // Spilt as everything else is; null where one unit does not hold for all lines.
    private static Quantity? Shoot(List<(LineupDrink Drink, SpecLine Line, Ingredient? Ingredient)> uses, Episode episode, House house)
    {
        Quantity? sum = null;
        foreach (var (drink, line, _) in uses)
        {
            if (line.Planned is not { } measure || Each(measure, episode.Convention, house.BarSizes) is not { } each)
                continue;
            var need = each.Times(Makings.Of(drink, episode, house, DemandFor.Shoot).Real * (each.Kind == QuantityKind.Pieces ? 1 : 1 + house.SpillShare));
            if (sum is { } before && !before.Like(need))
                return null;
            sum = need with { Amount = need.Amount + (sum?.Amount ?? 0) };
        }

        return sum;
    }

    private static Quantity? Each(Measure measure, Convention convention, BarSizes sizes) =>
        measure.Middle is not { } amount ? null
        : measure.Unit?.MillilitresUnder(convention, sizes) is { } millilitres ? Quantity.Millilitres(Quantity.Product(amount, millilitres))
        : measure.Unit?.Grams is { } grams ? Quantity.Grams(Quantity.Product(amount, grams))
        : Quantity.Pieces(amount.ToDouble(), measure.Unit);
}

/// <summary>An ingredient of the pool.</summary>
/// <param name="Key">The ingredient, or the slug of its name when the house does not know it.</param>
/// <param name="Name">Its name.</param>
/// <param name="Drinks">How many drinks use it.</param>
/// <param name="AtHome">Whether a home is assumed to have it.</param>
/// <param name="Saves">What dropping it would save a viewer; null when it is shared, is not bought as such, or has no price.</param>
/// <param name="Shoot">What the shoot takes of it with takes, tasted swap-outs, rehearsal and spill; null where its lines count in different units.</param>
public sealed record PoolColumn(Slug Key, string Name, int Drinks, bool AtHome, decimal? Saves, Quantity? Shoot)
{
    /// <summary>Whether it is there for one drink only.</summary>
    public bool SingleUse => Drinks == 1 && !AtHome;
}

/// <summary>A drink of the grid.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Name">Its name.</param>
/// <param name="Cells">One for each column.</param>
public sealed record PoolRow(Slug Drink, string Name, IReadOnlyList<PoolCell> Cells)
{
    /// <summary>How many of its ingredients are there for it alone.</summary>
    public int SingleUses(PoolGrid grid) => Cells.Index().Count(cell => !cell.Item.IsEmpty && grid.Columns[cell.Index].SingleUse);
}

/// <summary>What one drink takes of one ingredient.</summary>
/// <param name="Amounts">The amounts of its lines; one is null where a line has none.</param>
public sealed record PoolCell(IReadOnlyList<Measure?> Amounts)
{
    /// <summary>Whether the drink takes none.</summary>
    public bool IsEmpty => Amounts.Count == 0;
}
