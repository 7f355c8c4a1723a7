using System.Text.Json.Nodes;

namespace Barshow.Data.Conflicts;

/// <summary>Goes through three trees side by side, writes down what is different and builds the joined tree.</summary>
/// <param name="choose">The side chosen for a path; null for the usual one.</param>
internal sealed class ThreeWayWalk(Func<string, Side?> choose)
{
    private readonly List<Difference> _differences = [];

    public IReadOnlyList<Difference> Differences => _differences;

    public JsonNode? Join(Type type, JsonNode? before, JsonNode? mine, JsonNode? theirs) => Join(FieldPath.Root(type), before, mine, theirs);

    private JsonNode? Join(FieldPath path, JsonNode? before, JsonNode? mine, JsonNode? theirs)
    {
        if (JsonNode.DeepEquals(mine, theirs))
            return mine?.DeepClone();
        if (mine is JsonObject myObject && theirs is JsonObject theirObject)
            return JoinObjects(path, before as JsonObject, myObject, theirObject);
        if (mine is null or JsonArray && theirs is null or JsonArray && NamedList.Of(before as JsonArray) is { } was && NamedList.Of(mine as JsonArray) is { } my && NamedList.Of(theirs as JsonArray) is { } their)
            return JoinLists(path, was, my, their);
        return Choose(path, before, mine, theirs);
    }

    private JsonObject JoinObjects(FieldPath path, JsonObject? before, JsonObject mine, JsonObject theirs)
    {
        var joined = new JsonObject();
        foreach (var name in mine.Select(each => each.Key).Concat(theirs.Select(each => each.Key)).Distinct().ToList())
        {
            if (Join(path.Property(name), before?[name], mine[name], theirs[name]) is { } value)
                joined.Add(name, value);
        }

        return joined;
    }

    private JsonArray JoinLists(FieldPath path, NamedList before, NamedList mine, NamedList theirs)
    {
        var joined = new Dictionary<string, JsonNode>();
        foreach (var name in mine.Names.Concat(theirs.Names).Distinct())
        {
            if (Join(path.Item(name), before[name], mine[name], theirs[name]) is { } item)
                joined.Add(name, item);
        }

        return new([.. Order(path, before, mine, theirs, joined).Select(name => joined[name])]);
    }

    private IEnumerable<string> Order(FieldPath path, NamedList before, NamedList mine, NamedList theirs, Dictionary<string, JsonNode> joined)
    {
        var side = Side.Mine;
        var (my, their) = (Common(mine, theirs), Common(theirs, mine));
        if (!my.SequenceEqual(their))
            side = Pick(path.Order(), Common(before, mine).SequenceEqual(Common(mine, before)), Common(before, theirs).SequenceEqual(Common(theirs, before)), Listed(Common(before, mine)), Listed(my), Listed(their));

        // One side leads; what only the other has goes in after the neighbour it has there.
        var (lead, other) = side == Side.Mine ? (mine, theirs) : (theirs, mine);
        var order = lead.Names.Where(joined.ContainsKey).ToList();
        foreach (var name in other.Names.Where(name => joined.ContainsKey(name) && lead[name] is null))
        {
            var neighbour = other.Names.TakeWhile(each => each != name).LastOrDefault(order.Contains);
            order.Insert(neighbour is null ? 0 : order.IndexOf(neighbour) + 1, name);
        }

        return order;

        static List<string> Common(NamedList of, NamedList with) => [.. of.Names.Where(name => with[name] is not null)];

        static string Listed(List<string> names) => names.Count == 0 ? PlainWords.Nothing : string.Join(", ", names);
    }

    private JsonNode? Choose(FieldPath path, JsonNode? before, JsonNode? mine, JsonNode? theirs)
    {
        var side = Pick(path, JsonNode.DeepEquals(before, mine), JsonNode.DeepEquals(before, theirs), path.Say(before), path.Say(mine), path.Say(theirs));
        return (side == Side.Mine ? mine : theirs)?.DeepClone();
    }

    private Side Pick(FieldPath path, bool mineIsAsBefore, bool theirsIsAsBefore, string before, string mine, string theirs)
    {
        var usual = mineIsAsBefore ? Side.Theirs : Side.Mine;
        _differences.Add(new(path.Text, path.Label, before, mine, theirs, Clash: !mineIsAsBefore && !theirsIsAsBefore, usual));
        return choose(path.Text) ?? usual;
    }
}
