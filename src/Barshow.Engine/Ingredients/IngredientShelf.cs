using System.Diagnostics.CodeAnalysis;
using Barshow.Engine.Names;

namespace Barshow.Engine.Ingredients;

/// <summary>The ingredients a house knows, found by slug or by any name people use for them.</summary>
public sealed class IngredientShelf
{
    private readonly Dictionary<Slug, Ingredient> _bySlug = [];
    private readonly Dictionary<string, Ingredient> _byName = new(StringComparer.Ordinal);

    /// <summary>A shelf of these; where two share a name, the first keeps it.</summary>
    public IngredientShelf(IEnumerable<Ingredient> ingredients)
    {
        ArgumentNullException.ThrowIfNull(ingredients);
        All = [.. ingredients];
        foreach (var ingredient in All)
        {
            _bySlug.TryAdd(ingredient.Slug, ingredient);
            _byName.TryAdd(NameFolding.Fold(ingredient.Name), ingredient);
        }

        foreach (var ingredient in All)
            foreach (var alias in ingredient.Aliases.Concat(ingredient.RegionalNames.Where(regional => regional.Warning is null).Select(regional => regional.Name)))
                _byName.TryAdd(NameFolding.Fold(alias), ingredient);
    }

    /// <summary>All of them, in the order they were given.</summary>
    public IReadOnlyList<Ingredient> All { get; }

    /// <summary>The same shelf with one ingredient in the place of the one of its slug.</summary>
    public IngredientShelf With(Ingredient ingredient) => new(All.Select(each => each.Slug == ingredient.Slug ? ingredient : each));

    /// <summary>The ingredient of that slug.</summary>
    public Ingredient? this[Slug slug] => _bySlug.GetValueOrDefault(slug);

    /// <summary>The ingredient of that slug.</summary>
    public bool TryGet(Slug slug, [NotNullWhen(true)] out Ingredient? ingredient) => _bySlug.TryGetValue(slug, out ingredient);

    /// <summary>The ingredient a person means by a name: as it stands, in the singular, or without words that do not change what it is ("fresh", "chilled").</summary>
    public Ingredient? Named(string name) => IngredientNames.Ways(name).Select(way => _byName.GetValueOrDefault(way)).FirstOrDefault(found => found is not null);
}
