using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Barshow.Engine.Measures;
using Barshow.Engine.Measures.Writing;

namespace Barshow.Data.Conflicts;

/// <summary>Says names and values of the stored JSON as a person would.</summary>
internal static class PlainWords
{
    public const string Nothing = "nothing";

    /// <summary>"shootDate" as "shoot date".</summary>
    public static string Of(string name)
    {
        var words = new StringBuilder(name.Length + 4);
        foreach (var c in name)
        {
            if (char.IsAsciiLetterUpper(c))
                words.Append(' ').Append(char.ToLowerInvariant(c));
            else
                words.Append(c);
        }

        return words.ToString();
    }

    /// <summary>A value in plain words, without braces and quotes.</summary>
    public static string Say(JsonNode value) => value switch
    {
        JsonArray { Count: 0 } => Nothing,
        JsonArray list => string.Join(", ", list.Select(each => each is null ? Nothing : Say(each))),
        JsonObject { Count: 0 } => Nothing,
        JsonObject whole => SayObject(whole),
        JsonValue one when one.TryGetValue<bool>(out var yes) => yes ? "yes" : "no",
        JsonValue one when one.TryGetValue<string>(out var text) => SayText(text),
        JsonValue one when one.TryGetValue<double>(out var number) => number.ToString(CultureInfo.InvariantCulture),
        _ => value.ToJsonString(),
    };

    private static string SayObject(JsonObject whole)
    {
        if (whole["spec"] is JsonObject spec)
            return SayObject(spec);
        if (whole["layer"] is { } layer && whole["measure"] is { } measure)
            return $"{Say(layer)} {Say(measure)}";
        if (whole["amounts"] is JsonArray amounts && whole["name"] is { } line)
            return $"{Say(line)} ({Say(amounts)})";
        var name = whole["name"] ?? whole["title"] ?? whole["text"] ?? whole["label"] ?? whole["what"] ?? whole["question"];
        return name is not null ? Say(name) : string.Join("; ", whole.Where(each => each.Value is not null && !IsNo(each.Value)).Select(each => $"{Of(each.Key)} {Say(each.Value!)}"));
    }

    private static bool IsNo(JsonNode value) => value is JsonValue one && one.TryGetValue<bool>(out var yes) && !yes;

    // A measure stands as its canonical text; a name or a sentence is never one.
    private static string SayText(string text)
    {
        if (text.Length == 0)
            return Nothing;
        return char.IsAsciiDigit(text[0]) && Measure.TryParse(text, out var measure) && measure.Unit is not null ? MeasureWriter.Show(measure).Replace('\u00A0', ' ') : text;
    }
}
