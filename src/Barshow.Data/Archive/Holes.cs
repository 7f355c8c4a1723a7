using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;

namespace Barshow.Data.Archive;

/// <summary>Finds what the engine's types rule out and JSON lets through: a null in a list, an empty text where a measure belongs, a text without end.</summary>
internal static class Holes
{
    private const int LongestText = 1 << 20;
    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Properties = new();
    private static readonly NullabilityInfoContext Nullability = new();

    /// <exception cref="ArchiveRefusal">There is one.</exception>
    public static void Check(ArchiveChecks.Where where, object thing)
    {
        foreach (var property in PropertiesOf(thing.GetType()))
        {
            switch (property.GetValue(thing))
            {
                case null:
                    where.Demand(MayBeNull(property), $"has no {property.Name}");
                    break;
                case string text:
                    where.Demand(text.Length <= LongestText, $"has more than {LongestText:D} characters in {property.Name}");
                    break;
                case IEnumerable list:
                    foreach (var each in list)
                    {
                        where.Demand(each is not null, $"has a gap in {property.Name}");
                        if (each is not string)
                            Check(where, each!);
                    }

                    break;
                case { } part:
                    Check(where, part);
                    break;
            }
        }
    }

    // Only the engine's own records are looked into; a date or a number holds nothing to find.
    private static PropertyInfo[] PropertiesOf(Type type) => Properties.GetOrAdd(type, static each =>
        each.Assembly != typeof(Engine.Names.Slug).Assembly || each.IsEnum || each.IsValueType && each.GetProperties().All(property => property.PropertyType.IsPrimitive)
            ? []
            : [.. each.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.SetMethod is not null && property.GetIndexParameters().Length == 0)]);

    private static bool MayBeNull(PropertyInfo property)
    {
        lock (Nullability)
            return Nullability.Create(property).ReadState != NullabilityState.NotNull;
    }
}
