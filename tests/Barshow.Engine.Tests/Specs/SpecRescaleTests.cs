using Barshow.Engine.Measures;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Rescaling;
using CsCheck;
using static Barshow.Engine.Tests.Specs.TestBar;

namespace Barshow.Engine.Tests.Specs;

public class SpecRescaleTests
{
    private static readonly PourableGrid Grid = PourableGrid.For(Convention.Bar);

    [Fact]
    public void A_metric_spec_whose_ratios_can_be_kept_keeps_them()
    {
        var rescale = SpecRescale.Find(Drink(MethodKind.Shaken, "Coupe", Ml(40, "White rum"), Ml(20, "Lime juice"), Ml(20, "Simple syrup")), Setting, Grid)[0];

        Assert.Equal(0, rescale.Rescale.LargestBend, 9);
        Assert.Equal(0, rescale.StrengthPoints, 9);
        Assert.Equal(0, rescale.SugarToAcidBend!.Value, 9);
        Assert.All(rescale.Spec.Lines, line => Assert.Equal("rescaled so that every amount can be poured and said", line.Amounts[^1].Reason));
    }

    [Fact]
    public void Every_offered_line_can_be_said_and_the_change_is_said_in_one_sentence()
    {
        var offers = SpecRescale.Find(Drink(MethodKind.Shaken, "Coupe", Ml(50, "White rum"), Ml(25, "Lime juice"), Ml(15, "Simple syrup")), Setting, Grid);

        Assert.All(offers.SelectMany(offer => offer.Rescale.Lines), line => Assert.True(Grid.IsSpeakable(line.To)));
        Assert.Equal("At 1.50 times its size every amount can be poured and said, and no ratio bends.", offers[0].Sentence);
        // 50, 22.5 and 15 ml: 20 ml of ethanol in 87.5 ml; 9.585 g of sugar to 1.35 g of acid.
        Assert.Equal(
            "At 0.95 times its size every amount can be poured and said; no line bends by more than 5.3 %: 22.9 % before ice instead of 22.2 %, sugar to acid 7.1 instead of 6.4.",
            offers[^1].Sentence);
    }

    [Fact]
    public void Dashes_and_leaves_follow_the_factor_in_whole_steps()
    {
        var spec = Drink(MethodKind.MuddledAndShaken, "Coupe", Ml(30, "Gin"), Ml(15, "Lime juice"),
            Line(Measure.Of(8, Unit.Leaf), "Mint", LineUse.Muddled), Line(Measure.Of(1, Unit.Dash), "Aromatic bitters"), Line(Measure.LeftOpen(OpenMeasure.Top), "Soda water", LineUse.Topped));

        foreach (var offer in SpecRescale.Find(spec, Setting, Grid))
        {
            var factor = offer.Rescale.Factor;
            Assert.Equal(Measure.Of((8 * factor).RoundTo(1), Unit.Leaf), offer.Spec.Lines[2].Planned);
            Assert.True(offer.Spec.Lines[3].Planned!.Low >= 1);
            Assert.Equal(OpenMeasure.Top, offer.Spec.Lines[4].Planned!.Open);
        }
    }

    [Fact]
    public void A_stated_top_up_is_rescaled_and_stays_a_top_up()
    {
        var spec = Drink(MethodKind.Built, "Highball", Ml(40, "Gin"), Line(Measure.Millilitres(80).As(OpenMeasure.Top), "Soda water", LineUse.Topped)).On(IceKind.Cubed);

        var offer = SpecRescale.Find(spec, Setting, Grid)[0];

        Assert.Equal(OpenMeasure.Top, offer.Spec.Lines[1].Planned!.Open);
        Assert.Equal(offer.Rescale.Lines[1].To, offer.Spec.Lines[1].Planned!.Low);
    }

    [Fact]
    public void A_spec_without_measured_lines_has_nothing_to_rescale() =>
        Assert.Empty(SpecRescale.Find(Drink(MethodKind.Built, "Rocks", Line(Measure.Of(2, Unit.Dash), "Aromatic bitters")), Setting, Grid));

    [Fact]
    public void No_strength_bends_further_than_its_lines() =>
        Gen.Select(Gen.Int[8, 30], Gen.Int[4, 16], Gen.Int[4, 16]).Sample((base2, sour2, sweet2) =>
        {
            var spec = Drink(MethodKind.Shaken, "Coupe", Ml(base2 * 2.5, "White rum"), Ml(sour2 * 2.5, "Lime juice"), Ml(sweet2 * 2.5, "Simple syrup"));
            foreach (var offer in SpecRescale.Find(spec, Setting, Grid))
            {
                var bend = offer.Rescale.LargestBend;
                Assert.InRange(offer.After.StartStrength, offer.Before.StartStrength * (1 - bend) / (1 + bend) - 1e-9, offer.Before.StartStrength * (1 + bend) / (1 - bend) + 1e-9);
            }
        });
}
