using System.Text.Json;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Measures.Reading;

/// <summary>What was read of a line, as JSON.</summary>
/// <remarks>
/// The keys are text, amount, unit, ml, second, name, note, optional and findings, always all of them. An amount is exact: "3/2", or "6..8" for a range.
/// A unit is the canonical singular, or the open measure where there is no unit; ml counts by the bar convention and the usual bar sizes.
/// The second side has amount, unit and ml.
/// </remarks>
public static class ReadLineJson
{
    /// <summary>One object.</summary>
    /// <param name="writer">Where it is written.</param>
    /// <param name="read">The line.</param>
    /// <param name="line">Its number in the text it came from, counted from 1; findings carry it.</param>
    public static void Write(Utf8JsonWriter writer, ReadLine read, int? line = null)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(read);
        writer.WriteStartObject();
        writer.WriteString("text", FindingJson.WellFormed(read.Text));
        WriteMeasure(writer, read.Measure);
        if (read.Second is { } second)
        {
            writer.WriteStartObject("second");
            WriteMeasure(writer, second);
            writer.WriteEndObject();
        }
        else
        {
            writer.WriteNull("second");
        }

        writer.WriteString("name", FindingJson.WellFormed(read.Name));
        writer.WriteString("note", Note(read) is { } note ? FindingJson.WellFormed(note) : null);
        writer.WriteBoolean("optional", read.Optional);
        writer.WriteStartArray("findings");
        foreach (var finding in read.Findings)
            FindingJson.Write(writer, finding, line);
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    // Beside an amount the unit is written; what the hand does with it, "top" or "float", then goes before the note.
    private static string? Note(ReadLine read) =>
        read.Measure is { HasAmount: true, Unit: not null, Open: { } open }
            ? read.Note is { } note ? $"{Measure.NameOf(open)}, {note}" : Measure.NameOf(open)
            : read.Note;

    private static void WriteMeasure(Utf8JsonWriter writer, Measure? measure)
    {
        writer.WriteString("amount", measure is { Low: { } low } ? measure.IsRange ? $"{low}..{measure.High}" : low.ToString() : null);
        writer.WriteString("unit", measure?.Unit?.Name ?? (measure?.Open is { } open ? Measure.NameOf(open) : null));
        if (measure?.InMillilitres(Convention.Bar) is { } millilitres)
            writer.WriteNumber("ml", Math.Round(millilitres.ToDouble(), 10));
        else
            writer.WriteNull("ml");
    }
}
