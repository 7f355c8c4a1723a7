using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>How an ingredient is bought: its packs, all counted in one unit.</summary>
/// <param name="Kind">The unit; pieces are whole pieces.</param>
/// <param name="Packs">The packs with what they hold in that unit, above 0.</param>
internal sealed record Buying(QuantityKind Kind, IReadOnlyList<(Pack Pack, double Holds)> Packs)
{
    /// <summary>The unit in which every quantity, and at least one pack, can be counted; null when there is none.</summary>
    public static Buying? Of(Ingredient ingredient, IReadOnlyList<Quantity> quantities, IReadOnlyList<Pack> packs, BarSizes sizes)
    {
        var kinds = quantities.Select(quantity => quantity.Kind).Concat([QuantityKind.Millilitres, QuantityKind.Grams, QuantityKind.Pieces]).Distinct();
        foreach (var kind in kinds)
        {
            if (quantities.Any(quantity => Conversion.To(kind, quantity, ingredient) is null))
                continue;
            var held = packs
                .Select(pack => (Pack: pack, Holds: Conversion.QuantityOf(pack.Holds, sizes, Convention.Bar) is { } quantity ? Conversion.To(kind, quantity, ingredient) : null))
                .Where(pack => pack.Holds > 0)
                .Select(pack => (pack.Pack, pack.Holds!.Value))
                .ToList();
            if (held.Count > 0)
                return new(kind, held);
        }

        return null;
    }

    /// <summary>The packs an ingredient is bought in: those that hold something and cost nothing below nought; the featured bottle only in its own size.</summary>
    public static IReadOnlyList<Pack> PacksOf(Ingredient ingredient, FeaturedBottle? bottle)
    {
        if (bottle is not { Millilitres: > 0 and var size } || !double.IsFinite(size) || bottle.Ingredient != ingredient.Slug)
            return [.. ingredient.Packs.Where(IsSound)];
        return [ingredient.Packs.FirstOrDefault(pack => IsSound(pack) && pack.Holds.MillilitresNear(Convention.Bar) == size)
            ?? new Pack($"{PlanningFindings.Millilitres(size)} bottle", Measure.Of(Rational.FromDecimal((decimal)Math.Min(Math.Round(size, 3), 1e9)), Unit.Millilitre))];
    }

    /// <summary>Whether a pack holds something and has a price, if any, from nought to a million.</summary>
    public static bool IsSound(Pack pack) => pack.Holds.Middle is { Sign: > 0 } && pack.Price is not (< 0 or > 1_000_000);
}
