using Barshow.Engine.Planning.Lineup;
using static Barshow.Engine.Tests.Planning.LineupBar;
using static Barshow.Engine.Tests.Planning.PlanningBar;

namespace Barshow.Engine.Tests.Planning;

public sealed class LineupTakeOverTests
{
    [Fact]
    public void Drinks_that_stay_keep_their_place_and_takes_and_new_ones_follow()
    {
        var episode = Episode(MintSour, LongRum, BitterRum);
        episode = episode with
        {
            Lineup = [episode.Lineup[0], episode.Lineup[1] with { Takes = 4, BesideDrink = S("mint-sour") }, episode.Lineup[2]],
            ShootOrder = [S("bitter-rum"), S("long-rum")],
        };
        var plan = LineupPlanner.Plan(Question() with { Aims = [Aim.Cost] });

        var taken = plan.Into(episode);

        Assert.Equal(["Long rum", "Blended rum", "Rum sour"], taken.Lineup.Select(drink => drink.Name));
        Assert.Equal(4, taken.Lineup[0].Takes);
        Assert.True(taken.Lineup[0].BesideDrink.IsEmpty);
        Assert.Equal(S("rum-sour"), taken.Lineup[2].Library);
        Assert.Equal([S("long-rum")], taken.ShootOrder);
    }

    [Fact]
    public void A_plan_without_drinks_leaves_the_episode_as_it_is()
    {
        var episode = Episode(Sour);

        Assert.Same(episode, LineupPlanner.Plan(Question() with { Count = 40 }).Into(episode));
    }

    [Fact]
    public void An_exchange_keeps_the_rest_and_takes_the_replacement()
    {
        var question = Question() with { Aims = [Aim.Cost] };
        var plan = LineupPlanner.Plan(question);

        var again = LineupPlanner.Plan(question.Exchanged(plan, S("long-rum")));

        Assert.Equal("Blended rum, Mint sour, Rum sour", Drinks(again));
    }

    [Fact]
    public void An_episode_asks_for_as_many_drinks_as_its_title_promises()
    {
        Assert.Equal(9, LineupQuestions.CountOf(Episode(Sour) with { Title = "Nine drinks, one bottle" }));
        Assert.Equal(1, LineupQuestions.CountOf(Episode(Sour)));
        Assert.Equal(LineupQuestions.UsualCount, LineupQuestions.CountOf(Episode()));
    }
}
