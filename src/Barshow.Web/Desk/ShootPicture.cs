using Barshow.Engine.Names;
using Barshow.Engine.Publishing;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;
using Barshow.Web.Drawing;

namespace Barshow.Web.Desk;

/// <summary>A running order as the day line draws it.</summary>
public static class ShootPicture
{
    /// <summary>The picture of a day; null when there is no block.</summary>
    public static DayPicture? Of(RunningOrder order, EpisodeWork work)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(work);
        if (order.Blocks.Count == 0)
            return null;
        var call = order.Clock.Call is { } time ? time.ToTimeSpan().TotalMinutes : 0;
        var places = work.Episode.Lineup.Index().GroupBy(each => each.Item.Spec.Slug).ToDictionary(group => group.Key, group => group.First().Index + 1);
        var day = order.Blocks.Where(block => !block.Beside).ToList();
        return new(
            [.. Joined(day).Select(block => ToBlock(block, call, places))],
            [.. order.Fresh.Select(stretch => new DayWindow(stretch.Batch > 1 ? $"{stretch.Name}, batch {stretch.Batch}" : stretch.Name, call + stretch.From.TotalMinutes, call + stretch.Until.TotalMinutes, stretch.Until - stretch.From < TimeSpan.FromHours(5)))],
            [.. Setups(day, call)],
            [.. work.Episode.Lineup.Select((drink, i) => new DayDrink(i + 1, drink.Name, LineOf(drink.Spec, work, i), DrinkPictures.Of(drink.Spec, work.Analyses[i], work.Bar.Kit)))]);
    }

    private static string LineOf(Spec spec, EpisodeWork work, int place)
    {
        var strength = work.Analyses[place].ServedStrength;
        var glass = work.Bar.Kit.TryGetGlass(spec.Serve.Glass, out var known) ? known.Name.ToLowerInvariant() : null;
        return string.Join(", ", new[] { spec.Method?.Name, glass, $"{Figures.Range(strength.Low * 100, strength.High * 100)} %" }.OfType<string>());
    }

    // Tasting, close-ups and comparison of one drink follow one another and are drawn as one block.
    private static IEnumerable<Block> Joined(IReadOnlyList<Block> blocks)
    {
        for (var i = 0; i < blocks.Count; i++)
        {
            if (!IsAfterTake(blocks[i]))
            {
                yield return blocks[i];
                continue;
            }

            var last = i;
            while (last + 1 < blocks.Count && IsAfterTake(blocks[last + 1]) && blocks[last + 1].Drink == blocks[i].Drink)
                last++;
            var what = blocks.Skip(i).Take(last - i + 1).Select(block => block.Kind switch { BlockKind.Taste => "Tasting", BlockKind.CloseUps => "close-ups", _ => "side by side" });
            var name = string.Join(", ", what);
            yield return blocks[i] with { Name = char.ToUpperInvariant(name[0]) + name[1..], End = blocks[last].End };
            i = last;
        }
    }

    private static bool IsAfterTake(Block block) => block.Kind is BlockKind.Taste or BlockKind.CloseUps or BlockKind.Comparison;

    private static DayBlock ToBlock(Block block, double call, Dictionary<Slug, int> places)
    {
        var kind = block.Kind switch
        {
            BlockKind.Take => block.Take > 1 ? DayBlockKind.TakeAgain : DayBlockKind.Take,
            BlockKind.Reset => DayBlockKind.Reset,
            BlockKind.Break or BlockKind.Meal or BlockKind.Wait => DayBlockKind.Break,
            _ => DayBlockKind.Work,
        };
        var name = kind == DayBlockKind.Take && block.Name.IndexOf(" of ", StringComparison.Ordinal) is > 0 and var of ? block.Name[(of + 4)..]
            : kind == DayBlockKind.TakeAgain && block.Name.IndexOf(" of ", StringComparison.Ordinal) is > 0 and var again ? $"{block.Name[(again + 4)..]}, {block.Name[..again].ToLowerInvariant()}"
            : block.Name;
        return new(kind, call + block.Start.TotalMinutes, (block.End - block.Start).TotalMinutes, name, places.GetValueOrDefault(block.Drink));
    }

    private static IEnumerable<DaySetup> Setups(IReadOnlyList<Block> blocks, double call)
    {
        (string Station, double From, double To)? open = null;
        foreach (var block in blocks.Where(block => block.SetUp is not null))
        {
            if (open is { } now && now.Station == block.SetUp!.Station)
            {
                open = now with { To = call + block.End.TotalMinutes };
                continue;
            }

            if (open is { } done)
                yield return new(done.Station, done.From, done.To);
            open = (block.SetUp!.Station, call + block.Start.TotalMinutes, call + block.End.TotalMinutes);
        }

        if (open is { } last)
            yield return new(last.Station, last.From, last.To);
    }
}
