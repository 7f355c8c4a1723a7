namespace Barshow.Engine.Measures.Reading;

/// <summary>Reads ingredient lines as people write them: amount, unit, the same amount in a second unit, ingredient, how it is treated.</summary>
/// <remarks>
/// Never throws, whatever the line holds; what it cannot understand it says in findings. The work grows in step with the length of the line.
/// Places count from 0, in UTF-16 characters of the line. The grammar is written out in tests/specs/reading-measures.md.
/// </remarks>
public static class LineReader
{
    /// <summary>Reads one line.</summary>
    public static ReadLine Read(string line) => Read(line, out _);

    /// <summary>Reads one line and counts the characters that were looked at.</summary>
    internal static ReadLine Read(string line, out long visited)
    {
        ArgumentNullException.ThrowIfNull(line);
        using var run = new TokenRun(line);
        var read = new LineGrammar(run).Line();
        visited = run.Visited;
        return read;
    }
}
