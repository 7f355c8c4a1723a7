namespace Barshow.Engine.Findings;

/// <summary>A stretch of a text that a reader was given.</summary>
/// <param name="Start">Offset of its first character (UTF-16), counted from 0.</param>
/// <param name="Length">How many characters it holds.</param>
public readonly record struct TextPlace(int Start, int Length)
{
    /// <summary>Offset just after the last character, counted from 0.</summary>
    public int End => Start + Length;

    /// <summary>The stretch itself.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The place lies outside <paramref name="text"/>.</exception>
    public string Of(string text) => text.Substring(Start, Length);
}
