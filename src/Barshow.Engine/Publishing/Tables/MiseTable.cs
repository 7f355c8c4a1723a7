using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Shooting.Mise;

namespace Barshow.Engine.Publishing.Tables;

/// <summary>The mise list as CSV, a record for each task.</summary>
public static class MiseTable
{
    /// <summary>The table, its header first.</summary>
    public static string Write(MiseList mise, EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(mise);
        ArgumentNullException.ThrowIfNull(results);
        var done = results.Episode.Ticked.ToHashSet(StringComparer.Ordinal);
        var table = new CsvTable("start", "end", "minutes", "session", "station", "task", "amount", "steps", "equipment", "not_before", "not_after", "drinks", "reason", "done", "key");
        foreach (var task in mise.Tasks)
            table.Add(
                mise.Clock.Write(task.Start),
                mise.Clock.Write(task.End),
                task.Duration.TotalMinutes,
                MiseWords.NameOf(task.Session),
                task.Station,
                task.Text,
                task.Amount,
                string.Join(" ", task.Steps),
                task.Equipment,
                mise.Clock.Write(task.NotBefore),
                mise.Clock.Write(task.NotAfter),
                string.Join(", ", task.For.Select(results.NameOf)),
                task.Reason,
                done.Contains(task.Key) ? "yes" : "",
                task.Key);
        return table.Write();
    }
}
