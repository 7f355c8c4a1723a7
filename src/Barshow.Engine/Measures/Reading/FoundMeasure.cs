using Barshow.Engine.Findings;

namespace Barshow.Engine.Measures.Reading;

/// <summary>A measure met in running text. Places count from 0, in UTF-16 characters of the text.</summary>
/// <param name="Measure">The measure; an open one for "a splash of" and "top it with".</param>
/// <param name="Place">Where it stands, without what follows its unit.</param>
public sealed record FoundMeasure(Measure Measure, TextPlace Place)
{
    /// <summary>The same amount in the other family of units, said right after it.</summary>
    public Measure? Second { get; init; }

    /// <summary>Where the second stands.</summary>
    public TextPlace? SecondPlace { get; init; }

    /// <summary>What is measured, when the word stands between number and unit: the mint of "eight mint leaves".</summary>
    public string? Within { get; init; }

    /// <summary>Whether a slip was mended to read it, such as "too ounces".</summary>
    public bool IsRepaired { get; init; }

    /// <summary>From the first character to the last of either side.</summary>
    public TextPlace Whole => SecondPlace is { } second ? new(Place.Start, second.End - Place.Start) : Place;
}
