using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>What a glass's name says of its build.</summary>
internal static class GlassNames
{
    private static readonly string[] Stemmed =
        ["coupe", "nora", "martini", "cocktail glass", "flute", "saucer", "stem", "wine glass", "goblet", "snifter", "sour glass", "cordial glass", "copita", "tulip"];

    /// <summary>Whether glasses of that name stand on a stem.</summary>
    public static bool SayStemmed(string name)
    {
        var folded = NameFolding.Fold(name);
        return Stemmed.Any(stemmed => folded.Contains(stemmed, StringComparison.Ordinal));
    }
}
