using Barshow.Engine.Episodes;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Shooting;

/// <summary>Small lineups: the planner's order is compared with every order there is, each timed and judged by plain code.</summary>
public class RunningOrderByTryingEverythingTests
{
    [Theory]
    [InlineData(4, 1)]
    [InlineData(5, 2)]
    [InlineData(5, 3)]
    [InlineData(6, 4)]
    [InlineData(6, 5)]
    [InlineData(7, 6)]
    [InlineData(7, 7)]
    [InlineData(8, 8)]
    [InlineData(9, 9)]
    public void No_order_is_shorter_or_as_short_and_kinder_to_the_palate(int drinks, int seed)
    {
        var episode = ADay(drinks, seed);
        var bar = Kit.Bar();
        var settings = new OrderSettings { Aims = [OrderAim.ShortDay, OrderAim.KindPalate], FurtherBatches = false };

        var order = RunningOrderPlanner.Plan(episode, bar, settings);

        Assert.True(order.Proven);
        Assert.Empty(order.Relaxed);
        var best = Trial.Best(episode, bar, settings);
        Assert.Equal(best, (order.Levels[0].Value, order.Levels[1].Value));
    }

    // Four kinds of set-up, strengths and sugars that repeat so that ties are common, one herb drink, pins and a pair.
    private static Episode ADay(int drinks, int seed)
    {
        (MethodKind Method, Barshow.Engine.Names.Slug Glass)[] setUps = [(MethodKind.Shaken, Kit.Coupe), (MethodKind.Stirred, Kit.Rocks), (MethodKind.Built, Kit.Highball), (MethodKind.Built, Kit.Rocks)];
        return Kit.Episode([.. Enumerable.Range(0, drinks).Select(i =>
        {
            var (method, glass) = setUps[(i * 7 + seed * 3) % 4];
            return Kit.Drink($"Drink {i + 1}", method, glass, rum: 30 + 10 * ((i * 5 + seed) % 5), syrup: 10 + 5 * ((i * 3 + seed) % 3),
                basil: i == seed % drinks, salt: i == (seed + 2) % drinks, pin: i == 0 && seed % 2 == 0 ? Pin.Opener : Pin.None, beside: i == 1 && seed % 3 == 0 ? "Drink 3" : "");
        })]);
    }

    /// <summary>Times an order by hand: introduction, resets with their changes, drinks, comparisons, breaks where a stretch would grow too long. Knows nothing of the planner.</summary>
    private static class Trial
    {
        public static (long Minutes, long Palate) Best(Episode episode, Bar bar, OrderSettings settings)
        {
            var jobs = OrderDay.Of(episode, bar, settings);
            (long, long)? best = null;
            foreach (var order in Permutations([.. jobs.Jobs], 0))
            {
                if (Judge(jobs, order) is { } judged && (best is null || judged.CompareTo(best.Value) < 0))
                    best = judged;
            }

            return best ?? throw new InvalidOperationException("No order keeps every rule.");
        }

        private static (long, long)? Judge(OrderDay day, IReadOnlyList<DrinkJob> order)
        {
            if (day.Jobs.FirstOrDefault(job => job.Drink.Pin is Pin.Opener) is { } opener && order[0] != opener)
                return null;
            foreach (var one in order)
                if (!one.Drink.BesideDrink.IsEmpty)
                {
                    var place = IndexOf(order, one);
                    if (!(place > 0 && order[place - 1].Slug == one.Drink.BesideDrink) && !(place + 1 < order.Count && order[place + 1].Slug == one.Drink.BesideDrink))
                        return null;
                }

            // Breaks are owed, not lost: the fewest are taken as late as the longest stretch allows.
            var (time, since, lost, palate) = (day.Pace.IntroMinutes, 0, 0, 0);
            DrinkJob? before = null;
            foreach (var job in order)
            {
                var change = 0;
                if (before is not null)
                {
                    change = day.Pace.ResetMinutes
                        + (before.SetUp.Station != job.SetUp.Station ? day.Pace.StationChangeMinutes : 0)
                        + (before.SetUp.Method != job.SetUp.Method ? day.Pace.MethodChangeMinutes : 0)
                        + (before.SetUp.Glass != job.SetUp.Glass ? day.Pace.GlassChangeMinutes : 0);
                    palate += Math.Max(0, before.Traits.StrengthPercent - job.Traits.StrengthPercent) + Math.Max(0, before.Traits.SugarPer100 - job.Traits.SugarPer100)
                        + (before.Traits.Lingers && !job.Traits.Lingers ? 30 : 0);
                }

                var comparison = before is not null && (job.Drink.BesideDrink == before.Slug || before.Drink.BesideDrink == job.Slug) ? day.Pace.ComparisonMinutes : 0;
                var minutes = job.Minutes + comparison;
                var outro = job == order[^1] ? day.Pace.OutroMinutes : 0;
                if (time + change + minutes + outro - since > day.Pace.LongestStretchMinutes)
                {
                    time += day.Pace.BreakMinutes;
                    since = time;
                }

                time += change + minutes;
                lost += change;
                if (job.Uses.Any(prep => time > prep.Made + prep.BestMinutes))
                    return null;
                before = job;
            }

            return (lost, palate);
        }

        private static int IndexOf(IReadOnlyList<DrinkJob> order, DrinkJob job)
        {
            for (var i = 0; i < order.Count; i++)
                if (order[i] == job)
                    return i;
            return -1;
        }

        private static IEnumerable<IReadOnlyList<DrinkJob>> Permutations(DrinkJob[] jobs, int from)
        {
            if (from == jobs.Length)
            {
                yield return jobs;
                yield break;
            }

            for (var i = from; i < jobs.Length; i++)
            {
                (jobs[from], jobs[i]) = (jobs[i], jobs[from]);
                foreach (var order in Permutations(jobs, from + 1))
                    yield return order;
                (jobs[from], jobs[i]) = (jobs[i], jobs[from]);
            }
        }
    }
}
