using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Publishing.Chapters;

/// <summary>What chapters have to say, in one place.</summary>
internal static class ChapterSentences
{
    public static Finding NoFilmTimes(Episode episode) => new(FindingCatalogue.ChaptersWithheld, episode.Title,
        string.Create(CultureInfo.InvariantCulture, $"No film time is known for any of the {episode.Lineup.Count} drinks, so the chapter list and chapters.vtt are withheld and the chapter rules were not checked."),
        "Type the film times once the film is cut, or read its captions.");

    public static Finding NoFilmTime(LineupDrink drink) => new(FindingCatalogue.ChapterTimeMissing, drink.Name,
        $"{drink.Name} has no film time though other drinks have one, so the chapter list and chapters.vtt are withheld.",
        $"Give the film time at which {drink.Name} starts.")
    {
        Drink = drink.Name,
        Line = drink.BriefLine,
    };

    public static Finding ImpossibleFilmTime(LineupDrink drink, double seconds, double? length) => new(FindingCatalogue.FilmTimeImpossible, drink.Name,
        length is { } end && seconds >= 0
            ? string.Create(CultureInfo.InvariantCulture, $"{drink.Name} starts at {seconds:0.#} s, but the film ends at {end:0.#} s.")
            : string.Create(CultureInfo.InvariantCulture, $"{drink.Name} cannot start at {seconds:0.#} s of film."),
        "Correct the film time, or the length of the film.")
    {
        Drink = drink.Name,
        Line = drink.BriefLine,
        TimeSeconds = double.IsFinite(seconds) ? seconds : null,
    };

    public static Finding FilmOrderDiffers(Episode episode, IEnumerable<string> inFilmOrder) => new(FindingCatalogue.FilmOrderDiffers, episode.Title,
        $"The film shows {string.Join(", ", inFilmOrder)}, which is not the viewer order; chapters follow the film.",
        "Put the lineup in the order of the film, or correct the film times.");

    public static Finding FirstChapterMoved(Chapter first, int shortest) => new(FindingCatalogue.ChapterMoved, first.Title,
        string.Create(CultureInfo.InvariantCulture, $"{first.Title} starts at {first.StartSeconds} s, too early for a chapter of {shortest} s before it, so its chapter opens at 0:00."),
        "Nothing needs doing.")
    {
        TimeSeconds = first.StartSeconds,
    };

    public static Finding TooFewChapters(Episode episode, int count, int fewest) => new(FindingCatalogue.ChaptersTooFew, episode.Title,
        string.Create(CultureInfo.InvariantCulture, $"There {(count == 1 ? "is 1 chapter" : $"are {count} chapters")}, and a page reads a list of {fewest} or more; the description goes without."),
        "Give more film times, or lower the number in the house's publishing limits if your page takes fewer.");

    public static Finding ChapterTooShort(Chapter chapter, double seconds, int shortest) => new(FindingCatalogue.ChapterTooShort, chapter.Title,
        string.Create(CultureInfo.InvariantCulture, $"The chapter {chapter.Title} at {chapter.Time} lasts {seconds:0.#} s, and a page refuses the list below {shortest} s; the description goes without."),
        "Correct the film times, or give both drinks the same time so that they share a chapter.")
    {
        TimeSeconds = chapter.StartSeconds,
    };

    public static Finding ChapterTitleLong(Chapter chapter, int shown) => new(FindingCatalogue.ChapterTitleLong, Short(chapter.Title),
        string.Create(CultureInfo.InvariantCulture, $"The chapter title at {chapter.Time} has {chapter.Title.Length} characters; pages show {shown}."),
        "Give the drink a shorter name.")
    {
        TimeSeconds = chapter.StartSeconds,
    };

    public static Finding FilmLengthUnknown(Chapter last, int shortest) => new(FindingCatalogue.FilmLengthUnknown, last.Title,
        string.Create(CultureInfo.InvariantCulture, $"The film's length is not known, so the length of the last chapter was not checked and chapters.vtt gives it {shortest} s."),
        "Give the length of the film.");

    public static Finding LooksLikeChapter(string where, string found, int line) => new(FindingCatalogue.LooksLikeChapter, where,
        string.Create(CultureInfo.InvariantCulture, $"\"{found}\" on line {line} of the description stands outside the chapter list and may be read as a chapter."),
        "Write it another way: \"1 to 15\", \"half past six\".")
    {
        Line = line,
        Said = found,
    };

    public static Finding MarkNamesNoDrink(string mark, int line) => new(FindingCatalogue.MarkUnmatched, Short(mark),
        string.Create(CultureInfo.InvariantCulture, $"Line {line} of the list, \"{Short(mark)}\", names no drink of the lineup; its time was not taken."),
        "Nothing needs doing for talk; for a drink, write its name as the lineup has it.")
    {
        Line = line,
        Said = Short(mark),
    };

    public static Finding NoMark(LineupDrink drink) => new(FindingCatalogue.MarkMissing, drink.Name,
        $"No line of the list names {drink.Name}, so it still has no film time.",
        $"Type the film time of {drink.Name}.")
    {
        Drink = drink.Name,
    };

    public static Finding NoMarks(Episode episode) => new(FindingCatalogue.MarkMissing, episode.Title,
        "The list holds no line with a time and a drink of the lineup; nothing was taken.",
        "Paste one line a drink, a time and its name: \"4:31 Daiquiri\".");

    private static string Short(string title) => title.Length <= 80 ? title : title[..80] + "…";
}
