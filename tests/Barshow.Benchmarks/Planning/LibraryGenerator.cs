using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Lineup;
using Barshow.Engine.Specs;

namespace Barshow.Benchmarks.Planning;

/// <summary>Makes libraries of drinks out of a seed: a few ingredients are in many drinks, most are in few.</summary>
internal sealed class LibraryGenerator
{
    private static readonly string[] Families = ["sour", "highball", "spirit-forward", "fizz", "flip", "julep", "smash", "punch", "spritz", "mule", "cooler", "tiki"];
    private static readonly string[] Tags = ["herbal", "bitter", "tropical", "smoky", "floral", "spicy", "nutty", "creamy", "dry", "sweet", "savoury", "fresh"];
    private static readonly MethodKind[] Methods = [MethodKind.Shaken, MethodKind.Shaken, MethodKind.Stirred, MethodKind.Built, MethodKind.Built, MethodKind.MuddledAndShaken, MethodKind.Swizzled, MethodKind.Blended, MethodKind.Thrown];
    private static readonly string[] GlassNames = ["coupe", "rocks", "highball", "flute", "mug", "julep-cup", "wine-glass", "tall-mug"];
    private readonly Random _chance;
    private readonly List<Ingredient> _ingredients = [];
    private readonly Dictionary<IngredientKind, List<Ingredient>> _kinds = [];

    private LibraryGenerator(int seed) => _chance = new(seed);

    /// <summary>A question with every kind of requirement on.</summary>
    public static LineupQuestion Question(int seed, int drinks = 2000, int ingredients = 600, int count = 10)
    {
        var library = new LibraryGenerator(seed);
        library.Stock(ingredients);
        Spec[] catalogue = [.. Enumerable.Range(0, drinks).Select(library.Drink)];
        var bottle = library._kinds[IngredientKind.Spirit][0];
        var kit = new BarKit
        {
            Glasses = [.. GlassNames.Select((name, index) => new Glass { Slug = Slug.Parse(name), Name = name, BrimfulMillilitres = 250, Count = 2, Instead = [Slug.Parse(GlassNames[(index + 1) % GlassNames.Length])] })],
            Tools = [.. new[] { "shaking-tins", "mixing-glass", "muddler", "swizzle-stick" }.Select(name => new Tool(Slug.Parse(name), name))],
        };
        var last = catalogue.Where((_, index) => index % 7 == 3).ToDictionary(spec => spec.Slug, _ => new DateOnly(2026, 11, 1).AddDays(-library._chance.Next(30, 1800)));
        var usable = catalogue.Where(spec => !last.ContainsKey(spec.Slug) && spec.Method!.Kind is not MethodKind.Blended && spec.Lines.Any(line => line.Ingredient == bottle.Slug)).ToList();
        return new()
        {
            Bar = new(new House { Currency = "USD" }, new IngredientShelf(library._ingredients), kit),
            Catalogue = catalogue,
            Count = count,
            Bottle = new() { Name = bottle.Name, Ingredient = bottle.Slug, Millilitres = 700 },
            BaseSwaps = true,
            ShootBottles = 2,
            Takes = 2,
            MustHave = [usable[usable.Count / 3].Slug],
            LeaveOut = [usable[usable.Count / 2].Slug, usable[usable.Count / 4].Slug],
            Without = [library._kinds[IngredientKind.Liqueur][3].Slug],
            LastFeatured = last,
            Date = new DateOnly(2026, 11, 24),
            FreshMonths = 12,
            MostOfAFamily = 3,
            Floors = [new(FloorOn.Method, "stirred", 2), new(FloorOn.Method, "built", 2), new(FloorOn.Glass, "highball", 2), new(FloorOn.Tag, "herbal", 2), new(FloorOn.Tag, "bitter", 2), new(FloorOn.Family, "fizz", 1)],
            GlassStock = true,
            ToolStock = true,
            MostMoney = 400,
            MostThings = 24,
        };
    }

    private void Stock(int count)
    {
        (IngredientKind Kind, double Share, decimal Low, decimal High, string Pack)[] kinds =
        [
            (IngredientKind.Spirit, 0.10, 18, 45, "700 ml"), (IngredientKind.Liqueur, 0.20, 12, 35, "500 ml"), (IngredientKind.FortifiedWine, 0.06, 8, 20, "750 ml"),
            (IngredientKind.Bitters, 0.06, 7, 15, "100 ml"), (IngredientKind.Syrup, 0.20, 4, 12, "250 ml"), (IngredientKind.Mixer, 0.12, 1, 4, "200 ml"),
            (IngredientKind.Herb, 0.06, 2, 4, "1 bunch"), (IngredientKind.Preserve, 0.06, 3, 9, "20"), (IngredientKind.Sauce, 0.05, 2, 8, "150 ml"), (IngredientKind.Spice, 0.06, 2, 6, "40 g"),
        ];
        foreach (var (kind, share, low, high, pack) in kinds)
        {
            for (var i = 0; i < (int)(share * count); i++)
            {
                var price = Math.Round(low + (high - low) * (decimal)_chance.NextDouble(), 1);
                Add(new() { Slug = Slug.Of($"{kind} {i:000}"), Name = $"{kind} {i}", Kind = kind, Composition = new() { Strength = Strength.FromPercent(kind is IngredientKind.Spirit ? 40 : 0) }, Packs = [new(pack, Measure.Parse(pack), price)] });
            }
        }

        // The featured bottle's price is no part of the choice; sugar syrup is made of staples.
        var sugar = Add(new() { Slug = Slug.Of("white sugar"), Name = "White sugar", Kind = IngredientKind.Sugar, Staple = true });
        var water = Add(new() { Slug = Slug.Of("water"), Name = "Water", Kind = IngredientKind.Water, Staple = true });
        var syrups = _kinds[IngredientKind.Syrup];
        for (var i = 0; i < syrups.Count / 3; i++)
        {
            var extra = _kinds[i % 2 == 0 ? IngredientKind.Herb : IngredientKind.Spice];
            var made = syrups[i * 3] with
            {
                Packs = [],
                Prep = new()
                {
                    Inputs = i == 0
                        ? [new(sugar.Slug, Measure.Parse("200 g")), new(water.Slug, Measure.Parse("200 ml"))]
                        : [new(sugar.Slug, Measure.Parse("200 g")), new(water.Slug, Measure.Parse("200 ml")), new(extra[i % extra.Count].Slug, Measure.Parse(i % 2 == 0 ? "20 leaf" : "10 g"))],
                    Yield = Measure.Parse("320 ml"),
                    HandsOn = TimeSpan.FromMinutes(5 + i % 20),
                },
            };
            _ingredients[_ingredients.FindIndex(known => known.Slug == made.Slug)] = made;
            syrups[i * 3] = made;
        }

        foreach (var (name, juice, price) in new[] { ("lime", 27.0, 0.9m), ("lemon", 42.0, 0.9m), ("orange", 80.0, 1.1m), ("grapefruit", 170.0, 1.8m), ("yuzu", 15.0, 3m), ("pomelo", 200.0, 4m) })
        {
            Add(new() { Slug = Slug.Of($"{name} juice"), Name = $"{name} juice", Kind = IngredientKind.Juice });
            Add(new()
            {
                Slug = Slug.Of(name),
                Name = name,
                Kind = IngredientKind.Fruit,
                Packs = [new("one", Measure.Parse("1"), price)],
                Produce = new() { Juice = Slug.Of($"{name} juice"), JuiceMillilitres = juice, Cuts = [new(Unit.Wedge, 8), new(Unit.Wheel, 7), new(Unit.Twist, 6, SparesJuice: true)] },
            });
        }
    }

    private Ingredient Add(Ingredient ingredient)
    {
        _ingredients.Add(ingredient);
        if (!_kinds.TryGetValue(ingredient.Kind, out var list))
            _kinds[ingredient.Kind] = list = [];
        list.Add(ingredient);
        return ingredient;
    }

    private Spec Drink(int number)
    {
        var lines = new List<SpecLine> { Line(IngredientKind.Spirit, "45 ml", "50 ml", "60 ml") };
        if (_chance.NextDouble() < 0.55)
            lines.Add(Line(IngredientKind.Liqueur, "10 ml", "15 ml", "20 ml", "30 ml"));
        if (_chance.NextDouble() < 0.25)
            lines.Add(Line(IngredientKind.FortifiedWine, "20 ml", "30 ml"));
        if (_chance.NextDouble() < 0.6)
            lines.Add(Line(IngredientKind.Juice, "15 ml", "20 ml", "22.5 ml".Replace("22.5", "45/2", StringComparison.Ordinal), "30 ml"));
        if (_chance.NextDouble() < 0.6)
            lines.Add(Line(IngredientKind.Syrup, "10 ml", "15 ml", "20 ml"));
        if (_chance.NextDouble() < 0.3)
            lines.Add(Line(IngredientKind.Bitters, "2 dash", "1 dash"));
        if (_chance.NextDouble() < 0.3)
            lines.Add(Line(IngredientKind.Mixer, "60 ml", "90 ml", "120 ml"));
        if (_chance.NextDouble() < 0.15)
            lines.Add(Line(IngredientKind.Herb, "6 leaf", "8 leaf"));
        if (_chance.NextDouble() < 0.08)
            lines.Add(Line(IngredientKind.Sauce, "5 ml", "2 ml"));
        var fruit = _kinds[IngredientKind.Fruit][Rank(6)];
        var bottle = _kinds[IngredientKind.Spirit][0].Slug;
        return new()
        {
            Slug = Slug.Of($"drink {number:0000}"),
            Name = $"Drink {number}",
            Family = Families[_chance.Next(Families.Length)],
            Tags = [.. Tags.OrderBy(_ => _chance.Next()).Take(_chance.Next(1, 4))],
            Method = new(Methods[_chance.Next(Methods.Length)]),
            Serve = new() { Glass = Slug.Parse(GlassNames[_chance.Next(GlassNames.Length)]) },
            Lines = [.. lines.DistinctBy(line => line.Ingredient)],
            Garnish = _chance.NextDouble() < 0.5 ? new($"{fruit.Name} {(_chance.Next(2) == 0 ? "wheel" : "twist")}") { Ingredient = fruit.Slug } : null,
            BaseSwaps = _chance.NextDouble() < 0.5 ? [bottle] : [],
        };
    }

    private SpecLine Line(IngredientKind kind, params string[] amounts)
    {
        var ingredient = _kinds[kind][Rank(_kinds[kind].Count)];
        return new() { Name = ingredient.Name, Ingredient = ingredient.Slug, Amounts = [new(AmountLayer.Library, Measure.Parse(amounts[_chance.Next(amounts.Length)]))] };
    }

    // A rank drawn so that the r-th is about 1/r as frequent as the first (Zipf).
    private int Rank(int count)
    {
        var sum = 0.0;
        for (var i = 1; i <= count; i++)
            sum += 1.0 / i;
        var point = _chance.NextDouble() * sum;
        for (var i = 1; i <= count; i++)
        {
            point -= 1.0 / i;
            if (point <= 0)
                return i - 1;
        }

        return count - 1;
    }
}
