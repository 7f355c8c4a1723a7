using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Citrus;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Shooting.Order;
using Humanizer;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>Derives what must be ready from the lineup and from when each drink is filmed. Hours are bounds here; the schedule sets them.</summary>
internal sealed partial class MiseTasks
{
    /// <summary>The day before's work ends this long before the call: 20:00 for a call at 10:00. A house rule.</summary>
    public static readonly TimeSpan DayBeforeEnds = TimeSpan.FromHours(-14);

    private readonly Episode _episode;
    private readonly Bar _bar;
    private readonly ShootingPace _pace;
    private readonly RunningOrder _order;
    private readonly DemandList _demand;
    private readonly FruitPlans _fruit;
    private readonly List<MiseTask> _tasks = [];
    private readonly List<Finding> _findings = [];

    private MiseTasks(Episode episode, Bar bar, ShootingPace pace, RunningOrder order)
    {
        _bar = bar;
        _pace = pace;
        _order = order;
        // Rehearsal lies before the day, so the day's mise leaves it out; the shopping list holds it.
        var day = bar with { House = bar.House with { RehearsalsPerDrink = 0 } };
        _episode = episode with { Lineup = [.. episode.Lineup.Select(drink => drink with { NewTechnique = false })] };
        _demand = DemandPlanner.Of(_episode, day, DemandFor.Shoot);
        _fruit = FruitPlans.Of(_demand, bar.Ingredients);
    }

    private TimeSpan PrepEnds => TimeSpan.FromMinutes(-_pace.HandsCleanMinutes);

    public static (IReadOnlyList<MiseTask> Tasks, IReadOnlyList<Finding> Findings) Of(Episode episode, Bar bar, ShootingPace pace, RunningOrder order)
    {
        MiseTasks tasks = new(episode, bar, pace, order);
        tasks.AddPreps();
        tasks.AddJuices();
        tasks.AddCuts();
        tasks.AddRims();
        tasks.AddGlasses();
        tasks.AddIce();
        tasks.AddStations();
        tasks.AddDoubles();
        tasks.AddTrays();
        tasks.AddBottle();
        tasks.AddUnseen();
        var keys = tasks._tasks.Select(task => task.Key).ToHashSet();
        return ([.. tasks._tasks.Select(task => task with { After = [.. task.After.Where(keys.Contains).Distinct()] })], tasks._findings);
    }

    /// <summary>When a drink's first take begins; the call when no order was made.</summary>
    private TimeSpan FirstUse(IEnumerable<Slug> drinks) => drinks
        .SelectMany(drink => _order.Blocks.Where(block => block.Kind is BlockKind.Take && block.Drink == drink).Select(block => block.Start))
        .DefaultIfEmpty(TimeSpan.Zero).Min();

    private TimeSpan LastUse(IEnumerable<Slug> drinks) => drinks
        .SelectMany(drink => _order.Blocks.Where(block => block.Drink == drink && block.Kind is not BlockKind.Reset and not BlockKind.Wait).Select(block => block.End))
        .DefaultIfEmpty(_order.Wrap).Max();

    private static TimeSpan Earlier(TimeSpan one, TimeSpan other) => one < other ? one : other;

    private int MakesOf(LineupDrink drink) => _episode.TakesOf(drink) + drink.TastedSwapOuts;

    private static int DoublesOf(LineupDrink drink) => drink.TastedSwapOuts + drink.UntastedSwapOuts;

    private static TimeSpan Minutes(double minutes) => TimeSpan.FromMinutes(Math.Max(1, Math.Ceiling(minutes)));

    private string NamesOf(IEnumerable<Slug> drinks) => string.Join(", ", drinks.Select(slug => _episode.Lineup.FirstOrDefault(drink => drink.Spec.Slug == slug)?.Name ?? slug.Text));

    private static string Count(double amount, string one, string many) => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(amount - 1e-6):0} {(amount <= 1 ? one : many)}");

    // A name with a capital further on is a proper one, "Nick and Nora", and one all in capitals is meant so.
    private static string Lower(string name) => name.Length > 0 && !name.AsSpan(1).ContainsAnyInRange('A', 'Z') ? char.ToLowerInvariant(name[0]) + name[1..] : name;

    private static string Many(string name) => name.EndsWith("cherry", StringComparison.OrdinalIgnoreCase) ? name[..^1] + "ies" : name.Pluralize(inputIsKnownToBeSingular: false);
}
