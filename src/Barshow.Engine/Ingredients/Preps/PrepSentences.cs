using System.Globalization;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Ingredients.Preps;

/// <summary>What the reckoning of house preps has to say.</summary>
internal static class PrepSentences
{
    public static Finding InItself(IReadOnlyList<Ingredient> path)
    {
        var prep = path[^1];
        var loop = path.SkipWhile(each => each.Slug != prep.Slug).Select(each => each.Name.ToLowerInvariant()).ToArray();
        return new(FindingCatalogue.PrepInItself, prep.Name,
            loop.Length > 1
                ? $"{prep.Name} is made from itself: {string.Join(", made from ", loop)}."
                : $"{prep.Name} is made from more than a dozen preps one inside the other.",
            "Take it out of its own inputs.")
        { Ingredient = prep.Name };
    }

    public static Finding InputUnknown(Ingredient prep, PrepInput input) => new(FindingCatalogue.IngredientUnknown, prep.Name,
        $"{prep.Name} is made with \"{input.Ingredient}\", which the house does not know; it counts as nothing in the batch.",
        "Add it to the ingredients, or name another.")
    { Ingredient = prep.Name };

    public static Finding YieldAboveInputs(Ingredient prep, double stated, double computed) => new(FindingCatalogue.PrepYieldTooLarge, prep.Name,
        string.Create(CultureInfo.InvariantCulture, $"{prep.Name} states a yield of {stated:0} ml, but its inputs fill {computed:0} ml at most."),
        "Measure a batch, or leave the yield out and let it be computed.")
    { Ingredient = prep.Name };
}
