using System.Diagnostics;
using System.Globalization;
using Barshow.Engine.Planning.Lineup;
using Google.OrTools.Sat;

namespace Barshow.Benchmarks.Planning;

/// <summary>Where the time of a plan goes.</summary>
internal static class LineupStages
{
    public static void Print(TextWriter output, int seed)
    {
        for (var round = 0; round < 3; round++)
        {
            var question = LibraryGenerator.Question(seed);
            var watch = Stopwatch.StartNew();
            double Lap()
            {
                var lap = watch.Elapsed.TotalMilliseconds;
                watch.Restart();
                return lap;
            }

            var book = CandidateBook.Of(question);
            var read = Lap();
            var greedy = new LineupStart(book, default).Greedy(question.Aims);
            var greedily = Lap();
            var start = new LineupStart(book, default).Found(question.Aims);
            var started = Lap();
            var model = new LineupModel(book);
            var cost = model.ValueOf(Aim.Cost);
            model.Model.Minimize(cost);
            model.StartFrom(start);
            var modelled = Lap();
            var solver = new CpSolver { StringParameters = LineupPlanner.Parameters(20) };
            solver.Solve(model.Model);
            var solved = Lap();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"book {read:0} ms, greedy {greedily:0} ms, start {started:0} ms, model {modelled:0} ms, cost solved {solved:0} ms; open {model.Open.Count()} of {book.Candidates.Count}, things {book.Things.Count}, start cost {Cost(book, start)}, solved {solver.ObjectiveValue}, deterministic {solver.Response!.DeterministicTime:0.00}"));
        }
    }

    private static string Cost(CandidateBook book, IEnumerable<int> lineup)
    {
        var tally = new LineupTally(book);
        foreach (var place in lineup)
            tally.Add(place);
        return string.Create(CultureInfo.InvariantCulture, $"{tally.Cost} broken {tally.Broken()}");
    }
}
