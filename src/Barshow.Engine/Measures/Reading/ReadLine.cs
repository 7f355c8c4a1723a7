using Barshow.Engine.Findings;

namespace Barshow.Engine.Measures.Reading;

/// <summary>What the line reader understood of one ingredient line.</summary>
/// <param name="Text">The line as it was given.</param>
public sealed record ReadLine(string Text)
{
    /// <summary>The amount; null when the line names an ingredient only.</summary>
    public Measure? Measure { get; init; }

    /// <summary>The other side of a dual amount: the millilitres beside the ounces, or the other way round.</summary>
    public Measure? Second { get; init; }

    /// <summary>The ingredient, as it was written without amount and note; empty when none was found.</summary>
    public string Name { get; init; } = "";

    /// <summary>How it is cut or treated: "freshly pressed".</summary>
    public string? Note { get; init; }

    /// <summary>Whether the line says that the ingredient may be left out.</summary>
    public bool Optional { get; init; }

    /// <summary>Where the amount stands.</summary>
    public TextPlace? MeasurePlace { get; init; }

    /// <summary>Where the second amount stands.</summary>
    public TextPlace? SecondPlace { get; init; }

    /// <summary>Where the name stands.</summary>
    public TextPlace? NamePlace { get; init; }

    /// <summary>What the reader has to say; places count within <see cref="Text"/>.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}
