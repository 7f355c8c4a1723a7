using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;
using static Barshow.Engine.Tests.Specs.TestBar;

namespace Barshow.Engine.Tests.Specs;

public class DilutionTests
{
    // Liquid Intelligence (Arnold, 2014), p. 123, as excerpts that credit it print the two formulas; computed by hand where each holds.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(0.15)]
    [InlineData(0.3)]
    [InlineData(0.45)]
    public void The_stirred_fit_is_the_published_formula(double strength) =>
        Assert.Equal(-1.21 * strength * strength + 1.246 * strength + 0.145, DilutionModel.StirredFit(strength), 12);

    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(0.15)]
    [InlineData(0.3)]
    [InlineData(0.45)]
    public void The_shaken_fit_is_the_published_formula(double strength) =>
        Assert.Equal(-1.567 * strength * strength + 1.742 * strength + 0.203, DilutionModel.ShakenFit(strength), 12);

    [Theory]
    [InlineData(15, 0.30467)]
    [InlineData(18, 0.33008)]
    [InlineData(20, 0.34580)]
    [InlineData(22, 0.36056)]
    [InlineData(25, 0.38087)]
    [InlineData(28, 0.39902)]
    [InlineData(30, 0.40990)]
    [InlineData(32, 0.41982)]
    [InlineData(35, 0.43288)]
    [InlineData(38, 0.44376)]
    [InlineData(40, 0.44980)]
    [InlineData(43, 0.45705)]
    [InlineData(45, 0.46067)]
    public void Stirred_drinks_stay_as_they_were_computed(double percent, double share) => Assert.Equal(share, DilutionModel.StirredFit(percent / 100), 0.00001);

    [Theory]
    [InlineData(15, 0.42904)]
    [InlineData(18, 0.46579)]
    [InlineData(20, 0.48872)]
    [InlineData(22, 0.51040)]
    [InlineData(25, 0.54056)]
    [InlineData(28, 0.56791)]
    [InlineData(30, 0.58457)]
    [InlineData(32, 0.59998)]
    [InlineData(35, 0.62074)]
    [InlineData(38, 0.63869)]
    [InlineData(40, 0.64908)]
    [InlineData(43, 0.66232)]
    [InlineData(45, 0.66958)]
    public void Shaken_drinks_stay_as_they_were_computed(double percent, double share) => Assert.Equal(share, DilutionModel.ShakenFit(percent / 100), 0.00001);

    // Worked examples of the fits: volumes and strengths before ice, dilution, volume and strength after.
    [Theory]
    [InlineData("60 Rye whiskey + 30 Sweet vermouth", MethodKind.Stirred, 38.6667, 0.44588, 130.13, 26.743)]
    [InlineData("30 Gin + 30 Bitter liqueur + 30 Sweet vermouth", MethodKind.Stirred, 26.6667, 0.39122, 125.21, 19.168)]
    [InlineData("45 Gin + 22.5 Orange liqueur + 22.5 Lemon juice", MethodKind.Shaken, 30.0000, 0.58457, 142.61, 18.933)]
    public void Worked_drinks_come_out_as_they_were_computed(string lines, MethodKind method, double start, double share, double millilitres, double percent)
    {
        var analysis = Drink(method, "Coupe", [.. lines.Split(" + ").Select(line => Ml(double.Parse(line.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), line[(line.IndexOf(' ', StringComparison.Ordinal) + 1)..]))]).Analyse();

        Assert.Equal(start, analysis.StartStrength * 100, 3);
        Assert.Equal(share, analysis.Dilution.Published!.Value, 4);
        Assert.Equal(millilitres, analysis.ServedMillilitres.High, 0.05);
        Assert.Equal(percent, analysis.ServedStrength.Low * 100, 0.01);
    }

    [Theory]
    [InlineData(0.1499)]
    [InlineData(0.4501)]
    [InlineData(double.NaN)]
    public void The_fits_are_not_stretched_beyond_15_to_45_percent(double strength)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DilutionModel.StirredFit(strength));
        Assert.Throws<ArgumentOutOfRangeException>(() => DilutionModel.ShakenFit(strength));
    }

    // Trade habit, enthusiast and trade pages: stirred 20 to 25 %, shaken 25 to 30 % of the starting volume.
    [Theory]
    [Trait("Evidence", "read")]
    [InlineData(MethodKind.Stirred, 0.20)]
    [InlineData(MethodKind.Shaken, 0.25)]
    public void The_lower_end_is_trade_habit_where_a_fit_holds(MethodKind method, double habit)
    {
        var dilution = DilutionModel.Of(method, IceKind.None, 0.3);

        Assert.Equal(habit, dilution.Share.Low);
        Assert.Equal(dilution.Published, dilution.Share.High);
    }

    // Liquid Intelligence, p. 123, drinks built over ice and stirred briefly: 0.24 and 0.25.
    [Fact]
    [Trait("Evidence", "read")]
    public void A_built_drink_takes_a_quarter_of_its_volume()
    {
        var dilution = DilutionModel.Of(MethodKind.Built, IceKind.Cubed, 0.3);

        Assert.Equal(0.24, dilution.Share.Low);
        Assert.Equal(0.25, dilution.Share.High);
    }

    [Fact]
    public void The_one_published_blended_figure_lies_within_the_range()
    {
        var share = DilutionModel.Of(MethodKind.Blended, IceKind.None, 0.2).Share;

        Assert.InRange(0.90, share.Low, share.High);
    }

    [Theory]
    [InlineData(MethodKind.Layered, IceKind.None)]
    [InlineData(MethodKind.Built, IceKind.None)]
    [InlineData(MethodKind.MuddledAndBuilt, IceKind.None)]
    public void What_meets_no_ice_is_not_diluted(MethodKind method, IceKind ice) => Assert.Equal(0, DilutionModel.Of(method, ice, 0.3).Share.High);

    [Fact]
    public void A_thrown_drink_lies_between_stirred_and_shaken()
    {
        var share = DilutionModel.Of(MethodKind.Thrown, IceKind.None, 0.25).Share;

        Assert.Equal(DilutionModel.StirredFit(0.25), share.Low);
        Assert.Equal(DilutionModel.ShakenFit(0.25), share.High);
    }

    [Theory]
    [InlineData(MethodKind.Stirred, 0.0)]
    [InlineData(MethodKind.Stirred, 0.1499)]
    [InlineData(MethodKind.Shaken, 0.0)]
    [InlineData(MethodKind.Shaken, 0.08)]
    [InlineData(MethodKind.Built, 0.05)]
    [InlineData(MethodKind.Thrown, 0.0)]
    [InlineData(MethodKind.Swizzled, 0.0)]
    [InlineData(MethodKind.Blended, 0.0)]
    public void Below_15_percent_no_end_is_less_than_heat_balance_demands(MethodKind method, double strength)
    {
        var dilution = DilutionModel.Of(method, IceKind.Cubed, strength);

        Assert.True(dilution.Share.Low >= HeatBalance.MeltPerMillilitre(strength, 0).Low);
        Assert.Null(dilution.Published);
    }

    [Fact]
    public void Both_ends_of_a_range_are_explained()
    {
        var weak = DilutionModel.Of(MethodKind.Shaken, IceKind.None, 0.05);
        var strong = DilutionModel.Of(MethodKind.Stirred, IceKind.None, 0.5);

        Assert.Equal("Heat balance: less melt does not cool the drink to 0 °C.", weak.LowEnd);
        Assert.Equal("The published fit for shaken drinks at 15 %, the weakest it was made for.", weak.HighEnd);
        Assert.Equal("Trade habit for stirred drinks, 20 % of the starting volume and less than the fit; big dry ice and a short time come near it.", strong.LowEnd);
        Assert.Equal("The published fit for stirred drinks at 45 %, the strongest it was made for; above it none is published.", strong.HighEnd);
    }
}
