using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Featured;

/// <summary>One drink shown in one episode.</summary>
public sealed record Feature
{
    /// <summary>The episode's name it is kept under; empty for an episode from before.</summary>
    public Slug Episode { get; init; }

    /// <summary>The episode's title.</summary>
    public required string EpisodeTitle { get; init; }

    /// <summary>When it was shown.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The drink as it was shown; one without lines when only the name is known.</summary>
    public required Spec Spec { get; init; }

    /// <summary>A note; what viewers found worth answering next time.</summary>
    public string Note { get; init; } = "";

    /// <summary>Where it can be seen; empty when unknown.</summary>
    public string Address { get; init; } = "";
}

/// <summary>All that was featured.</summary>
/// <param name="Features">Oldest first.</param>
public sealed record FeaturedLog(IReadOnlyList<Feature> Features)
{
    /// <summary>Nothing yet.</summary>
    public static FeaturedLog Empty { get; } = new([]);
}
