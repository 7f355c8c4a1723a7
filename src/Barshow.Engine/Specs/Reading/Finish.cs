using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Reading;

/// <summary>What the closing line of a drink says: how it is made, in which glass, with what on it.</summary>
/// <param name="Method">How it is made; null when it was not said.</param>
/// <param name="Serve">How it is served: what was said, and by habit what was not.</param>
/// <param name="Garnish">What finishes it; null for no garnish.</param>
/// <param name="Findings">What the reader has to say; places count within the line.</param>
public sealed record Finish(Method? Method, Serve Serve, Garnish? Garnish, IReadOnlyList<Finding> Findings)
{
    /// <summary>The glass as it was written; empty when none was named.</summary>
    public string GlassName { get; init; } = "";

    /// <summary>Whether the line says that there is no garnish.</summary>
    public bool SaysNoGarnish { get; init; }
}
