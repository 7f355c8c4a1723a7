using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using Barshow.Data.Json;

namespace Barshow.Data.Conflicts;

/// <summary>A place in a tree, with the engine's type that stands there.</summary>
internal sealed record FieldPath
{
    private readonly Type? _type;
    private readonly string _usual;

    private FieldPath(string text, string label, Type? type, string usual)
    {
        (Text, Label, _type, _usual) = (text, label, type, usual);
    }

    /// <summary>The place as a path.</summary>
    public string Text { get; }

    /// <summary>The place in plain words.</summary>
    public string Label { get; }

    public static FieldPath Root(Type type) => new("", "", type, PlainWords.Nothing);

    public FieldPath Property(string name)
    {
        var property = TypeInfo?.Properties.FirstOrDefault(each => each.Name == name);
        return new(Text.Length == 0 ? name : $"{Text}.{name}", Under(PlainWords.Of(name)), property?.PropertyType, UsualOf(property));
    }

    public FieldPath Item(string name) => new($"{Text}[{name}]", Under(name), ElementType, PlainWords.Nothing);

    public FieldPath Order() => new($"{Text}.order", Under("order"), null, PlainWords.Nothing);

    /// <summary>What stands there in plain words; what a new thing has where the tree leaves it out.</summary>
    public string Say(JsonNode? value) => value is null ? _usual : PlainWords.Say(value);

    private JsonTypeInfo? TypeInfo => _type is null ? null : DomainJson.Compact.GetTypeInfo(Nullable.GetUnderlyingType(_type) ?? _type);

    private Type? ElementType => TypeInfo?.ElementType;

    private string Under(string word) => Label.Length == 0 ? word : $"{Label} › {word}";

    private string UsualOf(JsonPropertyInfo? property)
    {
        if (property?.Get is not { } get || _type?.GetConstructor(Type.EmptyTypes) is null)
            return PlainWords.Nothing;
        return JsonSerializer.SerializeToNode(get(Activator.CreateInstance(_type)!), property.PropertyType, DomainJson.Compact) is { } usual ? PlainWords.Say(usual) : PlainWords.Nothing;
    }
}
