using System.Globalization;
using Barshow.Engine.Names;

namespace Barshow.Engine.Publishing.Chapters;

/// <summary>One chapter of a film.</summary>
/// <param name="StartSeconds">Where it starts, in whole seconds from the start of the film.</param>
/// <param name="Title">Its title, one line of plain text.</param>
public sealed record Chapter(int StartSeconds, string Title)
{
    /// <summary>The drinks it shows; empty for talk.</summary>
    public IReadOnlyList<Slug> Drinks { get; init; } = [];

    /// <summary>Where it starts as a description writes it: "0:42", "12:05", "1:02:05".</summary>
    public string Time => TimeText(StartSeconds);

    /// <summary>A film time as a description writes it, hours only where there are any.</summary>
    public static string TimeText(int seconds) => seconds >= 3600
        ? string.Create(CultureInfo.InvariantCulture, $"{seconds / 3600}:{seconds / 60 % 60:00}:{seconds % 60:00}")
        : string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");

    /// <summary>The line of the chapter list.</summary>
    public override string ToString() => $"{Time} {Title}";
}
