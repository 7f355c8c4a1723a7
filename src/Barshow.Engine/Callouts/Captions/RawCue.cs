namespace Barshow.Engine.Callouts.Captions;

/// <summary>A cue as it stands in the file: its text in lines, tags taken off, repeated lines still there.</summary>
internal readonly record struct RawCue(double? Start, double? End, List<string> Text, int Line);
