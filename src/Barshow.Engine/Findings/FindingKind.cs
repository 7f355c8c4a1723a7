namespace Barshow.Engine.Findings;

/// <summary>One thing an engine can have to say, as the catalogue lists it.</summary>
/// <param name="Name">Its name in files and in help: lower-case words with hyphens.</param>
/// <param name="Severity">How much it matters, wherever it is met.</param>
/// <param name="Meaning">What it means and what it is checked against, in a sentence or two for help.</param>
public sealed record FindingKind(string Name, Severity Severity, string Meaning)
{
    /// <inheritdoc/>
    public override string ToString() => Name;
}
