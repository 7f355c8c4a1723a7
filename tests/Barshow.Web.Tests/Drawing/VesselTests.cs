using Barshow.Engine.Specs;
using Barshow.Web.Drawing;

namespace Barshow.Web.Tests.Drawing;

/// <summary>A drawn level is true: it is found from the volume of a solid of revolution.</summary>
public class VesselTests
{
    [Fact]
    public void A_cylinder_holds_pi_r_squared_h()
    {
        var vessel = Vessel.Of([new(0, 30), new(100, 30)], Math.PI * 9 * 10);

        Assert.Equal(100, vessel.Height, 6);
        Assert.Equal(Math.PI * 9 * 5, vessel.VolumeTo(50), 6);
        Assert.Equal(50, vessel.LevelOf(Math.PI * 9 * 5), 6);
    }

    [Fact]
    public void Half_the_volume_of_a_cone_stands_at_the_cube_root_of_a_half_of_its_height()
    {
        var vessel = Vessel.Of([new(0, 0), new(60, 45)], 150);

        Assert.Equal(vessel.Height * Math.Cbrt(0.5), vessel.LevelOf(75), 6);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(164)]
    public void The_level_of_a_volume_holds_that_volume(double millilitres)
    {
        var coupe = Vessel.Of([new(0, 3), new(4, 16), new(10, 28), new(18, 37), new(28, 43), new(40, 46.5), new(48, 47.5)], 165);

        Assert.Equal(165, coupe.Capacity, 6);
        Assert.Equal(millilitres, coupe.VolumeTo(coupe.LevelOf(millilitres)), 6);
    }

    [Fact]
    public void More_than_it_holds_stands_at_the_rim()
    {
        var vessel = Vessel.Of([new(0, 30), new(100, 32)], 300);

        Assert.Equal(vessel.Height, vessel.LevelOf(301), 3);
    }

    [Fact]
    public void A_vessel_of_no_volume_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Vessel.Of([new(0, 30), new(100, 32)], 0));

    [Fact]
    public void A_full_glass_is_drawn_with_its_line_and_an_overfull_one_with_drops()
    {
        var glass = new Glass { Slug = Barshow.Engine.Names.Slug.Parse("coupe"), Name = "Coupe", BrimfulMillilitres = 165 };

        var fits = GlassSketch.Draw(new() { Glass = glass, LiquidMillilitres = 165 }, 1, 112, 150);
        var over = GlassSketch.Draw(new() { Glass = glass, LiquidMillilitres = 166 }, 1, 112, 150);

        Assert.Contains("class=\"wash\"", fits, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"drop\"", fits, StringComparison.Ordinal);
        Assert.Contains("class=\"over\"", over, StringComparison.Ordinal);
        Assert.Contains("class=\"drop\"", over, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_drink_is_drawn_alike_every_time()
    {
        var picture = new GlassPicture { LiquidMillilitres = 150, Ice = IceKind.Crushed, Seed = 42, Garnish = "mint sprig" };

        Assert.Equal(GlassSketch.Draw(picture, 1, 100, 150), GlassSketch.Draw(picture, 1, 100, 150));
    }

    [Fact]
    public void Names_in_a_drawing_are_escaped()
    {
        var drawn = BottleSketch.Draw(700, [new("<script>alert(1)</script>", 640)], 300);

        Assert.DoesNotContain("<script>", drawn, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;", drawn, StringComparison.Ordinal);
    }
}
