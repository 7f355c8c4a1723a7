using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Publishing.Tracks;

namespace Barshow.Engine.Publishing.Cards;

/// <summary>Says which card is shown when, as CSV for the editor; the times stay empty until the line is found in the captions.</summary>
public static class CueList
{
    /// <summary>The list, its header first; a card that is said twice has two records.</summary>
    public static string Write(EpisodeResults results, IReadOnlyList<CalloutCard> cards)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(cards);
        var times = CalloutTrack.Times(results).ToLookup(item => (results.NameOf(item.Said.Drink), item.Said.Line));
        var table = new CsvTable("card", "drink", "line", "text", "from", "to", "from_s", "to_s");
        foreach (var card in cards)
        {
            var shown = times[(card.Drink, card.Line)].ToList();
            if (shown.Count == 0)
                table.Add(card.FileName, card.Drink, card.Line, card.ToString(), "", "", null, null);
            foreach (var (said, end) in shown)
                table.Add(card.FileName, card.Drink, card.Line, card.ToString(), Chapter.TimeText((int)said.StartSeconds), Chapter.TimeText((int)Math.Ceiling(end)), said.StartSeconds, end);
        }

        return table.Write();
    }
}
