using Barshow.Engine.Episodes;
using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Support;

/// <summary>Things with fair defaults, so that a test shows only what matters to it.</summary>
public static class Make
{
    public static Spec Drink(string name = "Tide Pool Sour", params string[] ingredients) => new()
    {
        Slug = Slug.Of(name),
        Name = name,
        Family = "sour",
        Tags = ["citrus"],
        Method = new(MethodKind.Shaken, Seconds: 12),
        Serve = new() { Glass = Slug.Of("coupe"), Chilled = true, Strain = Straining.Fine },
        Lines = [.. (ingredients.Length == 0 ? ["white rum", "lime juice"] : ingredients).Select(each => new SpecLine
        {
            Name = each,
            Ingredient = Slug.Of(each),
            Amounts = [new(AmountLayer.Library, Measure.Ounces(3, 2))],
        })],
    };

    public static Ingredient Ingredient(string name = "White rum", IngredientKind kind = IngredientKind.Spirit) => new()
    {
        Slug = Slug.Of(name),
        Name = name,
        Kind = kind,
        Composition = new() { Strength = Strength.FromPercent(40) },
    };

    public static Ingredient Prep(string name, params string[] inputs) => new()
    {
        Slug = Slug.Of(name),
        Name = name,
        Kind = IngredientKind.Syrup,
        Prep = new() { Inputs = [.. inputs.Select(input => new PrepInput(Slug.Of(input), Measure.Of(100, Unit.Gram)))] },
    };

    public static Episode Episode(string title = "One bottle, three drinks", params Spec[] drinks) => new()
    {
        Slug = Slug.Of(title),
        Title = title,
        Number = 12,
        ShootDate = new(2027, 3, 6),
        CallTime = new(10, 0),
        Bottle = new() { Name = "white rum", Ingredient = Slug.Of("white rum"), Millilitres = 700, Strength = Strength.FromPercent(40) },
        Lineup = [.. drinks.Select(drink => new LineupDrink { Spec = drink, Library = drink.Slug })],
    };

    public static Feature Feature(string drink = "Tide Pool Sour", string episode = "An old episode", int year = 2025, int month = 4) =>
        new() { EpisodeTitle = episode, Date = new(year, month, 1), Spec = Drink(drink) };
}
