using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Demand;

namespace Barshow.Engine.Planning.Bottles;

/// <summary>Works out the two budgets of the featured bottle.</summary>
public static class BottleBudgetPlanner
{
    private const int MostTakes = 10_000;

    /// <summary>The sizes viewers buy: 700 ml (EU and UK nominal quantities, Directive 2007/45/EC; US since 2020, 27 CFR 5.203) and 750 ml (27 CFR 5.203).</summary>
    public static IReadOnlyList<double> CommonSizes { get; } = [700, 750];

    /// <summary>The budgets of an episode.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="bar">What it is looked up in.</param>
    /// <param name="shootOrder">The order of filming; null for the episode's own, which is the viewer order where it has none.</param>
    public static BottleBudget Plan(Episode episode, Bar bar, IReadOnlyList<Slug>? shootOrder = null)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        if (episode.Bottle is not { } bottle)
            return new BottleBudget { Name = "", Findings = [PlanningFindings.BottleUnnamed(episode)] };

        var slug = bottle.Ingredient.IsEmpty ? bar.Ingredients.Named(bottle.Name)?.Slug ?? Slug.Of(bottle.Name) : bottle.Ingredient;
        var viewer = DemandPlanner.Of(episode, bar, DemandFor.Viewer)[slug];
        var shoot = DemandPlanner.Of(episode, bar, DemandFor.Shoot)[slug];
        double? stated = bottle.Millilitres is > 0 and var size && double.IsFinite(size) ? size : null;
        var viewerMillilitres = viewer?.Millilitres ?? 0;
        var shootMillilitres = shoot?.Millilitres ?? 0;
        var shootBottle = stated ?? CommonSizes[0];
        var onHand = bar.Ingredients[slug]?.OnHand?.MillilitresNear(episode.Convention, bar.House.BarSizes) ?? 0;
        var bottles = Whole(shootMillilitres / shootBottle);
        var each = (viewer?.Parts ?? []).GroupBy(part => (part.Drink, part.DrinkName))
            .Select(group => (group.Key.Drink, group.Key.DrinkName, Millilitres: group.Sum(part => part.Each.Amount))).ToList();
        var costliest = each.OrderByDescending(drink => drink.Millilitres).FirstOrDefault();
        var last = bottles * shootBottle - shootMillilitres;
        var retake = costliest.Millilitres * (1 + Math.Max(0, bar.House.SpillShare));
        var budget = new BottleBudget
        {
            Name = bottle.Name,
            Ingredient = slug,
            BottleMillilitres = stated,
            ViewerMillilitres = viewerMillilitres,
            Checks = [.. Sizes(stated).Select(bottleSize => new BottleCheck(bottleSize, bottleSize == stated, bottleSize - viewerMillilitres))],
            ShootMillilitres = shootMillilitres,
            ShootBottleMillilitres = shootBottle,
            Bottles = bottles,
            BottlesToOrder = Whole(Math.Max(0, shootMillilitres - onHand) / shootBottle),
            Levels = Levels(episode, bar, shoot, shootBottle, Order(episode, shootOrder)),
            LastBottleMillilitres = last,
            CostliestDrink = costliest.Drink,
            CostliestDrinkName = costliest.DrinkName ?? "",
            RetakesLeft = retake > 0 ? (int)Math.Min(MostTakes, Math.Floor(last / retake + 1e-9)) : 0,
        };
        return budget with { Findings = [.. Say(episode, budget, each.Select(drink => drink.Drink).ToHashSet())] };
    }

    private static IEnumerable<double> Sizes(double? stated) => (stated is { } size ? new[] { size } : []).Concat(CommonSizes).Distinct();

    private static IEnumerable<LineupDrink> Order(Episode episode, IReadOnlyList<Slug>? shootOrder)
    {
        var order = shootOrder ?? episode.ShootOrder;
        return episode.Lineup.Index()
            .OrderBy(drink => order.Index().Where(entry => entry.Item == drink.Item.Spec.Slug).Select(entry => entry.Index).DefaultIfEmpty(int.MaxValue).First())
            .ThenBy(drink => drink.Index)
            .Select(drink => drink.Item);
    }

    private static List<BottleLevel> Levels(Episode episode, Bar bar, IngredientDemand? demand, double bottle, IEnumerable<LineupDrink> order)
    {
        var levels = new List<BottleLevel>();
        if (demand is null)
            return levels;
        var filmed = new List<(LineupDrink Drink, double Poured)>();
        var rehearsed = 0.0;
        foreach (var drink in order)
        {
            var makings = Makings.Of(drink, episode, bar.House, DemandFor.Shoot);
            var all = demand.Parts.Where(part => part.Drink == drink.Spec.Slug && part.Amount.Kind is QuantityKind.Millilitres).Sum(part => part.Amount.Amount);
            // One drink may stand in a lineup twice; its demand is shared by how often each is made.
            var together = episode.Lineup.Where(other => other.Spec.Slug == drink.Spec.Slug).Sum(other => Makings.Of(other, episode, bar.House, DemandFor.Shoot).Real);
            all = all * makings.Real / together;
            var rehearsal = all * makings.Rehearsals / makings.Real;
            rehearsed += rehearsal;
            filmed.Add((drink, all - rehearsal));
        }

        var poured = 0.0;
        if (rehearsed > 0)
            Pour(default, "Rehearsal", rehearsed);
        foreach (var (drink, amount) in filmed)
            Pour(drink.Spec.Slug, drink.Name, amount);
        return levels;

        void Pour(Slug drink, string name, double amount)
        {
            poured += amount;
            var open = Math.Max(1, Whole(poured / bottle));
            levels.Add(new(drink, name, amount, open, open * bottle - poured));
        }
    }

    private static IEnumerable<Finding> Say(Episode episode, BottleBudget budget, HashSet<Slug> pouring)
    {
        if (budget.BottleMillilitres is null)
            yield return PlanningFindings.BottleSizeUnknown(budget);
        if (episode.Lineup.Count == 0)
            yield break;
        if (pouring.Count == 0)
        {
            yield return PlanningFindings.BottleUnused(budget);
            yield break;
        }

        foreach (var drink in episode.Lineup.Where(drink => !pouring.Contains(drink.Spec.Slug)))
            yield return PlanningFindings.BottleNotInDrink(budget, drink);
        if (budget.ViewerFits is false)
            yield return PlanningFindings.BottleTooSmall(budget, budget.BottleMillilitres!.Value);
        var at700 = budget.Checks.First(check => check.BottleMillilitres == 700);
        var at750 = budget.Checks.First(check => check.BottleMillilitres == 750);
        if (!at700.Fits && at750.Fits && budget.ViewerFits is not false)
            yield return PlanningFindings.BottleFitsOneSize(budget);
        yield return PlanningFindings.BottlesForShoot(budget);
    }

    private static int Whole(double amount) => (int)Math.Min(int.MaxValue / 4, Math.Ceiling(amount - 1e-9));
}
