using System.Buffers;
using System.Text;
using System.Text.Json;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts;

/// <summary>A report as JSON: {"callouts": [...], "segments": [...], "findings": [...], "not_made": [...]}.</summary>
/// <remarks>Of a range the lower end is written. Metric amounts are written as ml whatever their unit.</remarks>
public static class CalloutReportJson
{
    /// <summary>The report, indented, ended by a line feed.</summary>
    public static string Write(CalloutReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, FindingJson.Readable))
        {
            writer.WriteStartObject();
            writer.WriteStartArray("callouts");
            foreach (var callout in report.Callouts)
                Write(writer, callout);
            writer.WriteEndArray();
            writer.WriteStartArray("segments");
            foreach (var segment in report.Segments)
                Write(writer, segment);
            writer.WriteEndArray();
            writer.WritePropertyName("findings");
            FindingJson.WriteArray(writer, report.Findings);
            writer.WriteStartArray("not_made");
            foreach (var check in report.NotMade)
            {
                writer.WriteStartObject();
                writer.WriteString("kind", check.Kind);
                writer.WriteString("reason", check.Reason);
                writer.WriteEndObject();
            }

            writer.WriteEndArray();
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void Write(Utf8JsonWriter writer, SaidCallout callout)
    {
        writer.WriteStartObject();
        WriteNumber(writer, "time_s", callout.TimeSeconds is { } seconds ? Math.Round(seconds, 3) : null);
        writer.WriteString("text", FindingJson.WellFormed(callout.Text));
        WriteNumber(writer, "ml", callout.Metric is { Low: { } low, Unit.Millilitres: { } each } ? (low * each).ToDouble() : null);
        WriteNumber(writer, "oz", callout.Ounces?.Low?.ToDouble());
        WriteNumber(writer, "count", callout.Counted?.Low?.ToDouble());
        WriteText(writer, "unit", callout.Counted is { } counted ? counted.Open is { } open ? Measure.NameOf(open) : counted.Unit?.Name : null);
        if (callout.Agrees is { } agree)
            writer.WriteBoolean("agree", agree);
        else
            writer.WriteNull("agree");
        WriteText(writer, "drink", callout.Drinks.Count > 0 ? callout.Drinks[0] : null);
        if (callout.Drinks.Count > 1)
        {
            writer.WriteStartArray("drinks");
            foreach (var drink in callout.Drinks)
                writer.WriteStringValue(FindingJson.WellFormed(drink));
            writer.WriteEndArray();
        }

        WriteText(writer, "ingredient", callout.Ingredient);
        writer.WriteBoolean("retracted", callout.Retracted);
        writer.WriteBoolean("repeat", callout.Repeat);
        writer.WriteBoolean("mention", callout.Mention);
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, FilmSegment segment)
    {
        writer.WriteStartObject();
        WriteNumber(writer, "start_s", segment.StartSeconds);
        WriteNumber(writer, "end_s", segment.EndSeconds);
        writer.WriteStartArray("drinks");
        foreach (var drink in segment.Drinks)
            writer.WriteStringValue(FindingJson.WellFormed(drink));
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter writer, string name, double? number)
    {
        if (number is { } value)
            writer.WriteNumber(name, value);
        else
            writer.WriteNull(name);
    }

    private static void WriteText(Utf8JsonWriter writer, string name, string? text)
    {
        if (text is null)
            writer.WriteNull(name);
        else
            writer.WriteString(name, FindingJson.WellFormed(text));
    }
}
