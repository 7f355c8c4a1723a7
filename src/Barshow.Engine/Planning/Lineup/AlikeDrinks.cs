using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>Drinks that are the same under two names, as a swapped base can make them.</summary>
internal static class AlikeDrinks
{
    /// <summary>Pairs of places whose drinks are the same, the lower place first.</summary>
    public static IReadOnlyList<(int First, int Second)> Pairs(IReadOnlyList<Spec> specs, IngredientShelf shelf) =>
        [.. specs.Index().GroupBy(spec => KeyOf(spec.Item)).Where(group => group.Count() > 1).SelectMany(group => Pairs([.. group], shelf)).Order()];

    /// <summary>Whether two drinks are the same as the featured log sees it.</summary>
    public static bool Same(Spec one, Spec other, IngredientShelf shelf) =>
        KeyOf(one) == KeyOf(other)
        && FeaturedMatcher.Compare(one, new Feature { EpisodeTitle = "", Date = default, Spec = other }, shelf).Kinship is Kinship.SameDrink;

    private static IEnumerable<(int First, int Second)> Pairs(IReadOnlyList<(int Index, Spec Item)> group, IngredientShelf shelf)
    {
        for (var i = 0; i < group.Count; i++)
        {
            for (var j = i + 1; j < group.Count; j++)
            {
                if (Same(group[i].Item, group[j].Item, shelf))
                    yield return (group[i].Index, group[j].Index);
            }
        }
    }

    // Only drinks of the same ingredients and method can be one drink; the rest need not be compared.
    private static string KeyOf(Spec spec) =>
        $"{spec.Method?.Kind}: {string.Join('+', spec.Lines.Where(line => !line.Optional).Select(line => line.Ingredient.IsEmpty ? line.Name : line.Ingredient.Text).Distinct().Order(StringComparer.Ordinal))}";
}
