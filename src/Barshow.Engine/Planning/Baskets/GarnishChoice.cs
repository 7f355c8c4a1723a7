using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Baskets;

/// <summary>Another garnish for a drink, with what it changes in the order for the shoot.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Name">Its name.</param>
/// <param name="Now">Its garnish as it stands.</param>
/// <param name="Instead">What would do instead.</param>
/// <param name="Saves">What the order costs less with it; below nought when it costs more. Things without a price are left out.</param>
/// <param name="Changes">What is bought instead, in words: "3 Lime in place of 4".</param>
public sealed record GarnishChoice(Slug Drink, string Name, Garnish Now, Garnish Instead, decimal Saves, IReadOnlyList<string> Changes)
{
    /// <summary>Every alternative that the specs of a lineup name, one drink changed at a time.</summary>
    /// <remarks>A spent shell costs no fruit; a fresh wheel takes part of one that gives no juice then.</remarks>
    public static IReadOnlyList<GarnishChoice> Of(Episode episode, Bar bar, Basket shootBasket)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        ArgumentNullException.ThrowIfNull(shootBasket);
        return [.. episode.Lineup.Index().Where(drink => drink.Item.Spec.Garnish is not null).SelectMany(drink => drink.Item.Spec.Garnish!.Instead.Select(instead =>
        {
            var changed = drink.Item with { Spec = drink.Item.Spec with { Garnish = instead } };
            var basket = BasketPlanner.Plan(episode with { Lineup = [.. episode.Lineup.Select((other, place) => place == drink.Index ? changed : other)] }, bar, DemandFor.Shoot);
            return new GarnishChoice(drink.Item.Spec.Slug, drink.Item.Name, drink.Item.Spec.Garnish, instead, shootBasket.Cost - basket.Cost, [.. Differences(shootBasket, basket)]);
        }))];
    }

    private static IEnumerable<string> Differences(Basket before, Basket after)
    {
        foreach (var item in before.Items)
        {
            var now = after.Items.FirstOrDefault(other => other.Slug == item.Slug);
            if (now is null)
                yield return $"no {item.Name}";
            else if (now.ToBuy != item.ToBuy)
                yield return $"{item.Name}: {now.ToBuy} in place of {item.ToBuy}";
        }

        foreach (var item in after.Items.Where(item => before.Items.All(other => other.Slug != item.Slug)))
            yield return $"{item.Name}: {item.ToBuy} more";
    }
}
