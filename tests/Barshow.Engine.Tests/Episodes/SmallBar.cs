using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Episodes;

/// <summary>A bar with just enough on its shelf for a brief.</summary>
internal static class SmallBar
{
    public static Bar Bar { get; } = new(
        new House(),
        new IngredientShelf(
        [
            Of("White rum", IngredientKind.Spirit, 40),
            Of("Lime juice", IngredientKind.Juice, 0, sugar: 1.7, acid: 4.6),
            Of("Lemon juice", IngredientKind.Juice, 0, sugar: 2.5, acid: 4.8),
            Of("Orange juice", IngredientKind.Juice, 0, sugar: 8.4, acid: 0.9),
            Of("Simple syrup", IngredientKind.Syrup, 0, sugar: 61.5),
            Of("Soda water", IngredientKind.Mixer, 0) with { Fizzy = true, Aliases = ["soda", "club soda"] },
            Of("Mint", IngredientKind.Herb, 0) with { Aliases = ["mint leaves"] },
            Of("Lime", IngredientKind.Fruit, 0),
        ]),
        new BarKit
        {
            Glasses =
            [
                new() { Slug = Slug.Of("coupe"), Name = "Coupe", BrimfulMillilitres = 210, Count = 6 },
                new() { Slug = Slug.Of("highball"), Name = "Highball", BrimfulMillilitres = 350, Count = 6 },
            ],
        });

    private static Ingredient Of(string name, IngredientKind kind, double percent, double sugar = 0, double acid = 0) => new()
    {
        Slug = Slug.Of(name),
        Name = name,
        Kind = kind,
        Composition = new() { Strength = Strength.FromPercent(percent), SugarGramsPer100Millilitres = sugar, AcidGramsPer100Millilitres = acid, Source = "test" },
    };
}
