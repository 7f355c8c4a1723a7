using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Shooting.Order;

/// <summary>Two drinks that follow one another for viewers and are alike.</summary>
/// <param name="First">The earlier.</param>
/// <param name="Second">The later.</param>
/// <param name="Alike">In what: "method and glass".</param>
/// <param name="Points">How much it counts.</param>
public sealed record AlikeNeighbours(Slug First, Slug Second, string Alike, int Points);

/// <summary>The order in which viewers see the drinks: it eases in, has no two neighbours alike, and builds to the closer.</summary>
public sealed record ViewerOrder
{
    /// <summary>The drinks as proposed.</summary>
    public IReadOnlyList<Slug> Drinks { get; init; } = [];

    /// <summary>Neighbours that are alike in the proposed order all the same.</summary>
    public IReadOnlyList<AlikeNeighbours> Alike { get; init; } = [];

    /// <summary>Neighbours that are alike in the lineup as it stands.</summary>
    public IReadOnlyList<AlikeNeighbours> AlikeNow { get; init; } = [];

    /// <summary>How far each aim was met.</summary>
    public IReadOnlyList<Level> Levels { get; init; } = [];

    /// <summary>The same aims measured on the lineup as it stands.</summary>
    public IReadOnlyList<long> ValuesNow { get; init; } = [];

    /// <summary>What the planner has to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}
