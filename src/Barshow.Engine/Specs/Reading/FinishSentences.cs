using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Reading;

/// <summary>What the reader of closing lines has to say.</summary>
internal static class FinishSentences
{
    public static Finding NothingRead(string line) => new(FindingCatalogue.FinishUnreadable, line,
        $"\"{Short(line)}\" names no method, glass or garnish that could be understood.",
        "Write the method, the glass and the garnish with commas between: \"shaken 12 seconds, coupe, lime wheel\".")
    { Place = new(0, line.Length), Said = line };

    public static Finding Repaired(string line, FoldedWord word, string known) => new(FindingCatalogue.ReadingRepaired, word.Place.Of(line),
        $"\"{word.Place.Of(line)}\" is read as \"{known}\".",
        $"Write \"{known}\" if that is meant, or the method that is.")
    { Place = word.Place, Said = word.Place.Of(line), Expected = known };

    private static string Short(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
