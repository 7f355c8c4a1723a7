namespace Barshow.Engine.Publishing.Tracks;

/// <summary>One cue of a text track.</summary>
/// <param name="StartSeconds">Where it starts, in seconds from the start of the film.</param>
/// <param name="EndSeconds">Where it ends, after its start.</param>
/// <param name="Payload">Its text as it stands in the file: escaped for its kind of track, without blank lines.</param>
public sealed record Cue(double StartSeconds, double EndSeconds, string Payload);
