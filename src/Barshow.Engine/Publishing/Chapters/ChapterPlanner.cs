using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Escaping;

namespace Barshow.Engine.Publishing.Chapters;

/// <summary>Makes chapters from film times, and from nothing else.</summary>
public sealed class ChapterPlanner
{
    private readonly Episode _episode;
    private readonly PublishingLimits _limits;
    private readonly List<Finding> _findings = [];

    private ChapterPlanner(Episode episode, PublishingLimits limits)
    {
        _episode = episode;
        _limits = limits;
    }

    /// <summary>The title of what comes before the first drink.</summary>
    public const string OpeningTitle = "Welcome";

    /// <summary>The chapters of an episode, checked against the limits of the publishing page.</summary>
    public static ChapterList Plan(Episode episode, PublishingLimits limits)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(limits);
        return new ChapterPlanner(episode, limits).Plan();
    }

    private ChapterList Plan()
    {
        var timed = _episode.Lineup.Select(drink => (Drink: drink, Start: StartOf(drink))).ToList();
        if (timed.TrueForAll(item => item.Start is null))
            return Withheld(ChapterSentences.NoFilmTimes(_episode));
        if (timed.Any(item => item.Start is null))
            return Withheld([.. timed.Where(item => item.Start is null).Select(item => ChapterSentences.NoFilmTime(item.Drink))]);
        var impossible = timed.Where(item => IsImpossible(item.Start!.Value)).ToList();
        if (impossible.Count > 0)
            return Withheld([.. impossible.Select(item => ChapterSentences.ImpossibleFilmTime(item.Drink, item.Start!.Value, _episode.FilmLengthSeconds))]);

        var inFilmOrder = timed.OrderBy(item => item.Start).ToList();
        if (!inFilmOrder.Select(item => item.Drink).SequenceEqual(timed.Select(item => item.Drink)))
            _findings.Add(ChapterSentences.FilmOrderDiffers(_episode, inFilmOrder.Select(item => item.Drink.Name)));

        var chapters = Chapters([.. inFilmOrder.Select(item => (item.Drink, WholeSeconds(item.Start!.Value)))]);
        var fit = Check(chapters);
        return new()
        {
            Chapters = chapters,
            FilmLengthSeconds = LengthOrNull(),
            FitForDescription = fit,
            Findings = _findings,
        };
    }

    private ChapterList Withheld(params Finding[] findings) => new() { Findings = findings, FilmLengthSeconds = LengthOrNull() };

    // A drink filmed beside another shares its time unless it has one of its own.
    private double? StartOf(LineupDrink drink) => drink.FilmSeconds
        ?? (drink.BesideDrink.IsEmpty ? null : _episode.Lineup.FirstOrDefault(other => other.Spec.Slug == drink.BesideDrink)?.FilmSeconds);

    private bool IsImpossible(double seconds) => !(seconds >= 0) || seconds >= (LengthOrNull() ?? 360_000);

    private double? LengthOrNull() => _episode.FilmLengthSeconds is { } length && double.IsFinite(length) && length > 0 ? length : null;

    // Never rounded up: a chapter that starts late hides the first words about its drink.
    private static int WholeSeconds(double seconds) => (int)Math.Floor(seconds);

    private List<Chapter> Chapters(List<(LineupDrink Drink, int Start)> drinks)
    {
        var chapters = drinks
            .GroupBy(drink => drink.Start)
            .Select(shared => new Chapter(shared.Key, Titled(shared.Select(drink => drink.Drink.Name))) { Drinks = [.. shared.Select(drink => drink.Drink.Spec.Slug)] })
            .ToList();
        if (chapters[0].StartSeconds >= _limits.ShortestChapterSeconds)
        {
            chapters.Insert(0, new(0, OpeningTitle));
        }
        else if (chapters[0].StartSeconds > 0)
        {
            _findings.Add(ChapterSentences.FirstChapterMoved(chapters[0], _limits.ShortestChapterSeconds));
            chapters[0] = chapters[0] with { StartSeconds = 0 };
        }

        return chapters;
    }

    private static string Titled(IEnumerable<string> names) => DescriptionText.Line(string.Join(" and ", names));

    private bool Check(List<Chapter> chapters)
    {
        var fit = true;
        if (chapters.Count < _limits.FewestChapters)
        {
            _findings.Add(ChapterSentences.TooFewChapters(_episode, chapters.Count, _limits.FewestChapters));
            fit = false;
        }

        for (var i = 0; i < chapters.Count; i++)
        {
            var end = i + 1 < chapters.Count ? chapters[i + 1].StartSeconds : LengthOrNull();
            if (end - chapters[i].StartSeconds < _limits.ShortestChapterSeconds)
            {
                _findings.Add(ChapterSentences.ChapterTooShort(chapters[i], end!.Value - chapters[i].StartSeconds, _limits.ShortestChapterSeconds));
                fit = false;
            }

            if (chapters[i].Title.Length > _limits.ChapterTitleCharacters)
                _findings.Add(ChapterSentences.ChapterTitleLong(chapters[i], _limits.ChapterTitleCharacters));
        }

        if (LengthOrNull() is null)
            _findings.Add(ChapterSentences.FilmLengthUnknown(chapters[^1], _limits.ShortestChapterSeconds));
        return fit;
    }
}
