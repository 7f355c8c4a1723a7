using System.Globalization;
using System.Text.Json;
using System.Xml;

namespace Barshow.Engine.Tests.Publishing.Vocabulary;

/// <summary>Checks JSON-LD against the committed part of the vocabulary: every type known, every property one of the type's, every value of a type the property takes. Nothing is fetched.</summary>
internal static class VocabularyCheck
{
    private static readonly JsonElement Vocabulary = JsonDocument.Parse(System.IO.File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Publishing", "Vocabulary", "schema-org-30.0.json"))).RootElement;

    /// <summary>What is wrong with a document, a line each; empty when nothing is.</summary>
    public static IReadOnlyList<string> Problems(string json)
    {
        var root = JsonDocument.Parse(json).RootElement;
        var problems = new List<string>();
        if (!root.TryGetProperty("@context", out var context) || context.GetString() != Vocabulary.GetProperty("context").GetString())
            problems.Add("The context is not the vocabulary's.");
        CheckNode(root, "$", problems);
        return problems;
    }

    private static void CheckNode(JsonElement node, string path, List<string> problems)
    {
        if (!node.TryGetProperty("@type", out var typed) || !Vocabulary.GetProperty("types").TryGetProperty(typed.GetString()!, out _))
        {
            problems.Add($"{path} has no known type.");
            return;
        }

        var type = typed.GetString()!;
        var seen = new HashSet<string>();
        foreach (var property in node.EnumerateObject())
        {
            if (!seen.Add(property.Name))
                problems.Add($"{path}.{property.Name} stands twice.");
            if (property.Name.StartsWith('@'))
                continue;
            if (Vocabulary.GetProperty("superseded").EnumerateArray().Any(name => name.GetString() == property.Name))
                problems.Add($"{path}.{property.Name} is superseded.");
            else if (RangeOf(type, property.Name) is not { } range)
                problems.Add($"{path}.{property.Name} is no property of {type}.");
            else
                foreach (var (value, i) in (property.Value.ValueKind is JsonValueKind.Array ? property.Value.EnumerateArray().ToArray() : [property.Value]).Select((value, i) => (value, i)))
                    CheckValue(value, range, $"{path}.{property.Name}[{i}]", problems);
        }
    }

    private static void CheckValue(JsonElement value, IReadOnlyList<string> range, string path, List<string> problems)
    {
        if (value.ValueKind is JsonValueKind.Object)
        {
            if (!value.TryGetProperty("@type", out var type) || !range.Any(wanted => IsA(type.GetString()!, wanted)))
                problems.Add($"{path} is no {string.Join(" or ", range)}.");
            CheckNode(value, path, problems);
        }
        else if (!range.Any(wanted => Fits(value, wanted)))
        {
            problems.Add($"{path} is no {string.Join(" or ", range)}: {value}");
        }
    }

    private static bool Fits(JsonElement value, string wanted) => wanted switch
    {
        "Text" => value.ValueKind is JsonValueKind.String && value.GetString()!.Length > 0,
        "URL" => value.ValueKind is JsonValueKind.String && Uri.TryCreate(value.GetString(), UriKind.Absolute, out var uri) && uri.Scheme is "https" or "http",
        "Boolean" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
        "Integer" => value.ValueKind is JsonValueKind.Number && value.TryGetInt64(out _),
        "Number" => value.ValueKind is JsonValueKind.Number,
        "Date" => value.ValueKind is JsonValueKind.String && DateOnly.TryParseExact(value.GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _),
        "DateTime" => value.ValueKind is JsonValueKind.String && DateTimeOffset.TryParseExact(value.GetString(), "yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture, DateTimeStyles.None, out _),
        "Duration" => value.ValueKind is JsonValueKind.String && IsDuration(value.GetString()!),
        _ => false,
    };

    // xsd:duration follows ISO 8601.
    private static bool IsDuration(string text)
    {
        try
        {
            XmlConvert.ToTimeSpan(text);
            return true;
        }
        catch (FormatException)
        {
            return false;
        }
    }

    private static IReadOnlyList<string>? RangeOf(string type, string property)
    {
        for (var at = type; at is not null; at = ParentOf(at))
            if (Vocabulary.GetProperty("types").GetProperty(at).GetProperty("properties").TryGetProperty(property, out var range))
                return [.. range.EnumerateArray().Select(name => name.GetString()!)];
        return null;
    }

    private static bool IsA(string type, string wanted)
    {
        for (var at = type; at is not null; at = ParentOf(at))
            if (at == wanted)
                return true;
        return false;
    }

    private static string? ParentOf(string type) =>
        Vocabulary.GetProperty("types").TryGetProperty(type, out var known) && known.TryGetProperty("parent", out var parent) ? parent.GetString() : null;
}
