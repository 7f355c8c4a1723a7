using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Checks;
using static Barshow.Engine.Tests.Specs.TestBar;

namespace Barshow.Engine.Tests.Specs;

public class SpecCheckTests
{
    private static readonly Spec Sound = Drink(MethodKind.Shaken, "Coupe", Ml(60, "White rum"), Ml(22.5, "Lime juice"), Ml(22.5, "Simple syrup"));

    [Fact]
    public void A_sound_spec_has_nothing_to_say() => Assert.Empty(SpecChecker.Check(Sound, Setting));

    [Fact]
    public void A_drink_without_lines_is_a_stop_and_nothing_more() =>
        Fires(Drink(null, ""), FindingCatalogue.DrinkWithoutLines, "Pier Light has no ingredients.");

    [Fact]
    public void A_drink_that_does_not_say_how_it_is_made() =>
        Fires(Sound with { Method = null }, FindingCatalogue.FinishMissing, "Pier Light does not say how it is made.");

    [Fact]
    public void A_drink_without_a_glass() =>
        Fires(Sound with { Serve = new() }, FindingCatalogue.GlassMissing, "Pier Light names no glass.");

    [Fact]
    public void A_glass_the_bar_does_not_have() =>
        Fires(Sound with { Serve = new() { Glass = Slug.Of("Silver cup") } }, FindingCatalogue.GlassUnknown, "Pier Light is served in a silver cup, which the bar kit does not hold.");

    [Fact]
    public void A_glass_to_use_instead_that_the_bar_does_not_have() =>
        Fires(Sound with { Serve = Sound.Serve with { GlassesInstead = [Slug.Of("Silver cup")] } },
            FindingCatalogue.GlassUnknown, "Pier Light is served in a silver cup, which the bar kit does not hold.");

    [Fact]
    public void A_spirit_without_an_amount() =>
        Fires(Drink(MethodKind.Shaken, "Coupe", Line(null, "Gin"), Ml(30, "Lime juice")),
            FindingCatalogue.AlcoholAmountMissing, "gin has no amount, so the strength and the standard drinks of Pier Light come out too low.");

    [Fact]
    public void Juice_without_an_amount_is_another_matter() =>
        Assert.Empty(SpecChecker.Check(Drink(MethodKind.Shaken, "Coupe", Ml(60, "Gin"), Line(null, "Lime juice")), Setting));

    [Fact]
    public void An_open_top_of_wine_needs_no_amount() =>
        Assert.Empty(SpecChecker.Check(Drink(MethodKind.Shaken, "Flute", Ml(30, "Gin"), Line(Measure.LeftOpen(OpenMeasure.Top), "Sparkling wine", LineUse.Topped)), Setting));

    [Fact]
    public void Fizz_in_the_tin() =>
        Fires(Drink(MethodKind.Shaken, "Highball", Ml(60, "Gin"), Ml(90, "Ginger beer")),
            FindingCatalogue.FizzInTheTin, "Ginger beer is fizzy and stands among the lines of Pier Light that are shaken; it is counted as topped.");

    [Theory]
    [InlineData(MethodKind.Built, LineUse.Mixed)]
    [InlineData(MethodKind.Shaken, LineUse.Topped)]
    public void Fizz_built_or_topped_is_as_it_should_be(MethodKind method, LineUse use) =>
        Assert.Empty(SpecChecker.Check(Drink(method, "Highball", Ml(60, "Gin"), Ml(90, "Ginger beer", use)), Setting));

    [Fact]
    public void Juice_that_is_stirred() =>
        Fires(Drink(MethodKind.Stirred, "Coupe", Ml(60, "Gin"), Ml(20, "Lime juice")),
            FindingCatalogue.CloudyAndStirred, "Pier Light is stirred with lime juice; by custom drinks with juice, cream or egg are shaken.");

    [Fact]
    public void Egg_white_without_a_dry_shake()
    {
        var spec = Drink(MethodKind.Shaken, "Coupe", Ml(60, "Gin"), Ml(30, "Egg white"));

        Fires(spec, FindingCatalogue.FoamWithoutDryShake, "Pier Light holds egg white and has no dry shake, so its foam will be thin.");
        Assert.Empty(SpecChecker.Check(spec with { Method = new(MethodKind.Shaken, DryShake: true) }, Setting));
    }

    // Cooking Issues, Cocktail Science in General, part 1 (2010): 12 to 15 seconds of shaking, and longer changes little.
    [Theory]
    [InlineData(15, false)]
    [InlineData(20, false)]
    [InlineData(21, true)]
    public void A_shake_that_changes_nothing_more(int seconds, bool fires)
    {
        var spec = Sound with { Method = new(MethodKind.Shaken, seconds) };

        if (fires)
            Fires(spec, FindingCatalogue.ShakenLong, "Pier Light is shaken 21 seconds; after 15 it grows hardly colder or weaker.");
        else
            Assert.Empty(SpecChecker.Check(spec, Setting));
    }

    [Fact]
    public void A_layer_that_sinks()
    {
        var heavy = Of("Coffee liqueur", IngredientKind.Liqueur, 20, 45) with { Composition = new() { Strength = Strength.FromPercent(20), DensityGramsPerMillilitre = 1.15 } };
        var light = Of("Cream liqueur", IngredientKind.Liqueur, 17, 20) with { Composition = new() { Strength = Strength.FromPercent(17), DensityGramsPerMillilitre = 1.05 } };
        var setting = Setting with { Ingredients = new([heavy, light]) };
        SpecLine Layer(Ingredient ingredient) => new() { Name = ingredient.Name, Ingredient = ingredient.Slug, Amounts = [new(AmountLayer.Library, Measure.Millilitres(15))] };

        var finding = Assert.Single(SpecChecker.Check(Drink(MethodKind.Layered, "Small coupe", Layer(light), Layer(heavy)), setting));

        Assert.Equal(FindingCatalogue.LayerSinks, finding.Kind);
        Assert.Equal("Coffee liqueur, 1.15 g/ml, is poured on cream liqueur, 1.05 g/ml, and sinks.", finding.Message);
        Assert.Empty(SpecChecker.Check(Drink(MethodKind.Layered, "Small coupe", Layer(heavy), Layer(light)), setting));
    }

    [Fact]
    public void A_rim_behind_a_straw()
    {
        var rimmed = Sound with { Lines = [.. Sound.Lines, Line(null, "Salt", LineUse.Rimmed)], Serve = Sound.Serve with { Straw = true } };

        Fires(rimmed, FindingCatalogue.StrawWithRim, "Pier Light has a rim and a straw, so nobody tastes the rim.");
        Fires(Sound with { Garnish = new("salt rim"), Serve = Sound.Serve with { Straw = true } }, FindingCatalogue.StrawWithRim, "Pier Light has a rim and a straw, so nobody tastes the rim.");
        Assert.Empty(SpecChecker.Check(rimmed with { Serve = Sound.Serve }, Setting));
    }

    [Fact]
    public void An_ingredient_that_stands_twice()
    {
        Fires(Sound with { Lines = [.. Sound.Lines, Ml(10, "Lime juice")] }, FindingCatalogue.IngredientTwice, "lime juice stands twice in Pier Light.");
        Assert.Empty(SpecChecker.Check(Sound with { Lines = [.. Sound.Lines, Ml(10, "White rum", LineUse.Floated)] }, Setting));
    }

    private static void Fires(Spec spec, FindingKind kind, string sentence)
    {
        var finding = Assert.Single(SpecChecker.Check(spec, Setting));
        Assert.Equal(kind, finding.Kind);
        Assert.Equal(sentence, finding.Message);
        Assert.Equal("Pier Light", finding.Drink);
    }
}
