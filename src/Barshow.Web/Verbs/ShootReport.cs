using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Barshow.Engine.Findings;
using Barshow.Engine.Shooting;
using Barshow.Engine.Shooting.Order;

namespace Barshow.Web.Verbs;

/// <summary>Writes a shoot plan as JSON for a program, or as text for a person.</summary>
internal static class ShootReport
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    /// <summary>One JSON object: shoot_order, viewer_order, levels, relax. Hours are local and without a zone, or from the call ("-02:15") when none is fixed.</summary>
    public static void WriteOrderJson(Stream output, ShootPlan plan)
    {
        using var json = new Utf8JsonWriter(output, Options);
        var clock = plan.Order.Clock;
        json.WriteStartObject();
        json.WriteStartArray("shoot_order");
        foreach (var block in plan.Order.Blocks)
        {
            json.WriteStartObject();
            json.WriteString("block", block.Name);
            json.WriteString("start", clock.Write(block.Start));
            json.WriteString("end", clock.Write(block.End));
            if (!block.Drink.IsEmpty)
                json.WriteString("drink", block.Drink.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("viewer_order");
        foreach (var drink in plan.Viewers.Drinks)
            json.WriteStringValue(drink.Text);
        json.WriteEndArray();
        json.WriteStartArray("levels");
        foreach (var level in plan.Order.Levels)
        {
            json.WriteStartObject();
            json.WriteString("aim", level.Aim);
            json.WriteNumber("value", level.Value);
            json.WriteNumber("bound", level.Bound);
            json.WriteString("unit", level.Unit);
            json.WriteBoolean("proven", level.Proven);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("relax");
        foreach (var requirement in plan.Order.Relaxed)
            json.WriteStringValue(requirement.ToString());
        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        output.WriteByte((byte)'\n');
    }

    /// <summary>One JSON array of tasks: task, start, end, hands, amount, not_before, not_after, for.</summary>
    public static void WriteMiseJson(Stream output, ShootPlan plan)
    {
        using var json = new Utf8JsonWriter(output, Options);
        var clock = plan.Mise.Clock;
        json.WriteStartArray();
        foreach (var task in plan.Mise.Tasks)
        {
            json.WriteStartObject();
            json.WriteString("task", task.Text);
            json.WriteString("start", clock.Write(task.Start));
            json.WriteString("end", clock.Write(task.End));
            json.WriteNumber("hands", task.Hands);
            json.WriteString("amount", task.Amount);
            json.WriteString("not_before", clock.Write(task.NotBefore));
            json.WriteString("not_after", clock.Write(task.NotAfter));
            json.WriteStartArray("for");
            foreach (var drink in task.For)
                json.WriteStringValue(drink.Text);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Flush();
        output.WriteByte((byte)'\n');
    }

    /// <summary>The blocks with their hours, how far each aim was met, and the findings.</summary>
    public static void WriteOrderText(TextWriter output, ShootPlan plan)
    {
        foreach (var block in plan.Order.Blocks)
            output.WriteLine($"{plan.Order.Clock.Say(block.Start)}  {block.Name}{(block.Reason.Length > 0 ? "  (" + block.Reason.TrimEnd('.') + ")" : "")}");
        output.WriteLine();
        foreach (var level in plan.Order.Levels)
            output.WriteLine(Said(level));
        WriteFindings(output, plan.Order.Findings.Concat(plan.Viewers.Findings).Concat(plan.Tasting.Findings));
    }

    /// <summary>The tasks with their hours, and the findings.</summary>
    public static void WriteMiseText(TextWriter output, ShootPlan plan)
    {
        foreach (var task in plan.Mise.Tasks)
            output.WriteLine($"{plan.Mise.Clock.Say(task.Start)}  {task.Text}{(task.Amount.Length > 0 ? "  " + task.Amount : "")}");
        WriteFindings(output, plan.Mise.Findings);
    }

    private static string Said(Level level) => string.Create(CultureInfo.InvariantCulture,
        $"{level.Aim}: {level.Value} {level.Unit}, {(level.Proven ? "proven" : $"bound {level.Bound}")}");

    private static void WriteFindings(TextWriter output, IEnumerable<Finding> findings)
    {
        var said = findings.OrderByDescending(finding => finding.Severity).ToList();
        if (said.Count > 0)
            output.WriteLine();
        foreach (var finding in said)
            output.WriteLine($"{finding.Severity.ToString().ToLowerInvariant()}: {finding.Message} {finding.Remedy}");
    }
}
