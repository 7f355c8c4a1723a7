using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Publishing.Descriptions;

/// <summary>How far a part was shortened.</summary>
public enum Shortening
{
    /// <summary>It stands whole.</summary>
    None,

    /// <summary>Its short form stands.</summary>
    Short,

    /// <summary>It was left out.</summary>
    LeftOut,
}

/// <summary>One stretch of a description: a part, or the template's own text.</summary>
/// <param name="Part">The part; null for the template's own text.</param>
/// <param name="Text">The text as it stands in the description.</param>
/// <param name="Shortening">How far it was shortened.</param>
public sealed record DescriptionSection(DescriptionPart? Part, string Text, Shortening Shortening = Shortening.None)
{
    /// <summary>Its length in characters, as people count them: an emoji or a letter with its accent is one.</summary>
    public int Characters { get; } = TextLength.Characters(Text);

    /// <summary>Its length in UTF-8 bytes.</summary>
    public int Bytes { get; } = TextLength.Bytes(Text);
}

/// <summary>A description as it is copied to the publishing page.</summary>
public sealed record DescriptionBlock
{
    /// <summary>The whole text, lines ended by a line feed.</summary>
    public required string Text { get; init; }

    /// <summary>The text cut into its stretches, in order: put together they are the whole.</summary>
    public required IReadOnlyList<DescriptionSection> Sections { get; init; }

    /// <summary>Parts that were shortened, in the order it was done.</summary>
    public IReadOnlyList<(DescriptionPart Part, Shortening Shortening)> Shortened { get; init; } = [];

    /// <summary>What is shortened next, should it grow: parts that still stand, in order.</summary>
    public IReadOnlyList<DescriptionPart> NextToShorten { get; init; } = [];

    /// <summary>The most bytes the page takes.</summary>
    public required int LimitBytes { get; init; }

    /// <summary>Its length in characters, as people count them.</summary>
    public int Characters { get; init; }

    /// <summary>Its length in UTF-8 bytes.</summary>
    public int Bytes { get; init; }

    /// <summary>What the description has to say.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];
}
