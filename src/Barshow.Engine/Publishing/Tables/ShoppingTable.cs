using System.Globalization;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Publishing.Descriptions.Parts;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Tables;

/// <summary>The order for the shoot as CSV, a record for each thing bought or already in the house.</summary>
public static class ShoppingTable
{
    /// <summary>The table, its header first.</summary>
    public static string Write(Basket basket, EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(basket);
        ArgumentNullException.ThrowIfNull(results);
        var table = new CsvTable("ingredient", "buy", "packs", "need", "need_unit", "on_hand", "left", "cost", "currency", "drinks", "note");
        foreach (var item in basket.Items)
            Add(item, "");
        foreach (var item in basket.AtHome)
            Add(item, "in the house");
        return table.Write();

        void Add(BasketItem item, string note) => table.Add(
            item.Name,
            note.Length > 0 ? "" : ShoppingPart.ToBuy(item),
            item.Packs.Count > 0 ? item.Packs.Sum(pack => pack.Count) : null,
            Math.Round(item.Need.Amount, 1),
            UnitOf(item.Need),
            Math.Round(item.OnHand.Amount, 1),
            Math.Round(item.Left.Amount, 1),
            item.Cost,
            item.Cost is null ? "" : basket.Currency,
            string.Join(", ", item.Drinks.Select(results.NameOf)),
            string.Join(", ", new[] { note, item.Optional ? "optional" : "", item.Need.Amount <= 0 ? "a little, at hand" : "" }.Where(words => words.Length > 0)));
    }

    private static string UnitOf(Quantity quantity) => quantity.Kind switch
    {
        QuantityKind.Millilitres => "ml",
        QuantityKind.Grams => "g",
        _ => quantity.Cut?.Name.ToLower(CultureInfo.InvariantCulture) ?? "piece",
    };
}
