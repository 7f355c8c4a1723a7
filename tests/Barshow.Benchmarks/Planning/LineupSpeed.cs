using System.Diagnostics;
using System.Globalization;
using Barshow.Engine.Planning.Lineup;

namespace Barshow.Benchmarks.Planning;

/// <summary>How fast a lineup is planned: 10 of 2,000 drinks over 600 ingredients, every kind of requirement on, ten generated libraries, one worker.</summary>
internal static class LineupSpeed
{
    /// <param name="output">Where to.</param>
    /// <param name="libraries">How many libraries.</param>
    /// <param name="anyBase">Whether drinks may leave the bottle out, so that nearly all 2,000 stay open; harder than what is asked.</param>
    public static void Print(TextWriter output, int libraries = 10, bool anyBase = false)
    {
        output.WriteLine($"choose 10 of 2,000 drinks over 600 ingredients, every kind of requirement on{(anyBase ? " but the bottle in every drink" : "")}, one worker");
        output.WriteLine("seed  first_s  within5_s  proof_cost_s  all_levels_s  cost  bound  greedy  proven  outcome");
        var (within, proofs) = (new List<double>(), new List<double>());
        // The first runs of a program are slower while its code is compiled.
        LineupPlanner.Plan(LibraryGenerator.Question(99, 200, 100, 5));
        LineupPlanner.Plan(LibraryGenerator.Question(98));
        for (var seed = 1; seed <= libraries; seed++)
        {
            var question = LibraryGenerator.Question(seed);
            if (anyBase)
                question = question with { BottleInEvery = false, BaseSwaps = false };
            var seen = new List<(double Seconds, Aim? Aim, decimal? Value)>();
            var watch = Stopwatch.StartNew();
            double? proof = null;
            var plan = LineupPlanner.Plan(question, progress =>
            {
                if (progress.Aim is not Aim.Cost && progress.Aim is not null)
                    proof ??= watch.Elapsed.TotalSeconds;
                seen.Add((watch.Elapsed.TotalSeconds, progress.Aim, progress.Value));
            });
            var total = watch.Elapsed.TotalSeconds;
            var cost = plan.Levels.FirstOrDefault(level => level.Aim is Aim.Cost);
            var near = seen.Where(step => step.Aim is Aim.Cost && step.Value <= cost?.Value * 1.05m).Select(step => (double?)step.Seconds).FirstOrDefault();
            within.Add(near ?? double.NaN);
            proofs.Add(cost?.Proven is true ? proof ?? total : double.PositiveInfinity);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{seed,4}  {seen.FirstOrDefault().Seconds,7:0.000}  {near,9:0.000}  {proofs[^1],12:0.00}  {total,12:0.00}  {cost?.Value:0.00}  {cost?.Bound:0.00}  {plan.GreedyCost:0.00}  {string.Join("", plan.Levels.Select(level => level.Proven ? 'y' : 'n'))}  {plan.Outcome} {string.Join("; ", plan.Findings.Select(finding => finding.Message))}"));
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"median: within 5 % after {Median(within):0.000} s (aim 0.5), cost proven after {Median(proofs):0.00} s (aim 3)"));
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }
}
