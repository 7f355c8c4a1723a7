namespace Barshow.Engine.Callouts.Captions;

/// <summary>How a caption file is written.</summary>
public enum CaptionFormat
{
    /// <summary>WebVTT (W3C).</summary>
    WebVtt,

    /// <summary>SubRip, a format without a standard.</summary>
    SubRip,

    /// <summary>Plain text with a time before some of the lines.</summary>
    TimedTranscript,

    /// <summary>Plain text.</summary>
    Transcript,
}
