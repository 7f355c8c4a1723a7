using System.Globalization;
using System.Text;
using Barshow.Engine.Callouts;
using Barshow.Engine.Findings;

namespace Barshow.Web.Verbs;

/// <summary>A callout report for people who read it in a terminal.</summary>
internal static class CheckSummary
{
    public static string Of(CalloutReport report)
    {
        var text = new StringBuilder();
        var poured = report.Callouts.Count(callout => callout is { Mention: false, Retracted: false, Repeat: false });
        text.Append(CultureInfo.InvariantCulture, $"{report.Callouts.Count} amounts heard, {poured} of them poured; {Count(report, Severity.Stop)} to stop for, {Count(report, Severity.Fix)} to fix, {Count(report, Severity.Note)} to note.\n");
        foreach (var segment in report.Segments)
            text.Append(CultureInfo.InvariantCulture, $"  {Time(segment.StartSeconds)} {string.Join(" and ", segment.Drinks)}\n");
        foreach (var finding in report.Findings)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{FindingJson.NameOf(finding.Severity)} {Time(finding.TimeSeconds)}{(finding.Drink is null ? "" : finding.Drink + ": ")}{finding.Message}\n");
            text.Append(CultureInfo.InvariantCulture, $"     {finding.Remedy}\n");
        }

        if (report.NotMade.Count > 0)
            text.Append("\nNot checked:\n");
        foreach (var check in report.NotMade)
            text.Append(CultureInfo.InvariantCulture, $"  {check.Kind}: {check.Reason}\n");
        return text.ToString();
    }

    private static int Count(CalloutReport report, Severity severity) => report.Findings.Count(finding => finding.Severity == severity);

    private static string Time(double? seconds) => seconds is { } known
        ? string.Create(CultureInfo.InvariantCulture, $"{(long)known / 60}:{(long)known % 60:00} ")
        : "";
}
