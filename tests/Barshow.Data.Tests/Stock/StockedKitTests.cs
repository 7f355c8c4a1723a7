using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Stock;

public class StockedKitTests
{
    public static TheoryData<string> Glasses => [.. DemoData.Kit.Glasses.Select(glass => glass.Slug.Text)];

    [Fact]
    public void Fifteen_glasses_and_three_jiggers_stand_on_the_bar()
    {
        Assert.True(DemoData.Kit.Glasses.Count >= 15, $"There are {DemoData.Kit.Glasses.Count} glasses.");
        Assert.Equal(3, DemoData.Kit.Jiggers.Count);
        Assert.Distinct(DemoData.Kit.Glasses.Select(glass => glass.Slug));
        Assert.Distinct(DemoData.Kit.Tools.Select(tool => tool.Slug));
    }

    [Theory, MemberData(nameof(Glasses))]
    public void The_drawn_inside_of_a_glass_holds_its_brimful(string slug)
    {
        var glass = Glass(slug);

        // Each stretch between two points is the frustum of a cone: V = πh(R² + Rr + r²)/3.
        var cubicMillimetres = glass.Profile!.Points.Zip(glass.Profile.Points.Skip(1), (low, high) =>
            Math.PI * (high.Height - low.Height) * (low.Radius * low.Radius + low.Radius * high.Radius + high.Radius * high.Radius) / 3).Sum();

        Assert.InRange(cubicMillimetres / 1000 / glass.BrimfulMillilitres, 0.98, 1.02);
    }

    [Theory, MemberData(nameof(Glasses))]
    public void The_profile_of_a_glass_rises_from_its_floor(string slug)
    {
        var points = Glass(slug).Profile!.Points;

        Assert.Equal(0, points[0].Height);
        Assert.All(points, point => Assert.True(point.Radius > 0));
        Assert.All(points.Zip(points.Skip(1)), pair => Assert.True(pair.Second.Height > pair.First.Height));
    }

    [Theory, MemberData(nameof(Glasses))]
    public void Every_glass_that_does_instead_is_there(string slug) =>
        Assert.All(Glass(slug).Instead, instead => Assert.True(DemoData.Kit.TryGetGlass(instead, out _), $"There is no {instead}."));

    [Theory]
    [InlineData("coupe", "coupe")]
    [InlineData("Old Fashioned glass", "rocks")]
    [InlineData("martini glass", "cocktail-glass")]
    [InlineData("nick-and-nora", "nick-and-nora")]
    [InlineData("tall glass", "highball")]
    [InlineData("julep cup", "metal-cup")]
    public void A_glass_is_found_by_the_names_people_use(string name, string slug) =>
        Assert.Equal(slug, DemoData.Kit.GlassNamed(name)?.Slug.Text);

    [Fact]
    public void Jiggers_show_marks_in_ounces_and_in_millilitres()
    {
        var units = DemoData.Kit.Jiggers.SelectMany(jigger => jigger.Marks).Select(mark => mark.Unit).Distinct();

        Assert.Equal([Unit.Ounce, Unit.Millilitre], units);
    }

    private static Glass Glass(string slug) => DemoData.Kit.TryGetGlass(Slug.Parse(slug), out var glass) ? glass : throw new InvalidOperationException(slug);
}
