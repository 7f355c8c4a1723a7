using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Shooting.Order;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Publishing.Tables;

/// <summary>The running order as CSV, a record for each block.</summary>
public static class RunningOrderTable
{
    /// <summary>The table, its header first.</summary>
    public static string Write(RunningOrder order, EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(results);
        var table = new CsvTable("start", "end", "minutes", "kind", "what", "drink", "take", "station", "method", "glass", "backdrop", "beside", "filmed", "reason");
        foreach (var block in order.Blocks)
        {
            var setUp = block.SetUp;
            table.Add(
                order.Clock.Write(block.Start),
                order.Clock.Write(block.End),
                (block.End - block.Start).TotalMinutes,
                BlockWords.NameOf(block.Kind),
                block.Name,
                results.NameOf(block.Drink),
                block.Take > 0 ? block.Take : null,
                setUp?.Station,
                setUp?.Method is { } method ? Method.NameOf(method) : null,
                setUp is null || setUp.Glass.IsEmpty ? null : ServeWords.Name(setUp.Glass, results.Bar.Kit),
                setUp?.Backdrop,
                block.Beside ? "yes" : "",
                block.Filmed ? "yes" : "",
                block.Reason);
        }

        return table.Write();
    }
}
