using System.Text.RegularExpressions;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Publishing.Chapters;

/// <summary>Finds text that a page would take for a chapter, because it reads as a time.</summary>
public static partial class ChapterLookalikes
{
    /// <summary>A finding for every line outside the chapter list that holds such a text.</summary>
    /// <param name="description">The whole description.</param>
    /// <param name="chapters">The chapters whose own lines are left alone.</param>
    public static IReadOnlyList<Finding> Check(string description, ChapterList chapters)
    {
        ArgumentNullException.ThrowIfNull(description);
        ArgumentNullException.ThrowIfNull(chapters);
        var own = chapters.FitForDescription ? chapters.Chapters.Select(chapter => chapter.ToString()).ToHashSet(StringComparer.Ordinal) : [];
        var findings = new List<Finding>();
        var number = 0;
        foreach (var line in description.Split('\n'))
        {
            number++;
            if (!own.Contains(line) && Time().Match(line) is { Success: true } found)
                findings.Add(ChapterSentences.LooksLikeChapter("Description", found.Value, number));
        }

        return findings;
    }

    // "1:15" and "6:30" read as times; "1:1" and "2:1" do not.
    [GeneratedRegex(@"\b[0-9]{1,2}:[0-9]{2}(:[0-9]{2})?\b", RegexOptions.CultureInvariant)]
    private static partial Regex Time();
}
