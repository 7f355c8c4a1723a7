using System.Globalization;
using System.Text;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Publishing.Descriptions.Parts;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Specs.Cautions;

namespace Barshow.Engine.Publishing.Tables;

/// <summary>The viewer's shopping list as plain text to print or send: each drink made once, staples named apart, the basket ladder below.</summary>
public static class ViewerShopping
{
    /// <summary>The list, lines ended by a line feed.</summary>
    public static string Write(Basket basket, EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(basket);
        ArgumentNullException.ThrowIfNull(results);
        var text = new StringBuilder();
        text.Append(DescriptionText.Line(results.Episode.Title)).Append('\n');
        text.Append(CultureInfo.InvariantCulture, $"To make each of the {results.Episode.Lineup.Count} drinks once\n\n");
        foreach (var line in ShoppingPart.Items(basket))
            text.Append("[ ] ").Append(line).Append('\n');
        if (basket.Items.Count == 0)
            text.Append("Nothing needs buying.\n");
        if (ShoppingPart.AtHome(basket) is { Length: > 0 } atHome)
            text.Append(atHome).Append('\n');
        if (basket.Cost > 0)
            text.Append(CultureInfo.InvariantCulture, $"\nAbout {basket.Cost:0.00} {basket.Currency}{(basket.Unpriced.Count > 0 ? $", without {string.Join(", ", basket.Unpriced.Select(item => DescriptionText.Line(Casing.Inside(item.Name))))}" : "")}\n");
        var ladder = ShoppingPart.Ladder(results.Episode, results.Ladder);
        if (ladder.Count > 0)
            text.Append("\nHow far the first things go\n").Append(string.Join('\n', ladder)).Append('\n');
        text.Append('\n').Append(CautionWords.Closing).Append('\n');
        return text.ToString();
    }
}
