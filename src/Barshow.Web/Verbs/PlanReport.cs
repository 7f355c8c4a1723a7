using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Barshow.Engine.Findings;
using Barshow.Engine.Planning.Lineup;

namespace Barshow.Web.Verbs;

/// <summary>Writes a plan as JSON for a program, or as text for a person.</summary>
internal static class PlanReport
{
    /// <summary>One JSON object: lineup, levels, reasons, replacements, relax, seconds_first, seconds_proof.</summary>
    /// <remarks>Reasons and replacements are by slug of the drink; a drink that nothing can replace has null. Variety is a number to be high, the others are to be low.</remarks>
    public static void WriteJson(Stream to, LineupPlan plan, PlanTimes times)
    {
        using var json = new Utf8JsonWriter(to, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) });
        json.WriteStartObject();
        json.WriteStartArray("lineup");
        foreach (var pick in plan.Picks)
            json.WriteStringValue(pick.Spec.Slug.Text);
        json.WriteEndArray();
        json.WriteStartArray("levels");
        foreach (var level in plan.Levels)
        {
            json.WriteStartObject();
            json.WriteString("aim", NameOf(level.Aim));
            json.WriteNumber("value", level.Value);
            json.WriteNumber("bound", level.Bound);
            json.WriteBoolean("proven", level.Proven);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("reasons");
        foreach (var pick in plan.Picks)
            json.WriteString(pick.Spec.Slug.Text, pick.Reason);
        json.WriteEndObject();
        json.WriteStartObject("replacements");
        foreach (var pick in plan.Picks)
            json.WriteString(pick.Spec.Slug.Text, pick.Replacement?.Drink.Text);
        json.WriteEndObject();
        json.WriteStartArray("relax");
        foreach (var requirement in plan.Relax)
            json.WriteStringValue(requirement.Words);
        json.WriteEndArray();
        WriteSeconds(json, "seconds_first", times.First);
        WriteSeconds(json, "seconds_proof", times.Proof);
        json.WriteEndObject();
        json.Flush();
        to.WriteByte((byte)'\n');
    }

    /// <summary>The plan on one screen.</summary>
    public static void WriteText(TextWriter to, LineupPlan plan, PlanTimes times, string currency)
    {
        foreach (var pick in plan.Picks)
        {
            to.WriteLine(pick.Spec.Name);
            to.WriteLine($"  {pick.Reason}");
            if (pick.Replacement is { } other)
                to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  In its place: {other.Name}, {other.CostChange:+0.##;-0.##;0} {(plan.Priced ? currency : "packs")}"));
        }

        foreach (var level in plan.Levels)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{NameOf(level.Aim)} {level.Value:0.##}, {(level.Proven ? "proven best" : $"none is better than {level.Bound:0.##}")}"));
        if (times.First is { } first)
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"first lineup after {first:0.00} s{(times.Proof is { } proof ? $", proof after {proof:0.00} s" : "")}"));
        foreach (var finding in plan.Findings.Where(finding => finding.Severity is not Severity.Note || plan.Picks.Count == 0))
            to.WriteLine($"{finding.Severity}: {finding.Message} {finding.Remedy}");
    }

    private static string NameOf(Aim aim) => aim.ToString().ToLowerInvariant();

    private static void WriteSeconds(Utf8JsonWriter json, string name, double? seconds)
    {
        if (seconds is { } known)
            json.WriteNumber(name, Math.Round(known, 3));
        else
            json.WriteNull(name);
    }
}
