using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Stock;

/// <summary>The files under demo-data/, read once as the app reads them.</summary>
internal static class DemoData
{
    /// <summary>The root of this repository.</summary>
    public static string Repository { get; } = Root();

    /// <summary>The folder demo-data of this repository.</summary>
    public static string Folder { get; } = Path.Combine(Repository, "demo-data");

    /// <summary>The glasses, jiggers and tools.</summary>
    public static BarKit Kit { get; } = Read<BarKit>("stock/kit.json");

    /// <summary>The ingredients.</summary>
    public static IngredientShelf Shelf { get; } = new(Read<IReadOnlyList<Ingredient>>("stock/ingredients.json"));

    /// <summary>The drinks.</summary>
    public static IReadOnlyList<Spec> Drinks { get; } = Read<IReadOnlyList<Spec>>("stock/drinks.json");

    /// <summary>The drink of that slug.</summary>
    public static Spec Drink(string slug) => Drinks.Single(drink => drink.Slug == Slug.Parse(slug));

    /// <summary>The ingredient of that slug.</summary>
    public static Ingredient Ingredient(string slug) => Shelf[Slug.Parse(slug)] ?? throw new InvalidOperationException($"There is no {slug}.");

    /// <summary>One file, read strictly.</summary>
    public static T Read<T>(string path) => JsonSerializer.Deserialize<T>(File.ReadAllText(Path.Combine(Folder, path)), DomainJson.Readable)!;

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Barshow.sln")))
            folder = folder.Parent ?? throw new DirectoryNotFoundException("No folder above the tests holds Barshow.sln.");
        return folder.FullName;
    }
}
