using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;
using CsCheck;
using static Barshow.Engine.Tests.Specs.TestBar;

namespace Barshow.Engine.Tests.Specs;

public class WashLineTests
{
    private static SpecLine OpenTop(string name) => Line(Measure.LeftOpen(OpenMeasure.Top), name, LineUse.Topped);

    [Fact]
    public void Served_up_the_level_is_the_liquid_by_the_brim()
    {
        var line = Drink(MethodKind.Stirred, "Coupe", Ml(60, "Rye whiskey"), Ml(30, "Sweet vermouth")).Analyse().WashLine!;

        Assert.Equal(90 * 1.2 / 180, line.Level.Low, 9);
        Assert.Equal(0, line.IceMillilitres.High);
    }

    [Fact]
    public void Ice_that_melts_in_the_glass_stops_displacing()
    {
        // A built drink stands as high before its ice melts as after: water takes the room the ice gives up.
        var line = Drink(MethodKind.Built, "Rocks", Ml(90, "Gin")).On(IceKind.Cubed).Analyse().WashLine!;

        Assert.Equal((90 + line.IceGrams.Low) / 300, line.Level.Low, 9);
        Assert.Equal((90 + line.IceGrams.High) / 300, line.Level.High, 9);
        Assert.Equal(line.IceGrams.Low - 90 * 0.25, line.IceMillilitres.Low, 9);
    }

    [Fact]
    public void Fresh_ice_displaces_beside_the_water_from_the_tin()
    {
        var analysis = Drink(MethodKind.Shaken, "Rocks", Ml(90, "Gin")).On(IceKind.Cubed).Analyse();

        Assert.Equal((analysis.ServedMillilitres.Low + analysis.WashLine!.IceGrams.Low) / 300, analysis.WashLine.Level.Low, 9);
    }

    [Fact]
    public void Usual_ice_fills_the_glass_up_to_its_wash_line()
    {
        var grams = IceFill.UsualGrams(IceKind.Cubed, 270);

        Assert.Equal(270 * 0.5 * 0.917, grams.Low, 9);
        Assert.Equal(270 * 0.6 * 0.917, grams.High, 9);
        Assert.Equal(114.6, IceFill.UsualGrams(IceKind.Large, 270).High, 1);
        Assert.Equal(0, IceFill.UsualGrams(IceKind.None, 270).High);
    }

    [Fact]
    public void A_top_really_amounts_to_what_the_ice_leaves()
    {
        var analysis = Drink(MethodKind.Built, "Highball", Ml(50, "Gin"), OpenTop("Soda water")).On(IceKind.Cubed).Analyse();

        // 360 ml to the wash line, less 50 ml of gin, less ice of half to three fifths of that space.
        Assert.Equal(360 - 50 - 360 * 0.6 * 0.917, analysis.ToppedMillilitres.Low, 6);
        Assert.Equal(360 - 50 - 360 * 0.5 * 0.917, analysis.ToppedMillilitres.High, 6);
    }

    [Fact]
    public void A_topped_wine_brings_its_own_alcohol()
    {
        var analysis = Drink(MethodKind.Shaken, "Flute", Ml(30, "Gin"), Ml(15, "Lemon juice"), OpenTop("Sparkling wine")).Analyse();

        Assert.True(analysis.EthanolMillilitres > 12 + 8);
        Assert.Equal(0.85 * 180, analysis.ServedMillilitres.Middle, 6);
    }

    [Fact]
    public void Two_open_tops_share_the_room()
    {
        var one = Drink(MethodKind.Built, "Flute", OpenTop("Sparkling wine")).Analyse();
        var two = Drink(MethodKind.Built, "Flute", OpenTop("Sparkling wine"), OpenTop("Soda water")).Analyse();

        Assert.Equal(one.EthanolMillilitres / 2, two.EthanolMillilitres, 9);
    }

    [Fact]
    public void A_drink_over_the_brim_says_by_how_much_and_which_glass_holds_it()
    {
        var analysis = Drink(MethodKind.Shaken, "Small coupe", Ml(60, "White rum"), Ml(22.5, "Lime juice"), Ml(22.5, "Simple syrup")).Analyse();

        var finding = Assert.Single(analysis.Findings);
        Assert.Equal(FindingCatalogue.WashLineOver, finding.Kind);
        Assert.Equal("Pier Light comes to 145 ml, and the small coupe holds 120 ml to its brim.", finding.Message);
        Assert.Equal("Use the coupe, 180 ml, or make a smaller drink.", finding.Remedy);
    }

    [Fact]
    public void A_drink_a_little_over_the_brim_is_written_to_a_tenth()
    {
        var near = Enumerable.Range(400, 600)
            .SelectMany(tenths => Drink(MethodKind.Shaken, "Small coupe", Ml(tenths / 10.0, "White rum"), Ml(22.5, "Lime juice")).Analyse().Findings)
            .Where(finding => finding.Kind == FindingCatalogue.WashLineOver).Select(finding => finding.Message).ToList();

        Assert.DoesNotContain(near, message => message.StartsWith("Pier Light comes to 120 ml", StringComparison.Ordinal));
        Assert.Contains(near, message => message.StartsWith("Pier Light comes to 120.", StringComparison.Ordinal) && message.EndsWith(" ml, and the small coupe holds 120.0 ml to its brim.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_drink_that_may_brim_over_is_a_note()
    {
        // 96 ml of 30 %: 120 ml by trade habit, 152.1 ml by the fit.
        var analysis = Drink(MethodKind.Shaken, "Nick and Nora", Ml(72, "Gin"), Ml(24, "Lemon juice")).Analyse();

        var finding = Assert.Single(analysis.Findings);
        Assert.Equal(FindingCatalogue.WashLineBrimming, finding.Kind);
        Assert.Equal("With the most dilution Pier Light comes to 152 ml, and the nick and nora holds 150 ml to its brim.", finding.Message);
        Assert.Equal("Try it once before the day, or pour into a larger glass.", finding.Remedy);
    }

    [Fact]
    public void A_drink_just_below_the_brim_says_nothing()
    {
        var analysis = Drink(MethodKind.Shaken, "Nick and Nora", Ml(71, "Gin"), Ml(23.6, "Lemon juice")).Analyse();

        Assert.True(analysis.WashLine!.Level.High < 1);
        Assert.Empty(analysis.Findings);
    }

    [Theory]
    [InlineData(75, true)]
    [InlineData(80, false)]
    public void A_glass_below_three_quarters_of_its_line_looks_empty(double millilitres, bool low)
    {
        // Stirred gin of 40 %: 1.4498 times its volume at most; three quarters of 0.85 of 180 ml are 114.75 ml, that is 79.1 ml of gin.
        var analysis = Drink(MethodKind.Stirred, "Coupe", Ml(millilitres, "Gin")).Analyse();

        Assert.Equal(low, analysis.Findings.Any(finding => finding.Kind == FindingCatalogue.WashLineLow));
    }

    [Fact]
    public void A_low_glass_names_the_smaller_one()
    {
        var analysis = Drink(MethodKind.Stirred, "Coupe", Ml(60, "Gin")).Analyse();

        var finding = Assert.Single(analysis.Findings);
        Assert.Equal("Pier Light fills the coupe to 48 % of its brim at most; its wash line is 85 %.", finding.Message);
        Assert.Equal("Use the small coupe, 120 ml, or make a larger drink.", finding.Remedy);
    }

    [Fact]
    public void A_stated_top_that_does_not_fit_says_how_much_ice_leaves_room_for_it()
    {
        var analysis = Drink(MethodKind.Built, "Highball", Ml(60, "Gin"), Ml(200, "Soda water", LineUse.Topped)).On(IceKind.Cubed).Analyse();

        Assert.False(analysis.WashLine!.StatedTopFits);
        Assert.Equal(360 - 60 - 200, analysis.WashLine.IceGramsForStatedTop!.Value, 9);
        var finding = Assert.Single(analysis.Findings);
        Assert.Equal(FindingCatalogue.TopDoesNotFit, finding.Kind);
        Assert.Equal("The 200 ml that top up Pier Light do not fit: with the usual ice the highball has room for about 118 ml.", finding.Message);
        Assert.Equal("Use 100 g of ice instead of 182 g, or top up with 118 ml.", finding.Remedy);
    }

    [Fact]
    public void A_stated_top_that_fits_says_nothing()
    {
        var analysis = Drink(MethodKind.Built, "Highball", Ml(60, "Gin"), Ml(120, "Soda water", LineUse.Topped)).On(IceKind.Cubed).Analyse();

        Assert.True(analysis.WashLine!.StatedTopFits);
        Assert.Empty(analysis.Findings);
    }

    [Fact]
    public void A_top_without_room_is_a_finding()
    {
        var analysis = Drink(MethodKind.Shaken, "Nick and Nora", Ml(60, "Gin"), Ml(45, "Lemon juice"), OpenTop("Soda water")).Analyse();

        var finding = Assert.Single(analysis.Findings, each => each.Kind == FindingCatalogue.TopHasNoRoom);
        Assert.Equal("Pier Light stands 18 ml above the wash line of the nick and nora before it is topped up.", finding.Message);
    }

    [Theory]
    [InlineData("", "No glass is named for Pier Light, so its wash line was not checked.")]
    [InlineData("Tiki mug", "The bar kit has no glass \"tiki-mug\", so the wash line of Pier Light was not checked.")]
    public void Without_a_known_glass_the_wash_line_is_said_not_to_be_checked(string glass, string sentence)
    {
        var analysis = Drink(MethodKind.Shaken, glass, Ml(60, "Gin")).Analyse();

        Assert.Null(analysis.WashLine);
        Assert.Equal(sentence, Assert.Single(analysis.Findings).Message);
    }

    [Fact]
    public void More_ice_never_lowers_the_line() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 150], Gen.Double[0, 400], Gen.Double[0, 400], Gen.Bool).Sample((liquid, water, ice, more, melts) =>
            Assert.True(GlassState.Of(liquid, water, ice + more, melts).Filled >= GlassState.Of(liquid, water, ice, melts).Filled));
}
