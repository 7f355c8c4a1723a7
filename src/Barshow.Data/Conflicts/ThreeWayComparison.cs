using System.Text.Json;
using System.Text.Json.Nodes;
using Barshow.Data.Json;

namespace Barshow.Data.Conflicts;

/// <summary>Two states that grew from one, compared field by field, and joined as the user chooses.</summary>
/// <remarks>
/// Works on the JSON that the database holds, so it knows every field of every type. The things of a list are told apart
/// by their names; a list in which two have one name is one field.
/// </remarks>
public sealed class ThreeWayComparison<T>
    where T : class
{
    private readonly JsonNode _before;
    private readonly JsonNode _mine;
    private readonly JsonNode _theirs;

    /// <summary>Compares.</summary>
    /// <param name="before">The state that both began with.</param>
    /// <param name="mine">The state that is being saved.</param>
    /// <param name="theirs">The state that was saved meanwhile.</param>
    public ThreeWayComparison(T before, T mine, T theirs)
    {
        (_before, _mine, _theirs) = (Tree(before), Tree(mine), Tree(theirs));
        var walk = new ThreeWayWalk(_ => null);
        walk.Join(typeof(T), _before, _mine, _theirs);
        Differences = walk.Differences;
    }

    /// <summary>The fields that are different in mine and theirs, in the order they stand in; none when both are the same.</summary>
    public IReadOnlyList<Difference> Differences { get; }

    /// <summary>Whether both changed the same field.</summary>
    public bool Clashes => Differences.Any(difference => difference.Clash);

    /// <summary>The state with the side that was chosen for each field.</summary>
    /// <param name="choices">The side for a field's path; a field that is not in it takes its usual side.</param>
    public T Join(IReadOnlyDictionary<string, Side> choices)
    {
        ArgumentNullException.ThrowIfNull(choices);
        var walk = new ThreeWayWalk(path => choices.TryGetValue(path, out var side) ? side : null);
        return walk.Join(typeof(T), _before, _mine, _theirs).Deserialize<T>(DomainJson.Compact)!;
    }

    private static JsonNode Tree(T value) => JsonSerializer.SerializeToNode(value, DomainJson.Compact)!;
}
