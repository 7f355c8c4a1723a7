using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Callouts;

/// <summary>What was said, and how it stands against the spec and the brief.</summary>
/// <param name="Callouts">Every amount that was said, in order.</param>
/// <param name="Segments">Where each drink is taught, in order.</param>
/// <param name="Findings">In order of film time; those without a time last.</param>
/// <param name="NotMade">Checks that were not made, each with what is missing.</param>
public sealed record CalloutReport(IReadOnlyList<SaidCallout> Callouts, IReadOnlyList<FilmSegment> Segments, IReadOnlyList<Finding> Findings, IReadOnlyList<CheckNotMade> NotMade)
{
    /// <summary>How the captions were written; null for a written text.</summary>
    public CaptionFormat? Format { get; init; }

    /// <summary>Where the last cue ends, in seconds of film; null when it is not known.</summary>
    public double? LastSeconds { get; init; }
}

/// <summary>A check that was not made.</summary>
/// <param name="Kind">The finding it would have given, by its name.</param>
/// <param name="Reason">What is missing, a sentence.</param>
public sealed record CheckNotMade(string Kind, string Reason);
