using System.Globalization;
using Barshow.Data.Archive;
using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Benchmarks.Library;

/// <summary>A library far larger than a bar has, the same each time: names with accents, whole specs with steps and sources, a long featured log.</summary>
internal sealed class LargeLibrary
{
    private static readonly string[] First = ["Tide", "Salt", "Harbour", "Ébène", "Søren", "Café", "Lantern", "Copper", "Meadow", "Piñon", "Velvet", "Winter", "Señor", "Orchard", "Granite", "Młyn", "Canary", "Ember", "Juniper", "Crème", "Marble", "Saffron", "Cinder", "Willow", "Jardín"];
    private static readonly string[] Second = ["Pool", "Lane", "Gate", "Rouge", "Market", "Blanc", "Street", "Kettle", "Lark", "Alto", "Curtain", "Quarter", "Piña", "Wall", "Bay", "Bridge", "Row", "Hour", "Côte", "Brûlée", "Step", "Thread", "Path", "Reach", "Norte"];
    private static readonly string[] Third = ["Sour", "Highball", "Fizz", "Cup", "Swizzle", "Cobbler", "Julep", "Smash", "Punch", "Flip"];
    private static readonly string[] Tags = ["herbal", "bitter", "tropical", "smoky", "floral", "spicy", "nutty", "creamy", "dry", "sweet"];
    private static readonly string[] Glasses = ["coupe", "rocks", "highball", "flute", "mug"];
    private static readonly (IngredientKind Kind, int Share, double Strength, string Word)[] Kinds =
    [
        (IngredientKind.Spirit, 150, 40, "spirit"), (IngredientKind.Liqueur, 200, 25, "liqueur"), (IngredientKind.FortifiedWine, 80, 17, "wine"), (IngredientKind.Bitters, 70, 44, "bitters"),
        (IngredientKind.Syrup, 200, 0, "syrup"), (IngredientKind.Juice, 100, 0, "juice"), (IngredientKind.Mixer, 100, 0, "soda"), (IngredientKind.Herb, 50, 0, "leaf"), (IngredientKind.Spice, 50, 0, "spice"),
    ];

    private readonly Random _chance = new(20261124);
    private readonly Dictionary<IngredientKind, List<Ingredient>> _kinds = [];

    /// <summary>The library as an archive.</summary>
    public static HouseArchive Make(int drinks, int ingredients, int features) => new LargeLibrary().Fill(drinks, ingredients, features);

    private HouseArchive Fill(int drinks, int ingredients, int features)
    {
        var stock = Kinds.SelectMany(kind => Enumerable.Range(0, kind.Share * ingredients / 1000).Select(number => Ingredient(kind, number))).ToList();
        foreach (var ingredient in stock)
            (_kinds.TryGetValue(ingredient.Kind, out var list) ? list : _kinds[ingredient.Kind] = []).Add(ingredient);
        var specs = Enumerable.Range(0, drinks).Select(Drink).ToList();
        return new()
        {
            Kit = new([new() { Glasses = [.. Glasses.Select(name => new Glass { Slug = Slug.Parse(name), Name = name, BrimfulMillilitres = 300, Count = 4 })] }], []),
            Ingredients = new(stock, []),
            Drinks = new(specs, []),
            Featured = new([.. Enumerable.Range(0, features).Select(number => Feature(specs, number))], []),
        };
    }

    private Ingredient Ingredient((IngredientKind Kind, int Share, double Strength, string Word) kind, int number)
    {
        var name = $"{Pick(First)} {Pick(Second)} {kind.Word} {number}";
        return new()
        {
            Slug = Slug.Of(name),
            Name = name,
            Kind = kind.Kind,
            Class = string.Create(CultureInfo.InvariantCulture, $"{kind.Word} {number % 12}"),
            Aliases = [$"{Pick(Second)} {kind.Word} no {number}"],
            Composition = new() { Strength = Strength.FromPercent(kind.Strength), SugarGramsPer100Millilitres = _chance.Next(0, 60), AcidGramsPer100Millilitres = _chance.Next(0, 6), DensityGramsPerMillilitre = 1.05, Source = "generated" },
            Packs = [new("500 ml bottle", Measure.Millilitres(500), _chance.Next(3, 40))],
            OnHand = _chance.Next(3) == 0 ? Measure.Millilitres(_chance.Next(1, 700)) : null,
        };
    }

    private Spec Drink(int number)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"{Pick(First)} {Pick(Second)} {Pick(Third)} {number}");
        var lines = new[] { Line(IngredientKind.Spirit, 45), Line(IngredientKind.Juice, 22), Line(IngredientKind.Syrup, 15), Line(Pick([IngredientKind.Liqueur, IngredientKind.FortifiedWine, IngredientKind.Mixer]), 30), Line(IngredientKind.Bitters, 1) };
        return new()
        {
            Slug = Slug.Of(name),
            Name = name,
            Aliases = [$"{Pick(Second)} {Pick(First)}"],
            Family = Pick(Third).ToLowerInvariant(),
            Tags = [.. Tags.OrderBy(_ => _chance.Next()).Take(2)],
            Lines = [.. lines.DistinctBy(line => line.Ingredient)],
            Method = new((MethodKind)_chance.Next(0, 9), Seconds: 12),
            Serve = new() { Glass = Slug.Parse(Pick(Glasses)), Ice = (IceKind)_chance.Next(0, 4) },
            Garnish = new("wheel of lime") { Instead = [new("spent shell")] },
            Steps = ["Measure everything into the tin.", "Fill it with ice and shake until the tin frosts.", "Strain over fresh ice and garnish at once."],
            Sources = ["generated for measuring"],
            Taste = "Sharp at first, then round, with a long dry end that asks for another sip.",
        };
    }

    private SpecLine Line(IngredientKind kind, int millilitres)
    {
        var ingredient = Pick(_kinds[kind]);
        return new() { Name = ingredient.Name, Ingredient = ingredient.Slug, Amounts = [new(AmountLayer.Source, Measure.Millilitres(millilitres)), new(AmountLayer.Library, Measure.Millilitres(millilitres + 1), "rounder")], Text = $"{millilitres} ml {ingredient.Name}" };
    }

    private Feature Feature(List<Spec> specs, int number) => new()
    {
        EpisodeTitle = string.Create(CultureInfo.InvariantCulture, $"Episode {number / 9}"),
        Date = new DateOnly(2015, 1, 1).AddDays(number / 9 * 7),
        Spec = specs[number * 7 % specs.Count],
    };

    private TThing Pick<TThing>(IReadOnlyList<TThing> things) => things[_chance.Next(things.Count)];
}
