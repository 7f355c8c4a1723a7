using System.Globalization;

namespace Barshow.Engine.Shooting.Order;

/// <summary>Breaks an order's cost into its parts.</summary>
internal static class OrderCosts
{
    public static IReadOnlyList<OrderCost> Of(OrderDay day, IReadOnlyList<OrderStop> stops)
    {
        List<OrderCost> costs = [];
        var pairs = stops.Select((stop, i) => (From: i == 0 ? day.LastFilmed : stops[i - 1].Job, To: stop.Job)).ToList();
        var resets = pairs.Count(pair => pair.From is not null);
        Add("resets", resets * day.Pace.ResetMinutes, Times(resets, "reset"));
        var changes = pairs.Sum(pair => day.ChangeMinutes(pair.From, pair.To)) - resets * day.Pace.ResetMinutes;
        Add("changes of set-up", changes, string.Join("; ", pairs.Select(pair => (pair.To, Changes: OrderDay.Changes(pair.From, pair.To))).Where(pair => pair.Changes.Count > 0).Select(pair => $"before {pair.To.Name}: {string.Join(", ", pair.Changes)}")));
        Add("wash-ups", stops.Count(stop => stop.Wash) * day.Pace.WashUpMinutes, Before(stops.Where(stop => stop.Wash)));
        Add("further batches", stops.Sum(stop => stop.Batches.Sum(prep => prep.BatchMinutes)), string.Join(", ", stops.SelectMany(stop => stop.Batches).Select(prep => prep.Name)));
        Add("meal", stops.Count(stop => stop.Meal) * day.Pace.MealMinutes, Before(stops.Where(stop => stop.Meal)));
        Add("breaks", stops.Count(stop => stop.Break) * day.Pace.BreakMinutes, Before(stops.Where(stop => stop.Break)));
        Add("waiting", stops.Sum(stop => stop.Wait), Before(stops.Where(stop => stop.Wait > 0)));
        var falls = pairs.Where(pair => OrderDay.PalatePoints(pair.From, pair.To) > 0).ToList();
        if (falls.Count > 0)
            costs.Add(new("hard on the palate", falls.Sum(pair => OrderDay.PalatePoints(pair.From, pair.To)), "points", string.Join("; ", falls.Select(pair => $"{pair.To.Name} after {pair.From!.Name}"))));
        return costs;

        void Add(string what, int minutes, string reason)
        {
            if (minutes > 0)
                costs.Add(new(what, minutes, "minutes", reason));
        }
    }

    private static string Before(IEnumerable<OrderStop> stops) => "before " + string.Join(", ", stops.Select(stop => stop.Job.Name));

    private static string Times(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
