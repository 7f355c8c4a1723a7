using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Google.OrTools.Sat;

namespace Barshow.Engine.Shooting.Order;

/// <summary>Proposes the order for viewers, apart from the order of the shoot.</summary>
public static class ViewerOrderPlanner
{
    /// <summary>The order for viewers of an episode. The pinned opener and closer stay at their ends; drinks to be compared stay together.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="bar">What its drinks are analysed by.</param>
    /// <param name="effort">How much work a level may take, in the solver's own seconds.</param>
    /// <param name="cancel">Stops the solver; what was found so far is returned.</param>
    public static ViewerOrder Plan(Episode episode, Bar bar, double effort = 2, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        List<Seen> drinks = [.. episode.Lineup.DistinctBy(drink => drink.Spec.Slug).Select((drink, place) => new Seen(drink, place, DrinkTraits.Of(drink.Spec, bar, episode.Convention)))];
        if (drinks.Count == 0)
            return new();
        var (order, levels) = new Model(drinks).Solve(effort, cancel);
        var alike = Neighbours(order);
        return new()
        {
            Drinks = [.. order.Select(seen => seen.Drink.Spec.Slug)],
            Alike = alike,
            AlikeNow = Neighbours(drinks),
            Levels = levels,
            ValuesNow = [Neighbours(drinks).Sum(pair => pair.Points), Rise(drinks), 0],
            Findings = [.. alike.Select(pair => Said(pair, order))],
        };
    }

    private static Finding Said(AlikeNeighbours pair, IReadOnlyList<Seen> order)
    {
        var (first, second) = (order.First(seen => seen.Drink.Spec.Slug == pair.First).Drink.Name, order.First(seen => seen.Drink.Spec.Slug == pair.Second).Drink.Name);
        return new(FindingCatalogue.NeighboursAlike, second,
            $"{first} and {second} follow one another for viewers and are alike in {pair.Alike}; no order parts all that are alike.",
            "Change a glass or a method, or leave one of them out.")
        { Drink = second };
    }

    /// <summary>Two neighbours count two points for one method, two for one glass, two for one family.</summary>
    internal static (int Points, string Words) Likeness(LineupDrink one, LineupDrink other)
    {
        List<string> alike = [];
        if (one.Spec.Method is { } method && other.Spec.Method?.Kind == method.Kind)
            alike.Add("method");
        if (!one.Spec.Serve.Glass.IsEmpty && one.Spec.Serve.Glass == other.Spec.Serve.Glass)
            alike.Add("glass");
        if (one.Spec.Family.Length > 0 && one.Spec.Family == other.Spec.Family)
            alike.Add("family");
        return (2 * alike.Count, string.Join(" and ", alike));
    }

    private static IReadOnlyList<AlikeNeighbours> Neighbours(IReadOnlyList<Seen> order) =>
        [.. order.Zip(order.Skip(1))
            .Select(pair => (pair.First, pair.Second, Alike: Likeness(pair.First.Drink, pair.Second.Drink)))
            .Where(pair => pair.Alike.Points > 2 || pair.Alike.Words == "family")
            .Select(pair => new AlikeNeighbours(pair.First.Drink.Spec.Slug, pair.Second.Drink.Spec.Slug, pair.Alike.Words, pair.Alike.Points))];

    /// <summary>What the opener is strong by, and every fall of strength on the way to the closer.</summary>
    private static long Rise(IReadOnlyList<Seen> order) => order[0].Traits.StrengthPercent
        + order.Zip(order.Skip(1)).Sum(pair => Math.Max(0, pair.First.Traits.StrengthPercent - pair.Second.Traits.StrengthPercent));

    internal sealed record Seen(LineupDrink Drink, int Place, DrinkTraits Traits);

    private sealed class Model
    {
        private readonly CpModel _model = new();
        private readonly List<Seen> _drinks;
        private readonly Dictionary<(Seen? From, Seen? To), BoolVar> _follows = [];

        public Model(List<Seen> drinks)
        {
            _drinks = drinks;
            ShowEachOnce();
            PinTheEnds();
            KeepPairsTogether();
        }

        public (IReadOnlyList<Seen> Order, IReadOnlyList<Level> Levels) Solve(double effort, CancellationToken cancel)
        {
            (string Aim, LinearExpr Value)[] aims =
            [
                ("no two neighbours alike", Along((from, to) => Likeness(from.Drink, to.Drink).Points)),
                ("ease in and build to the closer", Along((from, to) => Math.Max(0, from.Traits.StrengthPercent - to.Traits.StrengthPercent))
                    + LinearExpr.Sum(_drinks.Select(first => _follows[(null, first)] * first.Traits.StrengthPercent))),
                ("nearest to the lineup as it stands", Along((from, to) => Math.Abs(to.Place - from.Place - 1))),
            ];
            List<Level> levels = [];
            IReadOnlyList<Seen> order = _drinks;
            foreach (var (aim, value) in aims)
            {
                _model.Minimize(value);
                using CpSolver solver = new() { StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1 random_seed:1 max_deterministic_time:{effort} linearization_level:2") };
                using var registration = cancel.Register(solver.StopSearch);
                var status = solver.Solve(_model);
                if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
                    break;
                var reached = (long)Math.Round(solver.ObjectiveValue);
                levels.Add(new(aim, reached, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), "points", status is CpSolverStatus.Optimal));
                order = Read(solver);
                _model.Add(value <= reached);
                if (cancel.IsCancellationRequested)
                    break;
            }

            return (order, levels);
        }

        private void ShowEachOnce()
        {
            var round = _model.AddCircuit();
            List<Seen?> stops = [null, .. _drinks];
            foreach (var from in stops)
                foreach (var to in stops)
                    if (from != to)
                        round.AddArc(stops.IndexOf(from), stops.IndexOf(to), _follows[(from, to)] = _model.NewBoolVar(""));
        }

        private void PinTheEnds()
        {
            if (_drinks.FirstOrDefault(seen => seen.Drink.Pin is Pin.Opener) is { } opener)
                _model.Add(_follows[(null, opener)] == 1);
            if (_drinks.LastOrDefault(seen => seen.Drink.Pin is Pin.Closer) is { } closer)
                _model.Add(_follows[(closer, null)] == 1);
        }

        // A pair that pins pull apart is left apart: the running order has said so.
        private void KeepPairsTogether()
        {
            HashSet<Seen> paired = [];
            foreach (var one in _drinks)
                if (_drinks.FirstOrDefault(other => other != one && other.Drink.Spec.Slug == one.Drink.BesideDrink) is { } other
                    && !(one.Drink.Pin is not Pin.None && other.Drink.Pin is not Pin.None && _drinks.Count > 2)
                    && paired.Add(one) && paired.Add(other))
                    _model.Add(_follows[(one, other)] + _follows[(other, one)] == 1);
        }

        private LinearExpr Along(Func<Seen, Seen, int> points) => LinearExpr.Sum(_follows
            .Where(arc => arc.Key.From is not null && arc.Key.To is not null)
            .Select(arc => arc.Value * points(arc.Key.From!, arc.Key.To!)));

        private List<Seen> Read(CpSolver solver)
        {
            List<Seen> order = [];
            Seen? at = null;
            while (_drinks.FirstOrDefault(seen => seen != at && solver.BooleanValue(_follows[(at, seen)])) is { } next)
            {
                order.Add(next);
                at = next;
            }

            return order;
        }
    }
}
