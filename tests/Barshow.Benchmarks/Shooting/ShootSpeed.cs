using System.Diagnostics;
using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Shooting.Mise;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;
using Barshow.Engine.Tests.Shooting;

namespace Barshow.Benchmarks.Shooting;

/// <summary>Generated shoot days of fourteen drinks: how long until a first order, until every level is proven, and until the mise has its hours.</summary>
internal static class ShootSpeed
{
    private const int Drinks = 14;

    public static void Print(TextWriter to, int days)
    {
        List<double> first = [], orders = [], mises = [];
        var proven = 0;
        for (var seed = 1; seed <= days; seed++)
        {
            var (episode, bar) = Day(seed);
            var clock = Stopwatch.StartNew();
            double? found = null;
            var order = RunningOrderPlanner.Plan(episode, bar, progress: new Told(said => found ??= said.Doing.StartsWith("a first", StringComparison.Ordinal) ? clock.Elapsed.TotalSeconds : null));
            var ordered = clock.Elapsed.TotalSeconds;
            var verdict = RunningOrderCheck.Check(order, episode, bar);
            clock.Restart();
            var mise = MisePlanner.Plan(episode, bar, order);
            var timed = clock.Elapsed.TotalSeconds;
            first.Add(found ?? ordered);
            orders.Add(ordered);
            mises.Add(timed);
            proven += order.Proven ? 1 : 0;
            to.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"day {seed,2}: first {found:0.00} s, order {ordered:0.00} s {(order.Proven ? "proven" : "UNPROVEN")} [{string.Join(" ", order.Levels.Select(level => $"{level.Value}/{level.Bound}"))}], re-check {(verdict.Faults.Count == 0 && verdict.Broken.Count == order.Relaxed.Count ? "clean" : "FAILS")}; mise of {mise.Tasks.Count} tasks {timed:0.00} s [{string.Join(" ", mise.Levels.Select(level => $"{level.Value}/{level.Bound}"))}] {(MiseCheck.Faults(mise).Count == 0 ? "clean" : "FAILS")}"));
        }

        to.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{days} days of {Drinks} drinks: first order median {Median(first):0.00} s, order median {Median(orders):0.00} s, worst {orders.Max():0.00} s, proven {proven} of {days}; mise median {Median(mises):0.00} s, worst {mises.Max():0.00} s."));
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }

    /// <summary>A day with four methods, three glasses of which two run out, short-lived syrup, salt rims, chilled glasses, doubles, garnish, pins and a pair.</summary>
    private static (Episode Episode, Bar Bar) Day(int seed)
    {
        var chance = new Random(seed);
        MethodKind[] methods = [MethodKind.Shaken, MethodKind.Stirred, MethodKind.Built, MethodKind.MuddledAndBuilt];
        Slug[] glasses = [Kit.Coupe, Kit.Highball, Kit.Rocks];
        var lineup = Enumerable.Range(1, Drinks).Select(i =>
        {
            var drink = Kit.Drink($"Drink {i}", methods[chance.Next(4)], glasses[chance.Next(3)], rum: 30 + 5 * chance.Next(7), syrup: 5 * chance.Next(2, 6),
                basil: chance.Next(5) == 0, salt: chance.Next(6) == 0, chilled: chance.Next(4) == 0, pin: i == 1 ? Pin.Opener : i == Drinks ? Pin.Closer : Pin.None, beside: i == 3 ? "Drink 4" : "");
            var garnish = chance.Next(3) switch { 0 => new Garnish("lime twist") { Ingredient = Slug.Of("lime"), Measure = Measure.Of(1, Unit.Twist) }, 1 => new("lime wheel") { Ingredient = Slug.Of("lime"), Measure = Measure.Of(1, Unit.Wheel) }, _ => null };
            return drink with { TastedSwapOuts = 0, UntastedSwapOuts = 1, Spec = drink.Spec with { Garnish = garnish } };
        }).ToArray();
        return (Kit.Episode(lineup) with { Bottle = new() { Name = "White rum", Ingredient = Kit.Rum, Millilitres = 700 } }, Kit.Bar(hands: 3, coupes: 8, highballs: 8, basilMinutes: 150));
    }

    private sealed class Told(Action<PlanningProgress> tell) : IProgress<PlanningProgress>
    {
        public void Report(PlanningProgress value) => tell(value);
    }
}
