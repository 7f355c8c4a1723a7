using Barshow.Engine.Findings;
using Barshow.Engine.Names;

namespace Barshow.Engine.Specs.Reading;

/// <summary>A word of a line with its place.</summary>
/// <param name="Text">The word, folded.</param>
/// <param name="Place">Where it stands in the line.</param>
internal readonly record struct FoldedWord(string Text, TextPlace Place)
{
    /// <summary>The words of a stretch of a line, apostrophes inside them, every other sign between them.</summary>
    public static List<FoldedWord> Of(string line, TextPlace stretch)
    {
        var words = new List<FoldedWord>();
        for (var i = stretch.Start; i < stretch.End;)
        {
            var start = i;
            while (i < stretch.End && (char.IsLetterOrDigit(line[i]) || line[i] is '\'' or '’' || char.IsSurrogate(line[i]) || char.GetUnicodeCategory(line[i]) is System.Globalization.UnicodeCategory.NonSpacingMark))
                i++;
            if (i == start)
            {
                if (line[i] == '&')
                    words.Add(new("and", new(i, 1)));
                i++;
                continue;
            }

            var folded = NameFolding.Fold(line[start..i]);
            if (folded.Length > 0)
                words.Add(new(folded, new(start, i - start)));
        }

        return words;
    }
}
