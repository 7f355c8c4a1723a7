using Barshow.Engine.Names;

namespace Barshow.Engine.Ingredients;

/// <summary>The ways in which one name of an ingredient may be meant.</summary>
internal static class IngredientNames
{
    // Words that say how a thing is, not what it is.
    private static readonly HashSet<string> Manner =
    [
        "fresh", "freshly", "pressed", "squeezed", "chilled", "cold", "cool", "good", "best", "quality", "homemade", "house", "raw", "ripe", "large",
        "medium", "small", "of", "the", "a", "an", "some", "plain", "organic", "unwaxed", "whole", "strained", "finely", "your", "favourite", "favorite", "extra", "more",
    ];

    /// <summary>Folded names to look for, most literal first.</summary>
    public static IEnumerable<string> Ways(string name)
    {
        var folded = NameFolding.Fold(name);
        yield return folded;
        var words = folded.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var plain = words.Where(word => !Manner.Contains(word)).ToArray();
        yield return string.Join(' ', plain);
        yield return string.Join(' ', plain.Select(Singular));
        if (plain.Length > 0)
            yield return string.Join(' ', plain.SkipLast(1).Append(Singular(plain[^1])));
    }

    private static string Singular(string word) => word switch
    {
        "leaves" => "leaf",
        "cherries" or "berries" or "strawberries" or "raspberries" or "blackberries" or "blueberries" => word[..^3] + "y",
        "bitters" or "molasses" or "grass" or "swiss" or "citrus" => word,
        _ when word.EndsWith("ches", StringComparison.Ordinal) || word.EndsWith("shes", StringComparison.Ordinal) || word.EndsWith("toes", StringComparison.Ordinal) => word[..^2],
        _ when word.Length > 3 && word.EndsWith('s') && !word.EndsWith("ss", StringComparison.Ordinal) => word[..^1],
        _ => word,
    };
}
