using Barshow.Engine.Findings;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Episodes.Briefs;

/// <summary>Reads one recipe as it is pasted: its name, a line for each ingredient, then method, glass and garnish.</summary>
/// <remarks>The same grammar as a drink of a brief.</remarks>
public static class RecipeReader
{
    // A brief has a title and a blank line before its first drink.
    private const string Head = "Recipe\n\n";
    private const int LinesOfHead = 2;

    /// <summary>Reads a recipe.</summary>
    /// <returns>The spec, null when there is no drink in the text; and what could not be understood, each with its line counted from 1.</returns>
    public static (Spec? Spec, IReadOnlyList<Finding> Findings) Read(string text, Bar bar)
    {
        ArgumentNullException.ThrowIfNull(text);
        var read = BriefReader.Read(Head + text.Trim().ReplaceLineEndings("\n"), bar);
        var drink = read.Episode is { Lineup: [var first, ..] } ? first : null;
        return (drink?.Spec, [.. read.Findings.Where(finding => finding.Line is null or > LinesOfHead).Select(finding => finding.Line is { } line ? finding with { Line = line - LinesOfHead } : finding)]);
    }
}
