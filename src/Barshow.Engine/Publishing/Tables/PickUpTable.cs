using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Tables;

/// <summary>What is to be said again or laid over the film, as CSV: every open finding that has a time on film, in film order.</summary>
public static class PickUpTable
{
    /// <summary>The table, its header first; null when nothing is to be picked up.</summary>
    public static string? Write(IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var timed = findings.Where(finding => finding is { TimeSeconds: not null, Said: not null }).OrderBy(finding => finding.TimeSeconds).ToList();
        if (timed.Count == 0)
            return null;
        var table = new CsvTable("time", "time_s", "severity", "kind", "drink", "ingredient", "said", "expected", "what", "pick_up");
        foreach (var finding in timed)
            table.Add(
                Chapter.TimeText((int)Math.Max(0, finding.TimeSeconds!.Value)), finding.TimeSeconds, FindingJson.NameOf(finding.Severity), finding.Kind.Name,
                finding.Drink, finding.Ingredient, finding.Said, finding.Expected, finding.Message, finding.Remedy);
        return table.Write();
    }
}
