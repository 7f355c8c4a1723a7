using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;
using CsCheck;

namespace Barshow.Engine.Tests.Specs;

public class HeatBalanceTests
{
    // First law, with the latent heat of ice and the specific heats named in HeatBalance; computed elsewhere, grams for 100 ml.
    [Theory]
    [InlineData(25, -5, 29.6, 33.3)]
    [InlineData(25, 0, 22.2, 25.0)]
    [InlineData(35, -2, 23.8, 27.8)]
    [InlineData(35, 0, 21.1, 24.6)]
    [InlineData(40, -5, 27.3, 32.6)]
    public void The_melt_for_a_temperature_stays_as_it_was_computed(double percent, double celsius, double low, double high)
    {
        var melt = HeatBalance.MeltPerMillilitre(percent / 100, celsius);

        Assert.Equal(low, melt.Low * 100, 0.06);
        Assert.Equal(high, melt.High * 100, 0.06);
    }

    [Theory]
    [InlineData(20, 33, 36, -6.5, -6.4)]
    [InlineData(25, 35, 39, -8.3, -8.0)]
    [InlineData(30, 37, 42, -10.1, -9.7)]
    [InlineData(35, 40, 45, -12.0, -11.5)]
    [InlineData(40, 42, 49, -13.9, -13.2)]
    public void Melt_and_cold_at_equilibrium_stay_as_they_were_computed(double percent, double low, double high, double coldest, double warmest)
    {
        var balance = HeatBalance.Of(100, percent / 100);

        Assert.Equal(low, balance.AtEquilibriumMillilitres.Low, 0.5);
        Assert.Equal(high, balance.AtEquilibriumMillilitres.High, 0.5);
        Assert.Equal(coldest, balance.EquilibriumCelsius.Low, 0.06);
        Assert.Equal(warmest, balance.EquilibriumCelsius.High, 0.06);
    }

    // Engineering ToolBox, ethanol freeze protected water solutions: rounded to 1 °C, so each is a bound and no more.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(0, 0)]
    [InlineData(10, -4)]
    [InlineData(20, -9)]
    [InlineData(30, -15)]
    [InlineData(40, -23)]
    [InlineData(50, -32)]
    public void No_drink_gets_colder_than_where_it_freezes(double percent, double freezing)
    {
        Assert.Equal(freezing, HeatBalance.FreezingCelsius(percent / 100), 1.0);
        Assert.True(HeatBalance.Of(100, percent / 100).EquilibriumCelsius.Low >= freezing - 1);
    }

    // Food chemistry textbook appendix: 334 kJ/kg; FAO Fisheries Technical Paper 331: 80 kcal/kg. With water of 4.182 kJ/(kg K) from a property table,
    // a gram of water cooled by 20 K melts 20 x 4.182 / 334 g of ice.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(334)]
    [InlineData(80 * 4.184)]
    public void Water_melts_what_the_handbooks_latent_heat_says(double kilojoules) =>
        Assert.Equal(20 * 4.182 / kilojoules * 0.9982, HeatBalance.MeltPerMillilitre(0, 0).Low, 0.0015);

    // CRC Handbook and an engineering table: ice weighs 0.917 kg/l; USDA SR 26, record 14429: three cubes weigh 64 g.
    [Fact]
    [Trait("Evidence", "read")]
    public void Ice_weighs_what_the_handbook_says() => Assert.Equal(0.917, IceFill.GramsPerMillilitre);

    [Fact]
    [Trait("Evidence", "read")]
    public void Three_cubes_weigh_what_the_nutrient_database_says() => Assert.Equal(64, 3 * IceFill.PieceGrams(IceKind.Cubed), 9);

    // FAO Fisheries Technical Paper 331, chapter 12: stowage of flake ice 2.2 to 2.3 and of crushed block ice 1.4 to 1.5 m3/t; solid ice fills 1 / (0.917 x stowage).
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(2.3, true)]
    [InlineData(1.4, false)]
    public void Crushed_ice_packs_between_flakes_and_crushed_blocks(double cubicMetresPerTonne, bool isLoosest)
    {
        var packing = IceFill.PackingOf(IceKind.Crushed);
        var share = 1 / (IceFill.GramsPerMillilitre * cubicMetresPerTonne);

        Assert.True(isLoosest ? packing.Low >= share : packing.High <= share);
    }

    [Fact]
    public void A_colder_drink_takes_more_melt() =>
        Gen.Select(Gen.Double[0, 0.6], Gen.Double[-15, 19], Gen.Double[0.01, 5]).Sample((strength, celsius, colder) =>
            Assert.True(HeatBalance.MeltPerMillilitre(strength, celsius - colder).Low > HeatBalance.MeltPerMillilitre(strength, celsius).Low));
}
