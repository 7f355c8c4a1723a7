using Barshow.Engine.Planning.Lineup;
using static Barshow.Engine.Tests.Planning.LineupBar;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

public sealed class AlikeDrinksTests
{
    private static readonly Barshow.Engine.Ingredients.Ingredient Gin = WhiteRum with { Slug = S("gin"), Name = "Gin", Packs = [new("700 ml bottle", M("700 ml"), 25m)] };

    [Fact]
    public void A_base_swapped_into_a_drink_that_is_there_already_is_not_chosen_in_its_place()
    {
        var ginSour = RumSour with { Slug = S("a-gin-sour"), Name = "A gin sour", Lines = [Line("50 ml", "gin"), .. RumSour.Lines.Skip(1)], BaseSwaps = [S("white-rum")] };
        var question = Question(RumSour, LongRum, ginSour) with { Count = 2, BaseSwaps = true, Aims = [Aim.Cost] };
        question = question with { Bar = question.Bar with { Ingredients = new([.. question.Bar.Ingredients.All, Gin]) } };

        Assert.Equal("Long rum, Rum sour", Drinks(LineupPlanner.Plan(question)));
    }

    [Fact]
    public void Drinks_of_other_amounts_or_methods_are_two_drinks()
    {
        var dry = RumSour with { Slug = S("dry-sour"), Name = "Dry sour", Lines = [Line("60 ml", "white-rum"), Line("25 ml", "lime-juice"), Line("5 ml", "sugar-syrup")] };
        var shelf = Of().Ingredients;

        Assert.True(AlikeDrinks.Same(RumSour, RumSour with { Slug = S("other") }, shelf));
        Assert.False(AlikeDrinks.Same(RumSour, dry, shelf));
        Assert.False(AlikeDrinks.Same(RumSour, RumSour with { Method = new(Barshow.Engine.Specs.MethodKind.Blended) }, shelf));
    }
}
