using System.Diagnostics;
using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Lineup;

namespace Barshow.Benchmarks.Planning;

/// <summary>How fast the baskets, the ladder and the fruit plans of twelve drinks are worked out, and how fast replacements are found.</summary>
internal static class StockSpeed
{
    public static void Print(TextWriter output)
    {
        var question = LibraryGenerator.Question(1, count: 12);
        var episode = new Episode
        {
            Slug = question.Catalogue[0].Slug,
            Title = "",
            Bottle = question.Bottle,
            Takes = 2,
            Lineup = [.. question.Catalogue.Where(spec => spec.Garnish is not null).Take(12).Select(spec => new LineupDrink { Spec = spec })],
        };
        var times = new List<double>();
        for (var round = 0; round < 30; round++)
        {
            var watch = Stopwatch.StartNew();
            BasketPlanner.Plan(episode, question.Bar, DemandFor.Shoot);
            var viewer = BasketPlanner.Plan(episode, question.Bar, DemandFor.Viewer);
            BasketLadder.Of(viewer, [.. episode.Lineup.Select(drink => drink.Spec.Slug)]);
            times.Add(watch.Elapsed.TotalMilliseconds);
        }

        times.Sort();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"both baskets with their fruit plans and the ladder of 12 drinks: median {times[times.Count / 2]:0.0} ms, slowest after warming up {times[^2]:0.0} ms (aim 50)"));

        var book = CandidateBook.Of(LibraryGenerator.Question(1));
        var lineup = new LineupStart(book, default).Found(book.Question.Aims);
        var replacements = Stopwatch.StartNew();
        new LineupReasons(book, lineup, default).Picks();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"reasons and best replacements of 10 picks among 2,000 drinks: {replacements.Elapsed.TotalMilliseconds:0} ms"));
    }
}
