using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Shooting;

/// <summary>Facts with fair defaults for the tests of a shoot day: an invented bar, its shelf and its lineup.</summary>
internal static class Kit
{
    public static readonly Slug Rum = Slug.Of("white rum"), Lime = Slug.Of("lime juice"), Syrup = Slug.Of("simple syrup"), Basil = Slug.Of("basil syrup"),
        Soda = Slug.Of("soda water"), Salt = Slug.Of("sea salt"), Coupe = Slug.Of("coupe"), Highball = Slug.Of("highball"), Rocks = Slug.Of("rocks");

    public static Bar Bar(int hands = 1, int coupes = 12, int highballs = 12, int basilMinutes = 120, IEnumerable<Ingredient>? more = null) => new(
        new House { Hands = hands },
        new IngredientShelf(
        [
            new() { Slug = Rum, Name = "White rum", Kind = IngredientKind.Spirit, Composition = new() { Strength = Strength.FromPercent(40), SugarGramsPer100Millilitres = 0 } },
            new() { Slug = Lime, Name = "Lime juice", Kind = IngredientKind.Juice, Composition = new() { Strength = Strength.FromPercent(0), SugarGramsPer100Millilitres = 1.7 }, Fresh = Keeps(TimeSpan.FromHours(10)) },
            new() { Slug = Slug.Of("lime"), Name = "Lime", Aliases = ["limes"], Kind = IngredientKind.Fruit, Produce = new() { Juice = Lime, JuiceMillilitres = 28, Cuts = [new(Unit.Wheel, 6), new(Unit.Wedge, 8), new(Unit.Twist, 4, true)] } },
            new() { Slug = Slug.Of("basil"), Name = "Basil", Kind = IngredientKind.Herb },
            new() { Slug = Slug.Of("white sugar"), Name = "White sugar", Kind = IngredientKind.Sugar, Staple = true },
            new() { Slug = Slug.Of("water"), Name = "Water", Kind = IngredientKind.Water, Staple = true },
            new()
            {
                Slug = Syrup, Name = "Simple syrup", Kind = IngredientKind.Syrup, Composition = new() { Strength = Strength.FromPercent(0), SugarGramsPer100Millilitres = 61.5 }, Fresh = Keeps(TimeSpan.FromDays(14)),
                Prep = new() { Inputs = [new(Slug.Of("white sugar"), Measure.Of(500, Unit.Gram)), new(Slug.Of("water"), Measure.Millilitres(500))], Yield = Measure.Millilitres(810), Steps = ["Stir until clear."] },
            },
            new()
            {
                Slug = Basil, Name = "Basil syrup", Kind = IngredientKind.Syrup, Composition = new() { Strength = Strength.FromPercent(0), SugarGramsPer100Millilitres = 60 }, Fresh = Keeps(TimeSpan.FromMinutes(basilMinutes)),
                Prep = new() { Inputs = [new(Syrup, Measure.Millilitres(300)), new(Slug.Of("basil"), Measure.Of(30, Unit.Gram))], Yield = Measure.Millilitres(280), Steps = ["Blend and strain."], HandsOn = TimeSpan.FromMinutes(12), Equipment = "blender" },
            },
            new() { Slug = Soda, Name = "Soda water", Kind = IngredientKind.Mixer, Fizzy = true, Composition = new() { Strength = Strength.FromPercent(0), SugarGramsPer100Millilitres = 0 } },
            new() { Slug = Salt, Name = "Sea salt", Kind = IngredientKind.Salt, Staple = true },
            .. more ?? [],
        ]),
        new BarKit
        {
            Glasses =
            [
                new() { Slug = Coupe, Name = "Coupe", BrimfulMillilitres = 180, Count = coupes },
                new() { Slug = Highball, Name = "Highball", BrimfulMillilitres = 350, Count = highballs },
                new() { Slug = Rocks, Name = "Rocks glass", BrimfulMillilitres = 300, Count = 12 },
            ],
            Tools = [.. new[] { "shaker", "mixing glass", "hawthorne strainer", "fine sieve", "muddler", "barspoon", "blender", "citrus press", "swizzle stick", "julep strainer" }.Select(name => new Tool(Slug.Of(name), name))],
        });

    public static FreshWindow Keeps(TimeSpan best) => new(TimeSpan.Zero, best, best * 2, "common practice, no source");

    public static LineupDrink Drink(string name, MethodKind method = MethodKind.Shaken, Slug? glass = null, int rum = 45, int syrup = 15, bool basil = false, Pin pin = Pin.None, string beside = "",
        bool chilled = false, bool salt = false, int? takes = null, string station = "", string backdrop = "") => new()
        {
            Spec = new()
            {
                Slug = Slug.Of(name),
                Name = name,
                Method = new(method, 12),
                Serve = new() { Glass = glass ?? Coupe, Chilled = chilled, Strain = method is MethodKind.Shaken ? Straining.Fine : Straining.None },
                Lines =
                [
                    Line("White rum", Rum, rum),
                    Line("Lime juice", Lime, 30),
                    Line(basil ? "Basil syrup" : "Simple syrup", basil ? Basil : Syrup, syrup),
                    .. salt ? [Line("Sea salt", Salt, 1) with { Use = LineUse.Rimmed }] : Array.Empty<SpecLine>(),
                ],
            },
            Pin = pin,
            BesideDrink = beside.Length == 0 ? default : Slug.Of(beside),
            Takes = takes,
            Station = station,
            Backdrop = backdrop,
        };

    public static SpecLine Line(string name, Slug ingredient, int millilitres) => new()
    {
        Name = name,
        Ingredient = ingredient,
        Amounts = [new(AmountLayer.Library, Measure.Millilitres(millilitres))],
    };

    public static Episode Episode(params LineupDrink[] lineup) => new()
    {
        Slug = Slug.Of("test night"),
        Title = "Test night",
        ShootDate = new DateOnly(2027, 3, 6),
        CallTime = new TimeOnly(10, 0),
        Lineup = lineup,
    };
}
