using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;
using static Barshow.Engine.Tests.Specs.TestBar;

namespace Barshow.Engine.Tests.Specs;

public class DrinkAnalysisTests
{
    // The book's own example, 60 ml of 40 % spirit, 22.5 ml of lime and 22.5 ml of 1:1 syrup shaken (Liquid Intelligence, 2014): about 159 ml at 15.0 %,
    // 8.9 g of sugar and 0.85 g of acid in 100 ml. The figures below follow from its fit by arithmetic.
    private static readonly Spec Sour = Drink(MethodKind.Shaken, "Coupe", Ml(60, "White rum"), Ml(22.5, "Lime juice"), Ml(22.5, "Simple syrup"));

    [Fact]
    public void The_published_end_of_a_shaken_sour_is_the_books_example()
    {
        var analysis = Sour.Analyse();

        Assert.Equal(105, analysis.TinMillilitres, 6);
        Assert.Equal(22.8571, analysis.StartStrength * 100, 3);
        Assert.Equal(0.51930, analysis.Dilution.Published!.Value, 4);
        Assert.Equal(159.53, analysis.ServedMillilitres.High, 2);
        Assert.Equal(15.044, analysis.ServedStrength.Low * 100, 2);
        Assert.Equal(8.900, analysis.SugarGramsPer100Millilitres.Low, 2);
        Assert.Equal(0.846, analysis.AcidGramsPer100Millilitres.Low, 3);
    }

    [Fact]
    public void The_trade_end_of_a_shaken_sour_is_a_quarter_of_the_starting_volume()
    {
        var analysis = Sour.Analyse();

        Assert.Equal(105 * 1.25, analysis.ServedMillilitres.Low, 6);
        Assert.Equal(24 / (105 * 1.25), analysis.ServedStrength.High, 6);
        Assert.Equal("Trade habit for shaken drinks, 25 % of the starting volume and less than the fit; big dry ice and a short time come near it.", analysis.Dilution.LowEnd);
        Assert.Equal("The published fit for shaken drinks.", analysis.Dilution.HighEnd);
    }

    [Fact]
    public void Nothing_topped_is_diluted()
    {
        var analysis = Drink(MethodKind.Shaken, "Highball", Ml(50, "Gin"), Ml(25, "Lime juice"), Ml(60, "Soda water", LineUse.Topped)).On(IceKind.Cubed).Analyse();

        Assert.Equal(75, analysis.TinMillilitres);
        Assert.Equal(60, analysis.ToppedMillilitres.Low, 9);
        Assert.Equal(60, analysis.ToppedMillilitres.High, 9);
        Assert.Equal(75 * analysis.Dilution.Share.High, analysis.WaterMillilitres.High, 9);
    }

    [Fact]
    public void An_unknown_ingredient_counts_as_nothing_and_says_so()
    {
        var analysis = Drink(MethodKind.Stirred, "Coupe", Ml(60, "Gin"), Ml(10, "Sea fig cordial")).Analyse();

        var finding = Assert.Single(analysis.Findings, each => each.Kind == FindingCatalogue.CompositionUnknown);
        Assert.Equal("The house does not know \"sea fig cordial\", so it counts as nothing in strength, sugar and acid.", finding.Message);
        Assert.Equal(["sea fig cordial"], analysis.Unknown);
        Assert.Equal(70, analysis.TinMillilitres);
    }

    [Fact]
    public void An_open_top_fills_to_the_wash_line()
    {
        var analysis = Drink(MethodKind.Built, "Highball", Ml(50, "Gin"), Line(Measure.LeftOpen(OpenMeasure.Top), "Soda water", LineUse.Topped)).On(IceKind.Cubed).Analyse();

        Assert.NotNull(analysis.WashLine);
        Assert.Equal(0.9, analysis.WashLine.Level.Low, 9);
        Assert.Equal(0.9, analysis.WashLine.Level.High, 9);
        Assert.InRange(analysis.ToppedMillilitres.Middle, 90, 180);
    }

    // Fizz that stands among the shaken lines is neither shaken nor diluted.
    [Fact]
    public void Fizz_counts_as_topped_wherever_it_stands()
    {
        var analysis = Drink(MethodKind.Shaken, "Highball", Ml(50, "Gin"), Ml(60, "Soda water")).Analyse();

        Assert.Equal(50, analysis.TinMillilitres);
        Assert.Equal(60, analysis.ToppedMillilitres.Middle);
    }

    [Fact]
    public void A_dash_holds_what_its_own_bottle_gives_and_else_the_houses_size()
    {
        var analysis = Drink(MethodKind.Stirred, "Coupe",
            Line(Measure.Of(2, Unit.Dash), "Aromatic bitters"), Line(Measure.Of(2, Unit.Dash), "Orange bitters")).Analyse();

        Assert.Equal(1.8, analysis.Lines[0].Millilitres, 9);
        Assert.Equal(1.6, analysis.Lines[1].Millilitres, 9);
    }

    [Fact]
    public void An_egg_white_is_an_ounce_and_leaves_are_nothing()
    {
        var analysis = Drink(MethodKind.Shaken, "Coupe", Ml(60, "Gin"), Line(Measure.Of(1, null), "Egg white"), Line(Measure.Of(8, Unit.Leaf), "Mint", LineUse.Muddled)).Analyse();

        Assert.Equal(90, analysis.TinMillilitres);
        Assert.Empty(analysis.Findings);
    }

    // USDA SR 26, records 01124 and 01123: the white of a US large egg weighs 33 g, the whole egg 50 g; at about 1.03 g/ml.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData("Egg white", 33, 2.5)]
    [InlineData("Egg yolk", 17, 1.5)]
    [InlineData("Whole egg", 50, 3)]
    public void An_egg_fills_what_the_nutrient_database_weighs(string name, double grams, double tolerance)
    {
        var egg = Of(name, IngredientKind.Egg);
        var spec = Drink(MethodKind.Shaken, "Coupe") with { Lines = [new() { Name = name, Ingredient = egg.Slug, Amounts = [new(AmountLayer.Library, Measure.Of(1, null))] }] };

        var analysis = DrinkAnalyser.Analyse(spec, Setting with { Ingredients = new([egg]) });

        Assert.Equal(grams / 1.03, analysis.TinMillilitres, tolerance);
    }

    [Fact]
    public void Muddled_wedges_give_part_of_their_juice()
    {
        var analysis = Drink(MethodKind.MuddledAndBuilt, "Rocks", Ml(60, "White rum"), Line(Measure.Of(4, Unit.Wedge), "Lime", LineUse.Muddled)).Analyse();

        // Four of six wedges of a lime of 30 ml, half of it set free.
        Assert.Equal(10, analysis.Lines[1].Millilitres, 9);
        Assert.Equal(0.6, analysis.AcidGrams, 9);
    }

    [Fact]
    public void Juice_of_half_a_lime_is_half_its_juice()
    {
        var analysis = Drink(MethodKind.Shaken, "Coupe", Ml(60, "White rum"), Line(Measure.Of(new(1, 2), null), "Lime juice")).Analyse();

        Assert.Equal(15, analysis.Lines[1].Millilitres, 9);
    }

    [Fact]
    public void Dry_sugar_sweetens_and_fills_what_it_fills_dissolved()
    {
        var analysis = Drink(MethodKind.MuddledAndBuilt, "Rocks", Ml(60, "White rum"), Line(Measure.Of(10, Unit.Gram), "Caster sugar", LineUse.Muddled)).Analyse();

        Assert.Equal(10, analysis.SugarGrams, 9);
        Assert.Equal(66.2, analysis.TinMillilitres, 1);
    }

    // USDA SR 26, record 19335: one cube of granulated sugar weighs 2.3 g, one US teaspoon of it 4.2 g, rounded.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData("1 cube", 2.3)]
    [InlineData("1 tsp", 4.2)]
    public void Sugar_weighs_what_the_nutrient_database_says(string amount, double grams)
    {
        var spec = Drink(MethodKind.MuddledAndBuilt, "Rocks", Line(Measure.Parse(amount), "Caster sugar", LineUse.Muddled));

        Assert.Equal(grams, DrinkAnalyser.Analyse(spec, Setting with { Convention = Convention.UsExact }).SugarGrams, 0.05);
    }

    [Fact]
    public void A_rinse_leaves_a_millilitre_and_a_rim_nothing()
    {
        var analysis = Drink(MethodKind.Stirred, "Coupe", Ml(60, "Rye whiskey"), Ml(5, "Gin", LineUse.Rinsed), Ml(5, "Salt", LineUse.Rimmed)).Analyse();

        Assert.Equal(1, analysis.FloatedMillilitres);
        Assert.Equal(60, analysis.TinMillilitres);
    }

    [Fact]
    public void A_float_is_not_diluted()
    {
        var analysis = Drink(MethodKind.Shaken, "Rocks", Ml(60, "White rum"), Line(Measure.LeftOpen(OpenMeasure.Float), "Rye whiskey")).Analyse();

        Assert.Equal(15, analysis.FloatedMillilitres);
        Assert.Equal(60, analysis.TinMillilitres);
    }

    [Fact]
    public void A_spirit_without_strength_says_that_the_drink_comes_out_too_weak()
    {
        var shelf = new IngredientShelf([Of("Cane spirit", IngredientKind.Spirit)]);
        var spec = Drink(MethodKind.Stirred, "Coupe") with { Lines = [new() { Name = "cane spirit", Ingredient = Slug.Of("Cane spirit"), Amounts = [new(AmountLayer.Library, Measure.Millilitres(60))] }] };

        var analysis = DrinkAnalyser.Analyse(spec, Setting with { Ingredients = shelf });

        var finding = Assert.Single(analysis.Findings, each => each.Kind == FindingCatalogue.StrengthUnknown);
        Assert.Equal("The strength of cane spirit is not known, so its 60 ml count as without alcohol and the drink comes out too weak.", finding.Message);
        Assert.Equal("Type the strength from its label.", finding.Remedy);
    }

    [Fact]
    public void An_amount_that_is_no_volume_says_so()
    {
        var analysis = Drink(MethodKind.Shaken, "Coupe", Line(Measure.Of(2, Unit.Part), "Gin"), Ml(30, "Lime juice")).Analyse();

        var finding = Assert.Single(analysis.Findings, each => each.Kind == FindingCatalogue.AmountNotCounted);
        Assert.Equal("\"2 part\" of gin is no volume the house knows, so it counts as nothing.", finding.Message);
    }

    [Fact]
    public void Without_a_method_no_dilution_is_counted_and_that_is_said()
    {
        var analysis = Drink(null, "Coupe", Ml(60, "Gin")).Analyse();

        Assert.Equal(60, analysis.ServedMillilitres.High);
        var finding = Assert.Single(analysis.Findings, each => each.Kind == FindingCatalogue.DilutionNotCounted);
        Assert.Equal("No method is given for Pier Light, so its strength after ice was not worked out.", finding.Message);
    }

    [Fact]
    public void A_drink_without_lines_comes_to_nothing()
    {
        var analysis = Drink(MethodKind.Shaken, "").Analyse();

        Assert.Equal(0, analysis.ServedMillilitres.High);
        Assert.Equal(0, analysis.ServedStrength.High);
        Assert.Null(analysis.SugarToAcid);
        Assert.Null(analysis.HeatBalance);
    }

    [Fact]
    public void The_asked_layer_of_the_amounts_is_analysed()
    {
        var line = Ml(60, "Gin").With(AmountLayer.Poured, Measure.Millilitres(75), "asked for on film");
        var spec = Drink(MethodKind.Stirred, "Coupe") with { Lines = [line] };

        Assert.Equal(60, DrinkAnalyser.Analyse(spec, Setting).TinMillilitres);
        Assert.Equal(75, DrinkAnalyser.Analyse(spec, Setting with { Layer = AmountLayer.Published }).TinMillilitres);
    }

    [Fact]
    public void The_convention_sizes_the_ounce()
    {
        var spec = Drink(MethodKind.Stirred, "Coupe", Line(Measure.Ounces(2), "Gin"));

        Assert.Equal(60, DrinkAnalyser.Analyse(spec, Setting).TinMillilitres);
        Assert.Equal(59.147, DrinkAnalyser.Analyse(spec, Setting with { Convention = Convention.UsExact }).TinMillilitres, 3);
    }

    [Fact]
    public void Standard_drinks_follow_from_the_ethanol()
    {
        var analysis = Sour.Analyse();

        Assert.Equal(24, analysis.EthanolMillilitres, 9);
        Assert.Equal(1.894, analysis.StandardDrinks.Australia, 3);
        Assert.Equal(1.353, analysis.StandardDrinks.UnitedStates, 3);
        Assert.Equal(2.4, analysis.StandardDrinks.UnitedKingdom, 9);
    }
}
