using System.Text.Json.Nodes;

namespace Barshow.Data.Conflicts;

/// <summary>A list whose things are told apart by their names.</summary>
internal sealed class NamedList
{
    // What tells a thing from its neighbours, the first that it has.
    private static readonly string[] TellingFields = ["slug", "name", "layer", "cut", "text", "label", "ingredient", "allergen", "what", "question"];

    private readonly Dictionary<string, JsonNode> _byName = [];

    private NamedList()
    {
    }

    public List<string> Names { get; } = [];

    public JsonNode? this[string name] => _byName.GetValueOrDefault(name);

    /// <summary>The list by names; null when something in it has none, or two have the same.</summary>
    public static NamedList? Of(JsonArray? array)
    {
        var list = new NamedList();
        foreach (var item in array ?? [])
        {
            if (NameOf(item) is not { } name || !list._byName.TryAdd(name, item!))
                return null;
            list.Names.Add(name);
        }

        return list;
    }

    private static string? NameOf(JsonNode? item) => item switch
    {
        JsonValue value when value.TryGetValue<string>(out var text) => text,
        JsonObject whole when whole["spec"] is JsonObject spec => NameOf(spec),
        JsonObject whole when whole["region"] is JsonValue region => $"{region} {whole["name"]}",
        JsonObject whole => TellingFields.Select(each => whole[each]).FirstOrDefault(each => each is JsonValue)?.ToString(),
        _ => null,
    };
}
