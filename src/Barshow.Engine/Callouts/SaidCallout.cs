using Barshow.Engine.Measures;

namespace Barshow.Engine.Callouts;

/// <summary>One amount said on film. A dual amount is one callout with both sides as they were said.</summary>
/// <param name="Text">What was said.</param>
public sealed record SaidCallout(string Text)
{
    /// <summary>The start of the cue that holds the first word, in seconds of film; null when the speech has no times.</summary>
    public double? TimeSeconds { get; init; }

    /// <summary>The end of the cue that holds the last word, in seconds of film; null when it is not known.</summary>
    public double? EndSeconds { get; init; }

    /// <summary>The lines it is tied to, each by its drink's place in the lineup and its own in the drink, counted from 0.</summary>
    public IReadOnlyList<(int Drink, int Line)> Places { get; init; } = [];

    /// <summary>The side in ounces; null when none was said.</summary>
    public Measure? Ounces { get; init; }

    /// <summary>The side in metric volume; null when none was said.</summary>
    public Measure? Metric { get; init; }

    /// <summary>A count, spoons, dashes, a weight or an open measure; null for ounces and millilitres alone.</summary>
    public Measure? Counted { get; init; }

    /// <summary>Whether both sides are the same amount within 3 %; null when only one was said.</summary>
    public bool? Agrees { get; init; }

    /// <summary>The drinks it counts for: one, or several that are made side by side; empty when it belongs to none.</summary>
    public IReadOnlyList<string> Drinks { get; init; } = [];

    /// <summary>The line of the spec it is tied to, as the spec names it; or what was named when that is in no line; null when nothing was named.</summary>
    public string? Ingredient { get; init; }

    /// <summary>Whether it is tied to a line of a spec.</summary>
    public bool IsInSpec { get; init; }

    /// <summary>Taken back by a correction on film.</summary>
    public bool Retracted { get; init; }

    /// <summary>The same amount of the same line was said before.</summary>
    public bool Repeat { get; init; }

    /// <summary>Spoken of but not poured: a source's amount, an alternative, an invitation, a recap.</summary>
    public bool Mention { get; init; }
}

/// <summary>A stretch of film that teaches a drink, or several side by side.</summary>
/// <param name="Drinks">The drinks, by name.</param>
/// <param name="StartSeconds">Where it starts, in seconds of film; null when the speech has no times.</param>
/// <param name="EndSeconds">Where its last word ends; null when that is not known.</param>
public sealed record FilmSegment(IReadOnlyList<string> Drinks, double? StartSeconds, double? EndSeconds);
