using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Shooting;

namespace Barshow.Engine.Tests.Shooting;

public class TastingLoadTests
{
    // A government's worked example: a US standard drink is 0.6 fl oz (14 g) of pure alcohol, as in 1.5 fl oz of spirit at 40 % (NIAAA, What Is a Standard Drink).
    [Fact]
    public void An_ounce_and_a_half_of_spirit_at_40_percent_is_one_standard_drink_poured()
    {
        var episode = Kit.Episode(Kit.Drink("Salt Lane Sour", rum: 45));

        var load = TastingLoad.Of(episode, Kit.Bar());

        // 45 ml by the bar convention is 1.014 of 1.5 US fluid ounces.
        Assert.Equal(1.014, load.Poured, 0.001);
        Assert.Equal("US standard drinks of 14 g", load.Unit);
    }

    // One UK unit is 10 ml of pure alcohol: 25 ml of spirit at 40 % (NHS, alcohol units).
    [Fact]
    public void Twenty_five_millilitres_at_40_percent_is_one_unit()
    {
        var bar = Kit.Bar();
        bar = bar with { House = bar.House with { DrinkRegion = DrinkRegion.UnitedKingdom } };

        Assert.Equal(1.0, TastingLoad.Of(Kit.Episode(Kit.Drink("Salt Lane Sour", rum: 25)), bar).Poured, 0.0001);
    }

    [Fact]
    public void Every_take_is_poured_and_sipped_and_doubles_nobody_tastes_count_for_nothing()
    {
        var drink = Kit.Drink("Salt Lane Sour", takes: 3) with { TastedSwapOuts = 1, UntastedSwapOuts = 2 };

        var load = TastingLoad.Of(Kit.Episode(drink), Kit.Bar());
        var one = TastingLoad.Of(Kit.Episode(Kit.Drink("Salt Lane Sour")), Kit.Bar());

        Assert.Equal(4 * one.Poured, load.Poured, 1e-9);
        Assert.Equal(3 * one.Tasted, load.Tasted, 1e-9);
        Assert.True(load.Tasted < load.Poured / 4);
    }

    [Fact]
    public void The_count_carries_its_caution_and_promises_nothing_about_driving_or_blood()
    {
        var finding = Assert.Single(TastingLoad.Of(Kit.Episode(Kit.Drink("Salt Lane Sour")), Kit.Bar()).Findings);

        Assert.Equal(FindingCatalogue.TastingLoad, finding.Kind);
        Assert.Equal("Sip and spit, with food and water; the strongest last. Nobody who is under age, pregnant, on medicines, in recovery or about to drive is asked to taste. Follow local rules.", finding.Remedy);
        foreach (var word in new[] { "blood", "sober", "safe", "legal limit", "may drive" })
            Assert.DoesNotContain(word, finding.Message + finding.Remedy, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_strength_that_is_not_known_is_said()
    {
        var drink = Kit.Drink("Salt Lane Sour");
        drink = drink with { Spec = drink.Spec with { Lines = [.. drink.Spec.Lines, Kit.Line("Grandmother's cordial", Barshow.Engine.Names.Slug.Of("grandmothers cordial"), 10)] } };

        var findings = TastingLoad.Of(Kit.Episode(drink), Kit.Bar()).Findings;

        Assert.Contains(findings, finding => finding.Kind == FindingCatalogue.TastingLoadUnknown && finding.Message == "How strong Grandmother's cordial is, is not known, so Salt Lane Sour may count for more than is shown.");
    }
}
