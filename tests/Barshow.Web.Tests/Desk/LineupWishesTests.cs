using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Lineup;
using Barshow.Engine.Specs;
using Barshow.Web.Desk;

namespace Barshow.Web.Tests.Desk;

/// <summary>The planner's form, and a run of it in one window.</summary>
public sealed class LineupWishesTests
{
    private static readonly LineupQuestion Question = new()
    {
        Bar = new(new House(), new IngredientShelf([]), new BarKit()),
        Catalogue = [.. Enumerable.Range(1, 4).Select(number => new Spec { Slug = Slug.Parse($"drink-{number}"), Name = $"Drink {number}", Lines = [new SpecLine { Name = $"Thing {number}" }] })],
        Count = 2,
    };

    [Fact]
    public void The_form_starts_with_what_the_question_asks_and_gives_it_back()
    {
        var asked = Question with { MustHave = [Slug.Parse("drink-2")], Floors = [new(FloorOn.Method, "stirred", 2)], MostThings = 7, FreshMonths = 12, GlassStock = true, ShootBottles = 2 };

        var put = LineupWishes.Of(asked).Put(Question);

        Assert.Equal(asked.MustHave, put.MustHave);
        Assert.Equal(asked.Floors, put.Floors);
        Assert.Equal(asked.Aims, put.Aims);
        Assert.Equal((7, 12, true, 2), (put.MostThings, put.FreshMonths, put.GlassStock, put.ShootBottles));
    }

    [Fact]
    public void An_aim_moves_one_place_and_never_off_the_list()
    {
        var wishes = LineupWishes.Of(Question);

        wishes.Move(Aim.Variety, -1);
        wishes.Move(Aim.Variety, -1);

        Assert.Equal([Aim.Variety, Aim.Cost, Aim.Freshness, Aim.Effort], wishes.Aims);
    }

    [Fact]
    public async Task A_run_ends_with_its_plan_and_what_was_asked()
    {
        using var search = new LineupSearch();
        var told = 0;

        await search.RunAsync(Question, () => Interlocked.Increment(ref told));

        Assert.False(search.IsRunning);
        Assert.Same(Question, search.Asked);
        Assert.Equal(2, search.Plan!.Picks.Count);
        Assert.True(told >= 2);
    }
}
