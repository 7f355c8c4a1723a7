using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Tests.Specs;

/// <summary>A small bar with figures that make the arithmetic easy to follow.</summary>
internal static class TestBar
{
    public static IngredientShelf Shelf { get; } = new(
    [
        Of("White rum", IngredientKind.Spirit, strength: 40),
        Of("Gin", IngredientKind.Spirit, strength: 40),
        Of("Rye whiskey", IngredientKind.Spirit, strength: 50),
        Of("Sweet vermouth", IngredientKind.FortifiedWine, strength: 16, sugar: 16, acid: 0.6),
        Of("Orange liqueur", IngredientKind.Liqueur, strength: 40, sugar: 25),
        Of("Bitter liqueur", IngredientKind.Liqueur, strength: 24, sugar: 24),
        Of("Sparkling wine", IngredientKind.Wine, strength: 12, sugar: 1, acid: 0.6) with { Fizzy = true },
        Of("Aromatic bitters", IngredientKind.Bitters, strength: 45) with { DashMillilitres = new(9, 10) },
        Of("Orange bitters", IngredientKind.Bitters, strength: 28),
        Of("Lime juice", IngredientKind.Juice, sugar: 1.6, acid: 6),
        Of("Lemon juice", IngredientKind.Juice, sugar: 1.6, acid: 6),
        Of("Pineapple juice", IngredientKind.Juice, sugar: 10.6, acid: 0.8),
        Of("Simple syrup", IngredientKind.Syrup, sugar: 61.5, acid: 0) with { Aliases = ["sugar syrup"] },
        Of("Soda water", IngredientKind.Mixer, sugar: 0) with { Fizzy = true },
        Of("Ginger beer", IngredientKind.Mixer, sugar: 11.7) with { Fizzy = true },
        Of("Water", IngredientKind.Water),
        Of("Caster sugar", IngredientKind.Sugar),
        Of("Egg white", IngredientKind.Egg) with { Hazards = [Hazard.RawEgg], Allergens = [new(Allergen.Eggs, AllergenPresence.Contains)] },
        Of("Mint", IngredientKind.Herb),
        Of("Lime", IngredientKind.Fruit) with
        {
            Produce = new() { Juice = Slug.Of("Lime juice"), JuiceMillilitres = 30, MuddledShare = 0.5, Cuts = [new(Unit.Wedge, 6), new(Unit.Twist, 6, SparesJuice: true)] },
        },
        Of("Salt", IngredientKind.Salt),
    ]);

    public static BarKit Kit { get; } = new()
    {
        Glasses =
        [
            new() { Slug = Slug.Of("Coupe"), Name = "Coupe", BrimfulMillilitres = 180, UsualWashLine = 0.85 },
            new() { Slug = Slug.Of("Small coupe"), Name = "Small coupe", BrimfulMillilitres = 120, UsualWashLine = 0.85 },
            new() { Slug = Slug.Of("Nick and Nora"), Name = "Nick and Nora", BrimfulMillilitres = 150, UsualWashLine = 0.85 },
            new() { Slug = Slug.Of("Rocks"), Name = "Rocks", Aliases = ["rocks glass", "old fashioned glass"], BrimfulMillilitres = 300, UsualWashLine = 0.8 },
            new() { Slug = Slug.Of("Highball"), Name = "Highball", Aliases = ["tall glass"], BrimfulMillilitres = 400, UsualWashLine = 0.9 },
            new() { Slug = Slug.Of("Flute"), Name = "Flute", BrimfulMillilitres = 180, UsualWashLine = 0.85 },
        ],
    };

    public static AnalysisSetting Setting { get; } = new(Shelf, Kit);

    public static Ingredient Of(string name, IngredientKind kind, double? strength = null, double? sugar = null, double? acid = null) => new()
    {
        Slug = Slug.Of(name),
        Name = name,
        Kind = kind,
        Composition = new()
        {
            Strength = strength is { } percent ? Strength.FromPercent(percent) : null,
            SugarGramsPer100Millilitres = sugar,
            AcidGramsPer100Millilitres = acid,
        },
    };

    public static SpecLine Line(Measure? measure, string name, LineUse use = LineUse.Mixed) => new()
    {
        Name = name.ToLowerInvariant(),
        Ingredient = Shelf.Named(name)?.Slug ?? default,
        Amounts = measure is null ? [] : [new(AmountLayer.Library, measure)],
        Use = use,
    };

    public static SpecLine Ml(double millilitres, string name, LineUse use = LineUse.Mixed) =>
        Line(Measure.Of(Rational.FromDecimal((decimal)millilitres), Unit.Millilitre), name, use);

    public static Spec Drink(MethodKind? method, string glass, params SpecLine[] lines) => new()
    {
        Slug = Slug.Of("Pier Light"),
        Name = "Pier Light",
        Lines = lines,
        Method = method is { } kind ? new(kind) : null,
        Serve = new() { Glass = glass.Length == 0 ? default : Slug.Of(glass) },
    };

    public static Spec On(this Spec spec, IceKind ice) => spec with { Serve = spec.Serve with { Ice = ice } };

    public static DrinkAnalysis Analyse(this Spec spec) => DrinkAnalyser.Analyse(spec, Setting);
}
