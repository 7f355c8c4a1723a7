using System.Globalization;
using System.Text.Json.Nodes;
using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.StructuredData;

/// <summary>Describes the film as a schema.org VideoObject with a Clip for each chapter.</summary>
public static class VideoData
{
    /// <summary>The film; null until it has an address.</summary>
    /// <param name="episode">The film.</param>
    /// <param name="bar">The house.</param>
    /// <param name="chapters">Its chapters; no clips are given without film times.</param>
    /// <param name="only">The one drink whose clip is given; null for all chapters.</param>
    public static JsonObject? Of(Episode episode, Bar bar, ChapterList chapters, LineupDrink? only = null)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        ArgumentNullException.ThrowIfNull(chapters);
        if (!WebAddress.TryRead(episode.FilmAddress, out var address))
            return null;
        var video = new JsonObject
        {
            ["@type"] = "VideoObject",
            ["name"] = PlainText.Line(episode.Title),
            ["description"] = PlainText.Line(episode.Theme.Length > 0 ? episode.Theme : episode.Title),
            ["url"] = address,
        };
        if (WebAddress.TryRead(episode.StillAddress, out var still))
            video["thumbnailUrl"] = still;
        if (episode.PublishDate is { } date)
            video["uploadDate"] = RecipeData.Date(date);
        if (chapters.FilmLengthSeconds is { } length)
            video["duration"] = IsoDuration.Write(TimeSpan.FromSeconds(Math.Round(length)));
        var clips = Clips(chapters, address, only);
        if (clips.Count > 0)
            video["hasPart"] = clips;
        return video;
    }

    private static JsonArray Clips(ChapterList chapters, string address, LineupDrink? only)
    {
        var clips = new JsonArray();
        for (var i = 0; i < chapters.Chapters.Count; i++)
        {
            var chapter = chapters.Chapters[i];
            if (only is not null && !chapter.Drinks.Contains(only.Spec.Slug))
                continue;
            var clip = new JsonObject { ["@type"] = "Clip", ["name"] = PlainText.Line(chapter.Title), ["startOffset"] = chapter.StartSeconds };
            if (i + 1 < chapters.Chapters.Count || chapters.FilmLengthSeconds is not null)
                clip["endOffset"] = (int)Math.Floor(chapters.EndOf(i, 0));
            // W3C Media Fragments URI 1.0, section 4.2.1: a point in time in seconds.
            clip["url"] = address.Split('#')[0] + string.Create(CultureInfo.InvariantCulture, $"#t={chapter.StartSeconds}");
            clips.Add(clip);
        }

        return clips;
    }
}
