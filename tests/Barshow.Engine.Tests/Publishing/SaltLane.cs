using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Publishing;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Descriptions;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Tests.Publishing;

/// <summary>A small invented bar and an evening of three drinks, for the tests of what goes out.</summary>
internal static class SaltLane
{
    public static IngredientShelf Shelf { get; } = new(
    [
        new() { Slug = Slug.Of("white rum"), Name = "White rum", Kind = IngredientKind.Spirit, Composition = new() { Strength = Strength.FromPercent(40) }, Packs = [new("700 ml bottle", Measure.Millilitres(700), 20m)] },
        new()
        {
            Slug = Slug.Of("lime juice"), Name = "Lime juice", Kind = IngredientKind.Juice,
            Composition = new() { Strength = default(Strength), SugarGramsPer100Millilitres = 1.5, AcidGramsPer100Millilitres = 6 },
            Hazards = [Hazard.FreshJuice],
            NotInstead = [new("Bottled lime cordial", "It is sugar and little acid.")],
            Questions = [new("Can I use bottled juice?", "Fresh tastes brighter; bottled works if it is pure juice.")],
        },
        new()
        {
            Slug = Slug.Of("lime"), Name = "Lime", Kind = IngredientKind.Fruit, Packs = [new("one", Measure.Of(1, null), 0.5m)],
            Produce = new() { Juice = Slug.Of("lime juice"), JuiceMillilitres = 30, Cuts = [new(Unit.Wheel, 6)] },
        },
        new() { Slug = Slug.Of("white sugar"), Name = "White sugar", Kind = IngredientKind.Sugar, Staple = true },
        new() { Slug = Slug.Of("water"), Name = "Water", Kind = IngredientKind.Water, Staple = true },
        new()
        {
            Slug = Slug.Of("rich syrup"), Name = "Rich syrup", Kind = IngredientKind.Syrup,
            Composition = new() { Strength = default(Strength), SugarGramsPer100Millilitres = 88 },
            Prep = new()
            {
                Inputs = [new(Slug.Of("white sugar"), Measure.Of(200, Unit.Gram)), new(Slug.Of("water"), Measure.Of(100, Unit.Gram))],
                Yield = Measure.Millilitres(225),
                Steps = ["Stir over low heat until clear."],
            },
            Fresh = new(TimeSpan.Zero, TimeSpan.FromDays(28), TimeSpan.FromDays(90), "common practice, no source"),
            StandIns = [new(Slug.Of("honey"), 0.8, "rounder")],
        },
        new() { Slug = Slug.Of("honey"), Name = "Honey", Kind = IngredientKind.Syrup, Hazards = [Hazard.Honey] },
        new() { Slug = Slug.Of("egg white"), Name = "Egg white", Kind = IngredientKind.Egg, Allergens = [new(Allergen.Eggs, AllergenPresence.Contains)], Hazards = [Hazard.RawEgg] },
        new() { Slug = Slug.Of("orgeat"), Name = "Orgeat", Kind = IngredientKind.Syrup, Allergens = [new(Allergen.Nuts, AllergenPresence.Contains, "almond")], Packs = [new("250 ml bottle", Measure.Millilitres(250), 9m)] },
        new() { Slug = Slug.Of("soda water"), Name = "Soda water", Kind = IngredientKind.Mixer, Fizzy = true, Composition = new() { Strength = default(Strength) }, Packs = [new("330 ml can", Measure.Millilitres(330), 1m)] },
        new() { Slug = Slug.Of("aromatic bitters"), Name = "Aromatic bitters", Kind = IngredientKind.Bitters, Allergens = [new(Allergen.Nuts, AllergenPresence.CheckLabel)] },
    ]);

    public static BarKit Kit { get; } = new()
    {
        Glasses =
        [
            new() { Slug = Slug.Of("coupe"), Name = "Coupe", BrimfulMillilitres = 180, Count = 6, Instead = [Slug.Of("nick and nora")] },
            new() { Slug = Slug.Of("nick and nora"), Name = "Nick and Nora", BrimfulMillilitres = 150, Count = 4 },
            new() { Slug = Slug.Of("highball"), Name = "Highball", BrimfulMillilitres = 350, Count = 6 },
        ],
    };

    public static House House { get; } = new() { Name = "Salt Lane Bar" };

    public static Bar Bar { get; } = new(House, Shelf, Kit);

    public static LineupDrink HarbourSour { get; } = Drink("Harbour Sour",
        new(MethodKind.Shaken, Seconds: 12),
        new() { Glass = Slug.Of("coupe"), Chilled = true, Strain = Straining.Fine },
        new("lime wheel") { Ingredient = Slug.Of("lime"), Measure = Measure.Of(1, Unit.Wheel), Instead = [new("lime twist")] },
        Line("2 oz", "white rum"), Line("3/4 oz", "lime juice", "freshly pressed"), Line("1/2 oz", "rich syrup"), Line("1", "egg white"));

    public static LineupDrink Dune { get; } = Drink("Dune",
        new(MethodKind.Built),
        new() { Glass = Slug.Of("highball"), Ice = IceKind.Cubed, Straw = true },
        null,
        Line("45 ml", "white rum"), Line("15 ml", "orgeat"), Line("1/3 oz", "lime juice"), Line("top", "soda water") with { Use = LineUse.Topped });

    public static LineupDrink Kelp { get; } = Drink("Kelp",
        new(MethodKind.Stirred, Seconds: 25),
        new() { Glass = Slug.Of("nick and nora"), Strain = Straining.Single },
        null,
        Line("60 ml", "white rum"), Line("2 dash", "aromatic bitters"), Line("1 barspoon", "rich syrup"));

    public static Episode Evening { get; } = new()
    {
        Slug = Slug.Of("three from one bottle"),
        Title = "Three drinks, one bottle of white rum",
        Theme = "Three drinks from one bottle of white rum",
        Lineup = [HarbourSour, Dune, Kelp],
    };

    public static Episode Filmed { get; } = Evening with
    {
        FilmLengthSeconds = 600,
        FilmAddress = "https://example.org/film",
        StillAddress = "https://example.org/still.png",
        PublishDate = new(2027, 3, 20),
        Lineup = [HarbourSour with { FilmSeconds = 42 }, Dune with { FilmSeconds = 190 }, Kelp with { FilmSeconds = 400 }],
    };

    public static SpecLine Line(string measure, string name, string? note = null) => new()
    {
        Name = name,
        Ingredient = Slug.Of(name),
        Amounts = [new(AmountLayer.Library, Measure.Parse(measure))],
        Note = note,
    };

    public static LineupDrink Drink(string name, Method? method, Serve serve, Garnish? garnish, params SpecLine[] lines) => new()
    {
        Spec = new() { Slug = Slug.Of(name), Name = name, Method = method, Serve = serve, Garnish = garnish, Lines = lines },
    };

    public static EpisodeResults Results(Episode episode, House? house = null)
    {
        var bar = Bar with { House = house ?? House };
        var basket = BasketPlanner.Plan(episode, bar, DemandFor.Viewer);
        var setting = new AnalysisSetting(bar.Ingredients, bar.Kit) { Convention = episode.Convention };
        return new()
        {
            Episode = episode,
            Bar = bar,
            ViewerBasket = basket,
            ShootBasket = BasketPlanner.Plan(episode, bar, DemandFor.Shoot),
            Ladder = BasketLadder.Of(basket, [.. episode.Lineup.Select(drink => drink.Spec.Slug)]),
            Analyses = episode.Lineup.DistinctBy(drink => drink.Spec.Slug).ToDictionary(drink => drink.Spec.Slug, drink => DrinkAnalyser.Analyse(drink.Spec, setting)),
        };
    }

    public static DescriptionBlock Describe(Episode episode, House? house = null)
    {
        var results = Results(episode, house);
        return DescriptionComposer.Compose(results, ChapterPlanner.Plan(episode, results.Bar.House.Limits));
    }
}
