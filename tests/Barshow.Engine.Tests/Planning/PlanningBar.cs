using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Planning;

/// <summary>A small bar with fair defaults; a test changes only what matters to it.</summary>
internal static class PlanningBar
{
    public static Slug S(string slug) => Slug.Parse(slug);

    public static Measure M(string measure) => Measure.Parse(measure);

    public static Ingredient WhiteRum { get; } = new()
    {
        Slug = S("white-rum"),
        Name = "White rum",
        Kind = IngredientKind.Spirit,
        Composition = new() { Strength = Strength.FromPercent(40) },
        Packs = [new("700 ml bottle", M("700 ml"), 21m)],
        Class = "rum",
    };

    public static Ingredient LimeJuice { get; } = new() { Slug = S("lime-juice"), Name = "Lime juice", Kind = IngredientKind.Juice };

    public static Ingredient Lime { get; } = new()
    {
        Slug = S("lime"),
        Name = "Lime",
        Kind = IngredientKind.Fruit,
        Packs = [new("lime", M("1"), 0.5m)],
        Produce = new()
        {
            Juice = S("lime-juice"),
            JuiceMillilitres = 28,
            Cuts = [new(Unit.Wedge, 8), new(Unit.Wheel, 7), new(Unit.Twist, 6, SparesJuice: true)],
        },
    };

    public static Ingredient Sugar { get; } = new()
    {
        Slug = S("sugar"),
        Name = "White sugar",
        Kind = IngredientKind.Sugar,
        Staple = true,
        Packs = [new("1 kg bag", M("1 kg"), 1.5m)],
    };

    public static Ingredient Water { get; } = new() { Slug = S("water"), Name = "Water", Kind = IngredientKind.Water, Staple = true };

    public static Ingredient Syrup { get; } = new()
    {
        Slug = S("sugar-syrup"),
        Name = "Sugar syrup",
        Kind = IngredientKind.Syrup,
        Prep = new() { Inputs = [new(S("sugar"), M("200 g")), new(S("water"), M("200 ml"))], Yield = M("320 ml") },
    };

    public static Ingredient MintSyrup { get; } = new()
    {
        Slug = S("mint-syrup"),
        Name = "Mint syrup",
        Kind = IngredientKind.Syrup,
        Prep = new() { Inputs = [new(S("sugar-syrup"), M("160 ml")), new(S("mint"), M("30 leaf"))], Yield = M("160 ml") },
    };

    public static Ingredient Mint { get; } = new()
    {
        Slug = S("mint"),
        Name = "Mint",
        Kind = IngredientKind.Herb,
        Packs = [new("bunch", M("1 bunch"), 2m)],
        Produce = new() { Cuts = [new(Unit.Leaf, 60), new(Unit.Sprig, 12)] },
    };

    public static Ingredient Soda { get; } = new()
    {
        Slug = S("soda-water"),
        Name = "Soda water",
        Kind = IngredientKind.Mixer,
        Fizzy = true,
        Packs = [new("200 ml can", M("200 ml"), 0.6m), new("1 litre bottle", M("1 l"), 1.4m)],
    };

    public static Ingredient Bitters { get; } = new()
    {
        Slug = S("aromatic-bitters"),
        Name = "Aromatic bitters",
        Kind = IngredientKind.Bitters,
        Packs = [new("200 ml bottle", M("200 ml"), 12m)],
    };

    public static Bar Of(params Ingredient[] changed)
    {
        Ingredient[] usual = [WhiteRum, LimeJuice, Lime, Sugar, Water, Syrup, MintSyrup, Mint, Soda, Bitters];
        return new(new House { SpillShare = 0 }, new IngredientShelf(changed.Concat(usual.Where(known => changed.All(change => change.Slug != known.Slug)))), new BarKit());
    }

    public static SpecLine Line(string measure, string slug) => new()
    {
        Name = slug.Replace('-', ' '),
        Ingredient = S(slug),
        Amounts = measure.Length == 0 ? [] : [new LayeredAmount(AmountLayer.Library, M(measure))],
    };

    public static Spec Drink(string name, params (string Measure, string Slug)[] lines) => new()
    {
        Slug = Slug.Of(name),
        Name = name,
        Method = new(MethodKind.Shaken),
        Lines = [.. lines.Select(line => Line(line.Measure, line.Slug))],
    };

    public static Spec Sour { get; } = Drink("Rum sour", ("60 ml", "white-rum"), ("30 ml", "lime-juice"), ("20 ml", "sugar-syrup"));

    public static Episode Episode(params Spec[] drinks) => new()
    {
        Slug = S("episode"),
        Title = "A film",
        Bottle = new() { Name = "White rum", Ingredient = S("white-rum"), Millilitres = 700 },
        Lineup = [.. drinks.Select(drink => new LineupDrink { Spec = drink })],
    };
}
