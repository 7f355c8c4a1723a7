using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Unicode;

namespace Barshow.Engine.Publishing.Escaping;

/// <summary>JSON that may stand inside a script element: no <c>&lt;</c>, <c>&gt;</c>, <c>&amp;</c> or line separator is written as itself.</summary>
/// <remarks>
/// Inside a script element an HTML reader knows nothing of JSON: "&lt;/script" in a string would end it (HTML Living Standard, restrictions for contents of script elements).
/// JSON decodes no HTML references, so the escapes are JSON's own.
/// </remarks>
public static class ScriptJson
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    /// <summary>The value, indented, lines ended by a line feed.</summary>
    public static string Write(JsonNode value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.ToJsonString(Indented);
    }
}
