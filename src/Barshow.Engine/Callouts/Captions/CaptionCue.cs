namespace Barshow.Engine.Callouts.Captions;

/// <summary>A stretch of speech as captions hold it.</summary>
/// <param name="StartSeconds">Where it starts, in seconds of film; null in a transcript without times.</param>
/// <param name="EndSeconds">Where it ends; not always after its start, and null where it is not known.</param>
/// <param name="Text">What is said: no tags, no references, no repeated lines; line breaks stand where the file breaks the line.</param>
/// <param name="Line">The line of the file on which its text begins, counted from 1.</param>
public sealed record CaptionCue(double? StartSeconds, double? EndSeconds, string Text, int Line);
