using System.Collections;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using System.Text.Unicode;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;

namespace Barshow.Data.Json;

/// <summary>How the engine's own types are written as JSON, in the database and in the archive alike.</summary>
/// <remarks>
/// Property names in camelCase; a value that a new object has anyway is left out; enumerations by kebab-case name;
/// a measure, a fraction, a unit and a slug as their canonical text; a strength as its percentage; a date as 2026-11-24.
/// An unknown property is refused, so that a newer file is never read as if it were understood.
/// </remarks>
public static class DomainJson
{
    /// <summary>One line, as the database holds it.</summary>
    public static JsonSerializerOptions Compact { get; } = Options(indented: false);

    /// <summary>Indented, as the archive holds it.</summary>
    public static JsonSerializerOptions Readable { get; } = Options(indented: true);

    private static JsonSerializerOptions Options(bool indented)
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.General)
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { LeaveOutWhatANewOneHas } },
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            IgnoreReadOnlyProperties = true,
            RespectNullableAnnotations = true,
            AllowDuplicateProperties = false,
            WriteIndented = indented,
            NewLine = "\n",
            MaxDepth = 32,
            Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
            Converters =
            {
                new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false),
                new TextConverter<Slug>(Slug.Parse, slug => slug.Text),
                new TextConverter<Measure>(Measure.Parse, measure => measure.ToString()),
                new TextConverter<Unit>(Unit.Named, unit => unit.Name),
                new TextConverter<Rational>(text => Rational.TryParse(text, out var value) ? value : throw new FormatException($"\"{text}\" is no fraction."), value => value.ToString()),
                new StrengthConverter(),
            },
        };
        options.MakeReadOnly();
        return options;
    }

    // Leaving out default(T) would lose a nought that replaces another default, such as a spill share set to 0.
    private static void LeaveOutWhatANewOneHas(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object)
            return;
        var fresh = type.Type.GetConstructor(Type.EmptyTypes) is null ? null : Activator.CreateInstance(type.Type);
        foreach (var property in type.Properties)
        {
            if (property.Get is not { } get || property.Set is null || property.IsRequired)
                continue;
            var usual = fresh is null ? null : get(fresh);
            property.ShouldSerialize = (_, value) => !Equals(value, usual) && !(IsEmptyList(value) && IsEmptyList(usual));
        }
    }

    private static bool IsEmptyList(object? value) => value is ICollection { Count: 0 };

    private sealed class TextConverter<T>(Func<string, T> read, Func<T, string> write) : JsonConverter<T>
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            var text = reader.GetString() ?? throw new JsonException("A text was expected.");
            try
            {
                return text.Length == 0 ? default! : read(text);
            }
            catch (Exception problem) when (problem is FormatException or ArgumentException)
            {
                throw new JsonException(problem.Message, problem);
            }
        }

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(write(value));
    }

    private sealed class StrengthConverter : JsonConverter<Strength>
    {
        public override Strength Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            try
            {
                return Strength.FromPercent(reader.GetDouble());
            }
            catch (ArgumentOutOfRangeException problem)
            {
                throw new JsonException(problem.Message, problem);
            }
        }

        // Fifteen figures keep 40 from coming out as 40.00000000000001.
        public override void Write(Utf8JsonWriter writer, Strength value, JsonSerializerOptions options) => writer.WriteNumberValue(Math.Round(value.Percent, 12));
    }
}
