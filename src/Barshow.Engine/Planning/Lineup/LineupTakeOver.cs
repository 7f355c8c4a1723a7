using Barshow.Engine.Episodes;
using Barshow.Engine.Names;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>Makes a chosen lineup the lineup of an episode.</summary>
public static class LineupTakeOver
{
    /// <summary>The episode with the drinks of a plan: those it had keep their place, their takes and their own amounts; new ones follow by slug; the rest leave.</summary>
    /// <param name="plan">A plan with picks; one without leaves the episode as it is.</param>
    /// <param name="episode">The episode.</param>
    public static Episode Into(this LineupPlan plan, Episode episode)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(episode);
        return plan.Picks.Count == 0 ? episode : WithDrinks(episode, plan.Picks);
    }

    /// <summary>The plan with one pick exchanged for its best replacement, to be planned again or taken over.</summary>
    /// <param name="question">The question that was asked.</param>
    /// <param name="plan">Its plan.</param>
    /// <param name="drink">The pick to exchange.</param>
    public static LineupQuestion Exchanged(this LineupQuestion question, LineupPlan plan, Slug drink)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(plan);
        var replacement = plan.Picks.FirstOrDefault(pick => pick.Spec.Slug == drink)?.Replacement;
        return replacement is null
            ? question
            : question with
            {
                MustHave = [.. plan.Picks.Select(pick => pick.Spec.Slug).Where(slug => slug != drink), replacement.Drink],
                LeaveOut = [.. question.LeaveOut.Append(drink).Distinct()],
            };
    }

    private static Episode WithDrinks(Episode episode, IReadOnlyList<LineupPick> picks)
    {
        var chosen = picks.Select(pick => pick.Spec.Slug).ToHashSet();
        var kept = episode.Lineup.Where(drink => chosen.Contains(drink.Spec.Slug)).DistinctBy(drink => drink.Spec.Slug)
            .Select(drink => picks.First(pick => pick.Spec.Slug == drink.Spec.Slug) is { BaseSwapped: true } swapped ? drink with { Spec = swapped.Spec } : drink);
        var fresh = picks.Where(pick => episode.Lineup.All(drink => drink.Spec.Slug != pick.Spec.Slug))
            .Select(pick => new LineupDrink { Spec = pick.Spec, Library = pick.Spec.Slug });
        return episode with
        {
            Lineup = [.. kept.Concat(fresh).Select(drink => chosen.Contains(drink.BesideDrink) ? drink : drink with { BesideDrink = default })],
            ShootOrder = [.. episode.ShootOrder.Where(chosen.Contains)],
        };
    }
}
