namespace Barshow.Engine.Specs;

/// <summary>How sure one is of a story.</summary>
public enum Sureness
{
    /// <summary>A document of the time says so.</summary>
    Documented,

    /// <summary>Told often, not shown.</summary>
    Told,

    /// <summary>Disputed.</summary>
    Disputed,
}

/// <summary>A story told beside a drink.</summary>
/// <param name="Text">The story, a sentence or two.</param>
/// <param name="Sureness">How sure one is.</param>
/// <param name="Source">Where it stands written; null for none.</param>
public sealed record Story(string Text, Sureness Sureness, string? Source = null);
