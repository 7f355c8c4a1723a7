using Barshow.Engine.Ingredients;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Specs;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

public class GarnishDemandTests
{
    private static readonly Ingredient Cherry = new() { Slug = S("cherry"), Name = "Cherry", Kind = IngredientKind.Preserve, Packs = [new("jar", M("60 piece"), 9m)] };

    [Fact]
    public void Drops_that_finish_a_drink_are_poured_not_counted()
    {
        var demand = Of(new Garnish("3 drops of bitters") { Ingredient = S("aromatic-bitters"), Measure = M("3 drop") });

        Assert.Equal(Quantity.Millilitres(0.15), Assert.Single(demand, part => part.Slug == S("aromatic-bitters")).Parts[0].Each);
    }

    [Fact]
    public void What_stands_beside_a_garnish_is_counted_for_itself()
    {
        var demand = Of(new Garnish("lime wheel and cherry")
        {
            Ingredient = S("lime"),
            Measure = M("1 wheel"),
            Beside = [new Garnish("cherry") { Ingredient = S("cherry"), Measure = M("1 piece") }],
        });

        Assert.Equal(M("1 wheel").Unit, Assert.Single(demand, part => part.Slug == S("lime")).Parts[0].Each.Cut);
        Assert.Equal(Quantity.Pieces(1), Assert.Single(demand, part => part.Slug == S("cherry")).Parts[0].Each);
    }

    private static IReadOnlyList<IngredientDemand> Of(Garnish garnish) =>
        DemandPlanner.Of(Episode(Sour with { Garnish = garnish }), PlanningBar.Of(Cherry), DemandFor.Viewer).Ingredients;
}
