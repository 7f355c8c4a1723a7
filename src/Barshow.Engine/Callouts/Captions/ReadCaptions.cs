using Barshow.Engine.Findings;

namespace Barshow.Engine.Callouts.Captions;

/// <summary>What was understood of a caption file.</summary>
/// <param name="Format">How it is written.</param>
/// <param name="Cues">The speech, by start.</param>
/// <param name="Findings">What was left out and what was read although its format does not allow it.</param>
public sealed record ReadCaptions(CaptionFormat Format, IReadOnlyList<CaptionCue> Cues, IReadOnlyList<Finding> Findings)
{
    /// <summary>Whether the speech has times.</summary>
    public bool HasTimes => Format is not CaptionFormat.Transcript;
}
