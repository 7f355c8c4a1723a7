using Barshow.Engine.Names;
using Google.OrTools.Sat;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>The ladder of a long lineup, by a maximum-cover model for each number of things.</summary>
internal static class LadderBySolver
{
    // Cents, and one more drink is worth more than any basket.
    private const long Drink = 1_000_000_000;

    public static List<LadderStep> Climb(Basket basket, IReadOnlyList<Slug> drinks, List<ThingSet> needs)
    {
        var steps = new List<LadderStep>();
        for (var things = 0; things <= basket.Items.Count && (steps.Count == 0 || steps[^1].Drinks.Count < drinks.Count); things++)
        {
            var step = Best(basket, drinks, needs, things);
            if (step.Drinks.Count > (steps.Count == 0 ? 0 : steps[^1].Drinks.Count))
                steps.Add(step);
        }

        return steps;
    }

    private static LadderStep Best(Basket basket, IReadOnlyList<Slug> drinks, List<ThingSet> needs, int things)
    {
        var model = new CpModel();
        var buy = basket.Items.Select(item => model.NewBoolVar(item.Slug.Text)).ToArray();
        var make = drinks.Select(drink => model.NewBoolVar(drink.Text)).ToArray();
        for (var i = 0; i < make.Length; i++)
        {
            foreach (var member in needs[i].Members)
                model.AddImplication(make[i], buy[member]);
        }

        model.Add(LinearExpr.Sum(buy) <= things);
        var cents = basket.Items.Select(item => -(long)Math.Min((item.Cost ?? 0) * 100, 1_000_000));
        model.Maximize(LinearExpr.WeightedSum(make, make.Select(_ => Drink)) + LinearExpr.WeightedSum(buy, cents));
        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1,max_deterministic_time:5" };
        solver.Solve(model);
        return new(
            [.. basket.Items.Where((_, index) => solver.BooleanValue(buy[index]) && needs.Where((_, drink) => solver.BooleanValue(make[drink])).Any(need => need.Members.Contains(index)))],
            [.. drinks.Where((_, index) => solver.BooleanValue(make[index]))]);
    }
}
