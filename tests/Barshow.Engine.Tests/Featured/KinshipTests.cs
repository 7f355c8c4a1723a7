using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Featured;

/// <summary>
/// Amounts are those of the list of the International Bartenders Association as published in March 2023, in millilitres.
/// That a sour with another base is kin, and a highball and its salted-rim sibling too, is common practice of the trade's manuals; the judgement "same" or "close" is ours.
/// </summary>
public class KinshipTests
{
    private static readonly IngredientShelf Shelf = new(
    [
        Of("White rum", IngredientKind.Spirit, "rum"), Of("Aged rum", IngredientKind.Spirit, "rum"), Of("Gin", IngredientKind.Spirit, "gin"),
        Of("Bourbon", IngredientKind.Spirit, "whisky"), Of("Vodka", IngredientKind.Spirit, "vodka"), Of("Blanco tequila", IngredientKind.Spirit, "agave spirit"),
        Of("Lime juice", IngredientKind.Juice, "sour citrus", 4.6), Of("Lemon juice", IngredientKind.Juice, "sour citrus", 4.8),
        Of("Grapefruit juice", IngredientKind.Juice, "grapefruit", 1.5), Of("1:1 syrup", IngredientKind.Syrup, "sweetener"), Of("Honey syrup", IngredientKind.Syrup, "sweetener"),
        Of("Sweet vermouth", IngredientKind.FortifiedWine, "vermouth"), Of("Red bitter aperitif", IngredientKind.Liqueur, "bitter aperitif"),
        Of("Triple sec", IngredientKind.Liqueur, "orange liqueur"), Of("Coffee liqueur", IngredientKind.Liqueur, "coffee liqueur"), Of("Soda water", IngredientKind.Mixer, "soda water"),
        Of("Mint", IngredientKind.Herb, "mint"), Of("Salt", IngredientKind.Salt, "salt"), Of("Espresso", IngredientKind.Infusion, "coffee"), Of("Dry vermouth", IngredientKind.FortifiedWine, "vermouth"),
    ]);

    private static readonly Spec Daiquiri = Drink("Daiquiri", MethodKind.Shaken, "60 white rum", "20 lime juice", "10 1:1 syrup");
    private static readonly Spec WhiskeySour = Drink("Whiskey Sour", MethodKind.Shaken, "45 bourbon", "25 lemon juice", "20 1:1 syrup");
    private static readonly Spec GinSour = Drink("Gin Sour", MethodKind.Shaken, "45 gin", "25 lemon juice", "20 1:1 syrup");
    private static readonly Spec Negroni = Drink("Negroni", MethodKind.Built, "30 gin", "30 red bitter aperitif", "30 sweet vermouth");
    private static readonly Spec Boulevardier = Drink("Boulevardier", MethodKind.Stirred, "45 bourbon", "30 red bitter aperitif", "30 sweet vermouth");
    private static readonly Spec Greyhound = Drink("Greyhound", MethodKind.Built, "40 vodka", "100 grapefruit juice");
    private static readonly Spec SaltyDog = Drink("Salty Dog", MethodKind.Built, "40 vodka", "100 grapefruit juice", "rim salt");
    private static readonly Spec Mojito = Drink("Mojito", MethodKind.MuddledAndBuilt, "45 white rum", "20 lime juice", "20 1:1 syrup", "leaf mint", "60 soda water");

    [Fact]
    public void The_same_amounts_under_another_name_are_the_same_drink()
    {
        var match = Compare(Daiquiri with { Name = "House Sour", Slug = Slug.Of("house sour") }, Daiquiri);

        Assert.Equal(Kinship.SameDrink, match.Kinship);
        Assert.Equal("same amounts under another name", Assert.Single(match.Reasons));
    }

    [Theory]
    [InlineData("DAIQUIRI")]
    [InlineData("Daíquirí")]
    [InlineData("the daiquiri")]
    [InlineData("Daiqiuri")]
    [InlineData("Daiquri")]
    public void A_name_is_the_same_in_other_case_with_accents_or_a_slip(string name) =>
        Assert.Equal(Kinship.SameDrink, Compare(Daiquiri with { Name = name }, Daiquiri with { Lines = [] }).Kinship);

    [Theory]
    [InlineData("Number 1 Sour", "Number 2 Sour")]
    [InlineData("Rum Sour", "Gum Sour")]
    [InlineData("Daiquiri", "Daiquiri Fizz")]
    public void Names_that_only_look_alike_are_not_the_same(string one, string other) =>
        Assert.Equal(Kinship.New, Compare(Daiquiri with { Name = one }, Daiquiri with { Name = other, Lines = [] }).Kinship);

    [Fact]
    public void A_sour_with_another_base_is_a_close_relative()
    {
        var match = Compare(GinSour, WhiskeySour);

        Assert.Equal(Kinship.CloseRelative, match.Kinship);
        Assert.Equal("gin in place of bourbon", Assert.Single(match.Reasons));
    }

    [Fact]
    public void Equal_parts_with_another_base_are_close_relatives_though_one_is_built_and_one_stirred()
    {
        var shared = Boulevardier with { Method = new(MethodKind.Built) };

        Assert.Equal(Kinship.CloseRelative, Compare(shared, Negroni).Kinship);
    }

    [Fact]
    public void A_highball_and_its_salted_rim_sibling_are_close_relatives()
    {
        var match = Compare(SaltyDog, Greyhound);

        Assert.Equal(Kinship.CloseRelative, match.Kinship);
        Assert.Equal("with a rim", Assert.Single(match.Reasons));
    }

    [Fact]
    public void A_herb_parts_two_drinks_of_the_same_amounts()
    {
        var match = Compare(Mojito with { Name = "Plain Long One", Lines = [.. Mojito.Lines.Where(line => line.Name != "mint")] }, Mojito);

        Assert.Equal(Kinship.CloseRelative, match.Kinship);
        Assert.Equal("without mint", Assert.Single(match.Reasons));
    }

    [Fact]
    public void Two_drinks_that_share_a_word_of_their_names_are_new()
    {
        var coffee = Drink("Espresso Martini", MethodKind.Shaken, "50 vodka", "30 coffee liqueur", "10 1:1 syrup", "30 espresso");
        var dry = Drink("Dry Martini", MethodKind.Stirred, "60 gin", "10 dry vermouth");

        Assert.Equal(Kinship.New, Compare(coffee, dry).Kinship);
    }

    [Fact]
    public void The_same_name_over_another_drink_is_new()
    {
        var other = Drink("Daiquiri", MethodKind.Stirred, "60 gin", "30 sweet vermouth", "15 coffee liqueur");

        Assert.Equal(Kinship.New, Compare(other, Daiquiri).Kinship);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    public void A_presenters_own_amounts_leave_it_the_same_drink(int syrup)
    {
        var own = Drink("Daiquiri", MethodKind.Shaken, "60 white rum", "25 lime juice", $"{syrup} 1:1 syrup");

        Assert.Equal(Kinship.SameDrink, Compare(own, Daiquiri).Kinship);
    }

    [Fact]
    public void The_nearest_is_named_first()
    {
        FeaturedLog log = new([Shown(WhiskeySour, 2024), Shown(GinSour, 2025)]);

        var matches = FeaturedMatcher.Match(GinSour, log, Shelf);

        Assert.Equal(["Gin Sour", "Whiskey Sour"], matches.Select(match => match.Feature.Spec.Name));
    }

    private static FeatureMatch Compare(Spec drink, Spec featured) => FeaturedMatcher.Compare(drink, Shown(featured, 2025), Shelf);

    private static Feature Shown(Spec spec, int year) => new() { EpisodeTitle = "Earlier", Date = new(year, 5, 2), Spec = spec };

    // "60 white rum" is millilitres, "leaf mint" eight leaves, "rim salt" a rim.
    private static Spec Drink(string name, MethodKind method, params string[] lines) => new()
    {
        Slug = Slug.Of(name),
        Name = name,
        Method = new(method),
        Lines = [.. lines.Select(line => line.Split(' ', 2)).Select(parts => parts[0] switch
        {
            "rim" => new SpecLine { Name = parts[1], Ingredient = Slug.Of(parts[1]), Use = LineUse.Rimmed },
            "leaf" => new SpecLine { Name = parts[1], Ingredient = Slug.Of(parts[1]), Amounts = [new(AmountLayer.Library, Measure.Of(8, Unit.Leaf))], Use = LineUse.Muddled },
            _ => new SpecLine { Name = parts[1], Ingredient = Slug.Of(parts[1]), Amounts = [new(AmountLayer.Library, Measure.Millilitres(int.Parse(parts[0], System.Globalization.CultureInfo.InvariantCulture)))] },
        })],
    };

    private static Ingredient Of(string name, IngredientKind kind, string group, double acid = 0) => new()
    {
        Slug = Slug.Of(name),
        Name = name,
        Kind = kind,
        Class = group,
        Composition = new() { AcidGramsPer100Millilitres = acid },
    };
}
