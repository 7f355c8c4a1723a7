using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Tracks;

namespace Barshow.Engine.Publishing.Chapters;

/// <summary>The chapters of a film, in film order, with what stands against publishing them.</summary>
public sealed record ChapterList
{
    /// <summary>Every chapter, the first at nought, starts strictly rising; empty when film times are missing.</summary>
    public IReadOnlyList<Chapter> Chapters { get; init; } = [];

    /// <summary>How long the film is, in seconds; null when it is not known.</summary>
    public double? FilmLengthSeconds { get; init; }

    /// <summary>Whether a page would accept the list, so that the description may carry it.</summary>
    public bool FitForDescription { get; init; }

    /// <summary>What the chapters have to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>The end of the chapter at an index: the next one's start, or the film's end.</summary>
    /// <param name="index">Which chapter, counted from 0.</param>
    /// <param name="lastLength">Seconds the last one is given when the film's length is not known.</param>
    public double EndOf(int index, double lastLength) =>
        index + 1 < Chapters.Count ? Chapters[index + 1].StartSeconds
        : FilmLengthSeconds ?? Chapters[index].StartSeconds + lastLength;

    /// <summary>The chapter track (WebVTT, kind "chapters"); null when there are no chapters.</summary>
    /// <param name="lastLength">Seconds the last chapter is given when the film's length is not known.</param>
    public string? ToWebVtt(double lastLength) => Chapters.Count == 0
        ? null
        : WebVtt.Write("chapters", [.. Chapters.Select((chapter, i) => new Cue(chapter.StartSeconds, EndOf(i, lastLength), WebVtt.Text(chapter.Title)))]);
}
