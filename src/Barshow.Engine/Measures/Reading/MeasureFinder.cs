namespace Barshow.Engine.Measures.Reading;

/// <summary>Finds measures in running speech or text: "we're going in with an ounce and a half, forty-five mil, of white rum".</summary>
/// <remarks>
/// Stands on the same grammar as the line reader, but mends no spelling, so that ordinary words are not taken for units. A number without a unit is no measure
/// unless it is asked for. Never throws; the work grows in step with the length of the text.
/// </remarks>
public static class MeasureFinder
{
    /// <summary>The measures of a text, in order.</summary>
    /// <param name="text">The text; line breaks count as white space.</param>
    /// <param name="bareCounts">Whether numbers without a unit ("two limes", but also "two minutes") are given too; articles never are.</param>
    public static IReadOnlyList<FoundMeasure> Find(string text, bool bareCounts = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        using var run = new TokenRun(text);
        return new SpeechGrammar(run, bareCounts).Measures();
    }
}
