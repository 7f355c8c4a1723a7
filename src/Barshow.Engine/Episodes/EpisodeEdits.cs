using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Episodes;

/// <summary>The changes a user makes to an episode, each giving a new one. Drinks are named by their place in the lineup, since one drink may stand in it twice.</summary>
public static class EpisodeEdits
{
    /// <summary>The episode with one drink changed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no drink at that place.</exception>
    public static Episode WithDrink(this Episode episode, int place, Func<LineupDrink, LineupDrink> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        Check(episode, place);
        return episode with { Lineup = [.. episode.Lineup.Select((drink, i) => i == place ? change(drink) : drink)] };
    }

    /// <summary>The episode with one drink's spec changed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no drink at that place.</exception>
    public static Episode WithSpec(this Episode episode, int place, Func<Spec, Spec> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return episode.WithDrink(place, drink => drink with { Spec = change(drink.Spec) });
    }

    /// <summary>The episode with a line's amount as it is decided for this film; the layers below keep theirs.</summary>
    /// <remarks>What was written in the other unit goes, since it stood beside the old amount.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">There is no drink or line at that place.</exception>
    public static Episode WithAmount(this Episode episode, int place, int line, Measure measure, string? reason)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return episode.WithLine(place, line, old => old.With(AmountLayer.Episode, measure, string.IsNullOrWhiteSpace(reason) ? null : reason.Trim()) with { WrittenBeside = null });
    }

    /// <summary>The episode with a line's amount as it was before this film decided otherwise.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no drink or line at that place.</exception>
    public static Episode WithoutAmount(this Episode episode, int place, int line) =>
        episode.WithLine(place, line, old => old with { Amounts = [.. old.Amounts.Where(amount => amount.Layer != AmountLayer.Episode)] });

    /// <summary>The episode with one line of one drink changed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no drink or line at that place.</exception>
    public static Episode WithLine(this Episode episode, int place, int line, Func<SpecLine, SpecLine> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return episode.WithSpec(place, spec =>
        {
            ArgumentOutOfRangeException.ThrowIfNegative(line);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(line, spec.Lines.Count);
            return spec with { Lines = [.. spec.Lines.Select((old, i) => i == line ? change(old) : old)] };
        });
    }

    /// <summary>The episode with a drink at another place of the viewer order; places beyond the ends mean the ends.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no drink at <paramref name="from"/>.</exception>
    public static Episode WithDrinkMoved(this Episode episode, int from, int to)
    {
        Check(episode, from);
        return episode with { Lineup = Moved(episode.Lineup, from, to) };
    }

    /// <summary>The episode with a drink at another place of the shoot order, which is the user's from then on.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="order">The shoot order that was shown.</param>
    /// <param name="drink">The drink.</param>
    /// <param name="to">Its new place, counted from 0; places beyond the ends mean the ends.</param>
    public static Episode WithShootOrderMoved(this Episode episode, IReadOnlyList<Slug> order, Slug drink, int to)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(order);
        var from = order.ToList().IndexOf(drink);
        return from < 0 ? episode : episode with { ShootOrder = Moved(order, from, to) };
    }

    /// <summary>The episode with a drink pinned; one that held that pin before is let go.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no drink at that place.</exception>
    public static Episode WithPin(this Episode episode, int place, Pin pin)
    {
        Check(episode, place);
        return episode with
        {
            Lineup = [.. episode.Lineup.Select((drink, i) =>
                i == place ? drink with { Pin = pin }
                : pin != Pin.None && drink.Pin == pin ? drink with { Pin = Pin.None }
                : drink)],
        };
    }

    /// <summary>The episode without one drink.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no drink at that place.</exception>
    public static Episode WithoutDrink(this Episode episode, int place)
    {
        Check(episode, place);
        var gone = episode.Lineup[place].Spec.Slug;
        var lineup = episode.Lineup.Where((_, i) => i != place).ToList();
        return episode with
        {
            Lineup = lineup,
            ShootOrder = lineup.Exists(drink => drink.Spec.Slug == gone) ? episode.ShootOrder : [.. episode.ShootOrder.Where(slug => slug != gone)],
        };
    }

    /// <summary>The episode with a task of the mise list done or not.</summary>
    public static Episode WithTick(this Episode episode, string task, bool done)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentException.ThrowIfNullOrEmpty(task);
        return episode with { Ticked = done ? [.. episode.Ticked.Append(task).Distinct()] : [.. episode.Ticked.Where(ticked => ticked != task)] };
    }

    /// <summary>The episode with a finding about the film settled, or open again when <paramref name="settled"/> is null.</summary>
    public static Episode WithSettled(this Episode episode, string finding, SettledFinding? settled)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentException.ThrowIfNullOrEmpty(finding);
        var others = episode.Settled.Where(other => other.Finding != finding);
        return episode with { Settled = settled is null ? [.. others] : [.. others, settled] };
    }

    private static List<T> Moved<T>(IReadOnlyList<T> list, int from, int to)
    {
        var moved = list.ToList();
        var item = moved[from];
        moved.RemoveAt(from);
        moved.Insert(Math.Clamp(to, 0, moved.Count), item);
        return moved;
    }

    private static void Check(Episode episode, int place)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentOutOfRangeException.ThrowIfNegative(place);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(place, episode.Lineup.Count);
    }
}
