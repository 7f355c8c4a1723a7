using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs;
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
}
