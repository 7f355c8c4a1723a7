using Barshow.Engine.Measures.Reading;

namespace Barshow.Engine.Tests.Measures;

/// <summary>The reader's work grows in step with the line, counted in characters looked at; no clock is asked.</summary>
public class LinearReadingTests
{
    private const int Kilobyte = 1024;

    // A token is looked at by several rules, each a bounded number of times.
    private const int MostLooksAtACharacter = 220;

    [Theory]
    [InlineData("2 oz white rum, ")]
    [InlineData("white rum ")]
    [InlineData("1/")]
    [InlineData("1.")]
    [InlineData("1O")]
    [InlineData("9")]
    [InlineData("(")]
    [InlineData("()")]
    [InlineData("- ")]
    [InlineData("½ ")]
    [InlineData("one hundred and ")]
    [InlineData("a half of a ")]
    [InlineData("2-3-")]
    [InlineData("or 1 oz ")]
    [InlineData(", 1")]
    [InlineData(" to top")]
    [InlineData("optional, ")]
    [InlineData("heaped scant ")]
    [InlineData("ouncs 2 ")]
    [InlineData("x")]
    [InlineData("juice and ")]
    [InlineData("/ 2 oz ")]
    public void Characters_looked_at_grow_in_step_with_the_line(string piece)
    {
        var small = Visited(piece, Kilobyte);
        var large = Visited(piece, 1024 * Kilobyte);

        Assert.InRange(small, 0, (long)MostLooksAtACharacter * Kilobyte);
        Assert.InRange(large, 0, (long)MostLooksAtACharacter * 1024 * Kilobyte);
        Assert.InRange(large, 0, 1.1 * 1024 * small);
    }

    private static long Visited(string piece, int length)
    {
        var line = string.Concat(Enumerable.Repeat(piece, length / piece.Length + 1))[..length];
        LineReader.Read(line, out var visited);
        return visited;
    }
}
