using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Planning.Demand;

/// <summary>What one batch of a house prep gives.</summary>
internal static class PrepYield
{
    /// <summary>Millilitres of one batch: as stated, else the inputs' volumes with dissolved sugar; null when nothing in it has a volume.</summary>
    public static double? Millilitres(Ingredient ingredient, HousePrep prep, Bar bar, Convention convention)
    {
        if (prep.Yield is { } stated && AmountReader.Plain(stated, ingredient, convention, bar.House.BarSizes, null, bar.Ingredients).Amount is { Amount: > 0 } amount)
        {
            return amount.Kind is QuantityKind.Grams && ingredient.Composition.DensityGramsPerMillilitre is > 0 and var density
                ? amount.Amount / density
                : amount.Amount;
        }

        var sum = 0.0;
        foreach (var input in prep.Inputs)
        {
            var inner = bar.Ingredients[input.Ingredient];
            if (AmountReader.Plain(input.Amount, inner, convention, bar.House.BarSizes, input.Note, bar.Ingredients).Amount is not { } part)
                continue;
            sum += part.Kind switch
            {
                QuantityKind.Millilitres => part.Amount,
                QuantityKind.Grams when inner?.Kind is IngredientKind.Sugar or IngredientKind.Salt => part.Amount * Practice.DissolvedSugarMillilitresPerGram,
                QuantityKind.Grams when inner?.Kind is { } kind && Practice.IsLiquid(kind) => part.Amount / (inner.Composition.DensityGramsPerMillilitre ?? 1),
                _ => 0,
            };
        }

        return sum > 0 ? sum : null;
    }
}
