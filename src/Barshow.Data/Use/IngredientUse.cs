using Barshow.Engine.Names;

namespace Barshow.Data.Use;

/// <summary>A thing in which an ingredient is used.</summary>
/// <param name="Slug">The name it is kept under.</param>
/// <param name="Name">The name that is shown.</param>
public sealed record UsedIn(Slug Slug, string Name);

/// <summary>Everything outside the bin in which an ingredient is used.</summary>
/// <param name="Drinks">Drinks of the library, as a line, a garnish or a base that will do instead.</param>
/// <param name="Preps">House preps that are made from it.</param>
/// <param name="Episodes">Episodes, as a line or a garnish of a drink or as their bottle.</param>
/// <param name="Ingredients">Ingredients that name it as a stand-in or as their juice.</param>
public sealed record IngredientUse(IReadOnlyList<UsedIn> Drinks, IReadOnlyList<UsedIn> Preps, IReadOnlyList<UsedIn> Episodes, IReadOnlyList<UsedIn> Ingredients)
{
    private const int Named = 3;

    /// <summary>Whether it is used anywhere.</summary>
    public bool Any => Drinks.Count + Preps.Count + Episodes.Count + Ingredients.Count > 0;

    /// <summary>Where it is used, a sentence: "Lime juice is used in 2 drinks (A, B) and 1 episode (C)."</summary>
    public string Sentence(string name)
    {
        var parts = new[] { Part(Drinks, "drink", "drinks"), Part(Preps, "house prep", "house preps"), Part(Episodes, "episode", "episodes"), Part(Ingredients, "other ingredient", "other ingredients") }
            .OfType<string>().ToList();
        return parts.Count switch
        {
            0 => $"{name} is used nowhere.",
            1 => $"{name} is used in {parts[0]}.",
            _ => $"{name} is used in {string.Join(", ", parts.SkipLast(1))} and {parts[^1]}.",
        };
    }

    private static string? Part(IReadOnlyList<UsedIn> things, string one, string many) => things.Count switch
    {
        0 => null,
        > Named => $"{things.Count} {many} ({string.Join(", ", things.Take(Named).Select(thing => thing.Name))} and {things.Count - Named} more)",
        _ => $"{things.Count} {(things.Count == 1 ? one : many)} ({string.Join(", ", things.Select(thing => thing.Name))})",
    };
}
