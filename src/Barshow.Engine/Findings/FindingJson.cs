using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;

namespace Barshow.Engine.Findings;

/// <summary>Findings as JSON, the same wherever the product writes them.</summary>
/// <remarks>
/// Always kind, severity ("note", "fix" or "stop"), subject, message and remedy; line (counted from 1), time_s (seconds of film), drink,
/// ingredient, said and expected only where they apply.
/// </remarks>
public static class FindingJson
{
    /// <summary>One line, letters of every script as they are.</summary>
    public static JsonWriterOptions OneLine { get; } = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    /// <summary>Indented for people, with line feeds on every machine.</summary>
    public static JsonWriterOptions Readable { get; } = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All), Indented = true, NewLine = "\n" };

    /// <summary>An indented array that ends with a line feed: the whole of findings.json.</summary>
    public static string File(IEnumerable<Finding> findings)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Readable))
            WriteArray(writer, findings);
        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>An array of findings.</summary>
    public static void WriteArray(Utf8JsonWriter writer, IEnumerable<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(findings);
        writer.WriteStartArray();
        foreach (var finding in findings)
            Write(writer, finding);
        writer.WriteEndArray();
    }

    /// <summary>One finding as an object.</summary>
    /// <param name="writer">Where it is written.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="line">The line it is said of, when the finding does not know it itself; counted from 1.</param>
    public static void Write(Utf8JsonWriter writer, Finding finding, int? line = null)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(finding);
        writer.WriteStartObject();
        writer.WriteString("kind", finding.Kind.Name);
        writer.WriteString("severity", NameOf(finding.Severity));
        writer.WriteString("subject", WellFormed(finding.Subject));
        writer.WriteString("message", WellFormed(finding.Message));
        writer.WriteString("remedy", WellFormed(finding.Remedy));
        if ((finding.Line ?? line) is { } number)
            writer.WriteNumber("line", number);
        if (finding.TimeSeconds is { } seconds)
            writer.WriteNumber("time_s", Math.Round(seconds, 3));
        WriteWhere(writer, "drink", finding.Drink);
        WriteWhere(writer, "ingredient", finding.Ingredient);
        WriteWhere(writer, "said", finding.Said);
        WriteWhere(writer, "expected", finding.Expected);
        writer.WriteEndObject();
    }

    /// <summary>The name of a severity in files: "note", "fix", "stop".</summary>
    public static string NameOf(Severity severity) => severity switch
    {
        Severity.Note => "note",
        Severity.Fix => "fix",
        Severity.Stop => "stop",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "No such severity."),
    };

    /// <summary>The text with every half of a surrogate pair, which JSON cannot hold, replaced by U+FFFD.</summary>
    public static string WellFormed(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.AsSpan().IndexOfAnyInRange('\uD800', '\uDFFF') < 0
            ? text
            : string.Concat(text.EnumerateRunes().Select(rune => rune.ToString()));
    }

    private static void WriteWhere(Utf8JsonWriter writer, string key, string? text)
    {
        if (text is not null)
            writer.WriteString(key, WellFormed(text));
    }
}
