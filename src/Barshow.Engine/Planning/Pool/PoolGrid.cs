using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Baskets;

namespace Barshow.Engine.Planning.Pool;

/// <summary>The lineup as a grid of drinks and ingredients, what is shared first.</summary>
/// <param name="Columns">The ingredients: those in most drinks first, then in basket order.</param>
/// <param name="Rows">The drinks in viewer order.</param>
public sealed record PoolGrid(IReadOnlyList<PoolColumn> Columns, IReadOnlyList<PoolRow> Rows)
{
    /// <summary>The grid of an episode, from its viewer's basket.</summary>
    public static PoolGrid Of(Episode episode, Basket viewerBasket)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(viewerBasket);
        PoolColumn[] columns =
        [
            .. viewerBasket.Items.Select(item => new PoolColumn(item, false)).Concat(viewerBasket.AtHome.Select(item => new PoolColumn(item, true)))
                .OrderByDescending(column => column.Drinks).ThenBy(column => column.AtHome),
        ];
        return new(columns, [.. episode.Lineup.Select(drink => Row(drink, columns))]);
    }

    private static PoolRow Row(LineupDrink drink, IReadOnlyList<PoolColumn> columns) => new(drink.Spec.Slug, drink.Name,
        [.. columns.Select(column => new PoolCell([.. column.Item.Parts.Where(part => part.Drink == drink.Spec.Slug).Select(part => part.Each)]))]);
}

/// <summary>An ingredient of the pool.</summary>
/// <param name="Item">What a viewer buys of it.</param>
/// <param name="AtHome">Whether a home is assumed to have it.</param>
public sealed record PoolColumn(BasketItem Item, bool AtHome)
{
    /// <summary>How many drinks use it.</summary>
    public int Drinks => Item.Drinks.Count;

    /// <summary>Whether it is bought for one drink only.</summary>
    public bool SingleUse => Drinks == 1 && !AtHome;

    /// <summary>What dropping it would save a viewer; null when it is not single-use or has no price.</summary>
    public decimal? Saves => SingleUse ? Item.Cost : null;
}

/// <summary>A drink of the grid.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Name">Its name.</param>
/// <param name="Cells">One for each column.</param>
public sealed record PoolRow(Slug Drink, string Name, IReadOnlyList<PoolCell> Cells)
{
    /// <summary>How many of its ingredients are bought for it alone.</summary>
    public int SingleUses(PoolGrid grid) => Cells.Index().Count(cell => !cell.Item.IsEmpty && grid.Columns[cell.Index].SingleUse);
}

/// <summary>What one drink takes of one ingredient.</summary>
/// <param name="Amounts">The amounts for one drink; empty when it takes none.</param>
public sealed record PoolCell(IReadOnlyList<Quantity> Amounts)
{
    /// <summary>Whether the drink takes none.</summary>
    public bool IsEmpty => Amounts.Count == 0;

    /// <summary>As the grid shows it: "22.5 ml + 1 wheel"; "•" where it is only wanted at hand.</summary>
    public override string ToString() => string.Join(" + ", Amounts.Select(amount => amount.Amount > 0 ? amount.ToString() : "•"));
}
