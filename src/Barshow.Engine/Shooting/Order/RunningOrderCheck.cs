using Barshow.Engine.Episodes;
using Barshow.Engine.Names;

namespace Barshow.Engine.Shooting.Order;

/// <summary>What the plain re-check of a running order says.</summary>
/// <param name="Faults">What no running order may hold, rules or no rules: overlapping blocks, a drink without its takes. Sentences.</param>
/// <param name="Broken">The rules that are not kept.</param>
public sealed record OrderVerdict(IReadOnlyList<string> Faults, IReadOnlyList<Requirement> Broken);

/// <summary>Reads a running order block by block and says which rules it breaks. It knows no solver and shares no arithmetic with the planner.</summary>
public static class RunningOrderCheck
{
    /// <summary>Checks an order against its episode.</summary>
    public static OrderVerdict Check(RunningOrder order, Episode episode, Bar bar, OrderSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        settings ??= new();
        return new([.. Faults(order, episode)], [.. Broken(order, episode, bar, settings).Distinct()]);
    }

    private static IEnumerable<string> Faults(RunningOrder order, Episode episode)
    {
        var inLine = order.Blocks.Where(block => !block.Beside).ToList();
        foreach (var (before, after) in inLine.Zip(inLine.Skip(1)))
            if (after.Start < before.End)
                yield return $"{after.Name} starts before {before.Name} ends.";
        foreach (var drink in episode.Lineup)
        {
            var takes = order.Blocks.Where(block => block.Kind is BlockKind.Take && block.Drink == drink.Spec.Slug).ToList();
            if (!takes.Any(take => take.Filmed) && !takes.Select(take => take.Take).SequenceEqual(Enumerable.Range(1, episode.TakesOf(drink))))
                yield return $"{drink.Name} has {takes.Count} takes and needs {episode.TakesOf(drink)}.";
            var others = order.Blocks.Where(block => block.Kind is BlockKind.Take && block.Drink != drink.Spec.Slug);
            if (takes.Count > 0 && others.Any(other => other.Start > takes[0].Start && other.Start < takes[^1].Start))
                yield return $"The takes of {drink.Name} are parted.";
        }
    }

    private static IEnumerable<Requirement> Broken(RunningOrder order, Episode episode, Bar bar, OrderSettings settings)
    {
        List<LineupDrink> filmed = [.. order.ShootOrder.Select(slug => episode.Lineup.FirstOrDefault(drink => drink.Spec.Slug == slug)).OfType<LineupDrink>()];
        var ahead = filmed.Where(drink => !order.Blocks.Any(block => block.Filmed && block.Drink == drink.Spec.Slug)).ToList();
        return Stale(order, ahead, bar, settings)
            .Concat(Unpinned(filmed, episode))
            .Concat(Parted(filmed, ahead))
            .Concat(Short(order, ahead, episode, bar))
            .Concat(Warm(order, ahead, episode, bar, settings))
            .Concat(Tired(order, ahead, settings))
            .Concat(Hungry(order, settings))
            .Concat(settings.WrapBy is { } wrapBy && order.Wrap > wrapBy ? [new Requirement(OrderRule.WrapInTime)] : []);
    }

    private static IEnumerable<Requirement> Stale(RunningOrder order, List<LineupDrink> ahead, Bar bar, OrderSettings settings)
    {
        foreach (var drink in ahead)
            foreach (var slug in drink.Spec.Lines.Select(line => line.Ingredient).Distinct())
            {
                if (bar.Ingredients[slug] is not { Fresh: { } fresh } ingredient || (ingredient.Prep is null && (ingredient.Packs.Count > 0 || !bar.Ingredients.All.Any(fruit => fruit.Produce?.Juice == slug && fruit.Produce.JuiceMillilitres > 0))))
                    continue;
                var (start, end) = (StartOf(order, drink), EndOf(order, drink));
                var late = settings.ReadyAt.TryGetValue(slug, out var at) ? at
                    : fresh.Ready > TimeSpan.FromMinutes(settings.Pace.HandsCleanMinutes) ? -fresh.Ready : TimeSpan.FromMinutes(-settings.Pace.HandsCleanMinutes);
                var made = order.Blocks.Where(block => block.Kind is BlockKind.Batch && block.Prep == slug).Select(block => block.End).Append(late);
                if (!made.Any(at => end <= at + fresh.Best && start >= at + fresh.Ready))
                    yield return new(OrderRule.FreshWhenFilmed, drink.Name, ingredient.Name);
            }
    }

    private static IEnumerable<Requirement> Unpinned(List<LineupDrink> filmed, Episode episode)
    {
        if (episode.Lineup.FirstOrDefault(drink => drink.Pin is Pin.Opener) is { } opener && filmed.Count > 0 && filmed[0] != opener)
            yield return new(OrderRule.OpenerFirst, opener.Name);
        if (episode.Lineup.LastOrDefault(drink => drink.Pin is Pin.Closer) is { } closer && filmed.Count > 0 && filmed[^1] != closer)
            yield return new(OrderRule.CloserLast, closer.Name);
    }

    private static IEnumerable<Requirement> Parted(List<LineupDrink> filmed, List<LineupDrink> ahead)
    {
        foreach (var drink in ahead.OrderBy(filmed.IndexOf))
            if (ahead.FirstOrDefault(other => other.Spec.Slug == drink.BesideDrink && other != drink) is { } other && Math.Abs(filmed.IndexOf(other) - filmed.IndexOf(drink)) != 1)
                yield return new(OrderRule.SideBySide, drink.Name, other.Name);
    }

    private static IEnumerable<Requirement> Short(RunningOrder order, List<LineupDrink> ahead, Episode episode, Bar bar)
    {
        Dictionary<Slug, int> used = [];
        foreach (var drink in ahead)
        {
            foreach (var _ in order.Blocks.Where(block => block.Kind is BlockKind.WashUp && block.Drink.IsEmpty && block.End <= StartOf(order, drink) && block.Start >= PreviousEnd(order, ahead, drink)))
                used.Clear();
            if (!bar.Kit.TryGetGlass(drink.Spec.Serve.Glass, out var glass) || glass.Count == 0)
                continue;
            used[glass.Slug] = used.GetValueOrDefault(glass.Slug) + Math.Min(glass.Count, GlassesOf(drink, episode));
            if (used[glass.Slug] > glass.Count)
                yield return new(OrderRule.CleanGlass, drink.Name, glass.Name);
        }
    }

    private static IEnumerable<Requirement> Warm(RunningOrder order, List<LineupDrink> ahead, Episode episode, Bar bar, OrderSettings settings)
    {
        foreach (var drink in ahead.Where(drink => drink.Spec.Serve.Chilled))
        {
            if (!bar.Kit.TryGetGlass(drink.Spec.Serve.Glass, out var glass) || glass.Count == 0
                || ahead.Where(other => other.Spec.Serve.Glass == glass.Slug).Sum(other => GlassesOf(other, episode)) <= glass.Count)
                continue;
            var washed = order.Blocks.Where(block => block.Kind is BlockKind.WashUp && block.Drink.IsEmpty && block.End <= StartOf(order, drink)).Select(block => block.End).DefaultIfEmpty(TimeSpan.MinValue).Max();
            if (washed > TimeSpan.MinValue && StartOf(order, drink) < washed + TimeSpan.FromMinutes(settings.Pace.RechillMinutes))
                yield return new(OrderRule.ColdGlass, drink.Name);
        }
    }

    private static IEnumerable<Requirement> Tired(RunningOrder order, List<LineupDrink> ahead, OrderSettings settings)
    {
        var longestDrink = ahead.Select(drink => EndOf(order, drink) - StartOf(order, drink)).DefaultIfEmpty().Max();
        var longest = TimeSpan.FromMinutes(settings.Pace.LongestStretchMinutes);
        if (longestDrink > longest)
            longest = longestDrink + TimeSpan.FromMinutes(settings.Pace.ComparisonMinutes);
        var since = settings.SoFar?.LastBreakEnded ?? TimeSpan.Zero;
        foreach (var block in order.Blocks.Where(block => !block.Filmed && !block.Beside))
        {
            if (block.Kind is BlockKind.Break or BlockKind.Meal)
                since = block.End;
            else if (ahead.FirstOrDefault(drink => drink.Spec.Slug == block.Drink && EndOf(order, drink) == block.End) is { } drink)
            {
                var outro = drink == ahead[^1] ? TimeSpan.FromMinutes(settings.Pace.OutroMinutes) : TimeSpan.Zero;
                if (block.End + outro - since > longest)
                    yield return new(OrderRule.BreakInTime, drink.Name);
            }
        }
    }

    private static IEnumerable<Requirement> Hungry(RunningOrder order, OrderSettings settings)
    {
        var by = TimeSpan.FromMinutes(settings.Pace.MealByMinutes);
        var work = order.Blocks.Where(block => !block.Beside && !block.Filmed && block.Kind is not (BlockKind.Break or BlockKind.Meal or BlockKind.WashUp or BlockKind.Wait or BlockKind.Batch)).ToList();
        var least = (settings.SoFar?.Now ?? TimeSpan.Zero) + work.Aggregate(TimeSpan.Zero, (sum, block) => sum + Least(block, settings));
        if (least > by && settings.SoFar is not { MealOver: true } && (settings.SoFar?.Now ?? TimeSpan.Zero) < by
            && !order.Blocks.Any(block => block.Kind is BlockKind.Meal && block.Start <= by))
            yield return new(OrderRule.MealInTime);
    }

    private static TimeSpan Least(Block block, OrderSettings settings) =>
        block.Kind is BlockKind.Comparison || (block.Kind is BlockKind.Reset && block.Drink.IsEmpty) ? TimeSpan.Zero
            : block.Kind is BlockKind.Reset ? TimeSpan.FromMinutes(Math.Min(settings.Pace.ResetMinutes, (block.End - block.Start).TotalMinutes))
            : block.End - block.Start;

    private static TimeSpan StartOf(RunningOrder order, LineupDrink drink) =>
        order.Blocks.Where(block => block.Kind is BlockKind.Take && block.Drink == drink.Spec.Slug).Select(block => block.Start).DefaultIfEmpty().Min();

    private static TimeSpan EndOf(RunningOrder order, LineupDrink drink) =>
        order.Blocks.Where(block => block.Drink == drink.Spec.Slug && block.Kind is BlockKind.Take or BlockKind.Taste or BlockKind.CloseUps or BlockKind.Comparison && block.Drink == drink.Spec.Slug)
            .Select(block => block.End).DefaultIfEmpty().Max();

    private static TimeSpan PreviousEnd(RunningOrder order, List<LineupDrink> ahead, LineupDrink drink) =>
        ahead.IndexOf(drink) is > 0 and var place ? EndOf(order, ahead[place - 1]) : TimeSpan.MinValue;

    private static int GlassesOf(LineupDrink drink, Episode episode) => episode.TakesOf(drink) + drink.TastedSwapOuts + drink.UntastedSwapOuts;
}
