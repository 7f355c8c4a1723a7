using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;
using static Barshow.Engine.Tests.Specs.TestBar;

namespace Barshow.Engine.Tests.Specs;

public class MethodAlternativeTests
{
    private static readonly Spec Equal = Drink(MethodKind.Built, "Rocks", Ml(30, "Gin"), Ml(30, "Bitter liqueur"), Ml(30, "Sweet vermouth")).On(IceKind.Cubed);

    [Fact]
    public void The_difference_is_said_in_points_and_millilitres()
    {
        // Built 24.5 % of water: 21.4 % strong. Shaken 25 to 55.6 %: 17.1 to 21.3 %, so 19.2 % in the middle.
        var shaken = MethodAlternative.Of(Equal, MethodKind.Shaken, Setting);

        Assert.Equal("Shaken instead of built: 2.2 points weaker, 14 ml more.", shaken.Sentence);
        Assert.Equal(-2.2, shaken.StrengthPoints, 0.05);
        Assert.Equal(14.2, shaken.ServedMillilitres, 0.1);
    }

    [Fact]
    public void The_other_way_round_is_stronger() =>
        Assert.Equal("Built instead of shaken: 2.2 points stronger, 14 ml less.", MethodAlternative.Of(Equal with { Method = new(MethodKind.Shaken) }, MethodKind.Built, Setting).Sentence);

    [Fact]
    public void A_drink_served_up_is_compared_with_one_built_on_ice() =>
        Assert.True(MethodAlternative.Of(Equal.On(IceKind.None) with { Method = new(MethodKind.Stirred) }, MethodKind.Built, Setting).Analysis.WaterMillilitres.Low > 0);

    [Fact]
    public void All_the_usual_ways_but_its_own_are_compared() =>
        Assert.Equal([MethodKind.Stirred, MethodKind.Shaken, MethodKind.Thrown], MethodAlternative.AllOf(Equal, Setting).Select(each => each.Kind));

    [Fact]
    public void What_is_muddled_in_the_tin_is_shaken_already() =>
        Assert.DoesNotContain(MethodAlternative.AllOf(Equal with { Method = new(MethodKind.MuddledAndShaken) }, Setting), each => each.Kind is MethodKind.Shaken);

    [Fact]
    public void Without_a_method_or_alcohol_there_is_nothing_to_compare()
    {
        Assert.Empty(MethodAlternative.AllOf(Equal with { Method = null }, Setting));
        Assert.Empty(MethodAlternative.AllOf(Drink(MethodKind.Shaken, "Coupe", Ml(60, "Lime juice")), Setting));
        Assert.Throws<ArgumentException>(() => MethodAlternative.Of(Equal with { Method = null }, MethodKind.Built, Setting));
    }
}
