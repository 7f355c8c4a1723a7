using Barshow.Engine.Findings;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>What was understood of a brief.</summary>
/// <param name="Episode">The episode it describes; null when it holds neither a title nor a drink.</param>
/// <param name="Findings">What could not be understood, each with its line, in the order of the lines.</param>
public sealed record ReadBrief(Episode? Episode, IReadOnlyList<Finding> Findings);
