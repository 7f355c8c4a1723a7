using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.CallSheet;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Descriptions;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Publishing.StructuredData;
using Barshow.Engine.Publishing.Tables;

namespace Barshow.Engine.Publishing.Packaging;

/// <summary>Everything an episode needs from the shoot to the publishing page, as files.</summary>
public sealed record EpisodePackage
{
    /// <summary>The files, in the order they are told.</summary>
    public required IReadOnlyList<PackageFile> Files { get; init; }

    /// <summary>The description.</summary>
    public required DescriptionBlock Description { get; init; }

    /// <summary>The chapters.</summary>
    public required ChapterList Chapters { get; init; }

    /// <summary>Every finding: those the results came with, then those of publishing.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Whether a finding stops publishing.</summary>
    public bool IsStopped => Findings.Any(finding => finding.Severity is Severity.Stop);

    /// <summary>Makes the package; a file whose results are missing is left out.</summary>
    /// <remarks>The same results give the same bytes.</remarks>
    public static EpisodePackage Make(EpisodeResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        var chapters = ChapterPlanner.Plan(results.Episode, results.Bar.House.Limits);
        var description = DescriptionComposer.Compose(results, chapters);
        IReadOnlyList<Finding> findings = [.. results.Findings, .. chapters.Findings, .. description.Findings];
        return new()
        {
            Description = description,
            Chapters = chapters,
            Findings = findings,
            Files = [.. FilesOf(results, chapters, description, findings)],
        };
    }

    private static IEnumerable<PackageFile> FilesOf(EpisodeResults results, ChapterList chapters, DescriptionBlock description, IReadOnlyList<Finding> findings)
    {
        yield return PackageFile.OfText("description.txt", description.Text + "\n");
        if (chapters.ToWebVtt(results.Bar.House.Limits.ShortestChapterSeconds) is { } track)
            yield return PackageFile.OfText("chapters.vtt", track);
        if (results.Mise is { } mise)
            yield return PackageFile.OfText("mise.csv", MiseTable.Write(mise, results));
        if (results.Order is { } order)
            yield return PackageFile.OfText("running-order.csv", RunningOrderTable.Write(order, results));
        if (results.ShootBasket is { } shoot)
            yield return PackageFile.OfText("shopping.csv", ShoppingTable.Write(shoot, results));
        if (results.ViewerBasket is { } viewer)
            yield return PackageFile.OfText("viewer-shopping.txt", ViewerShopping.Write(viewer, results));
        yield return PackageFile.OfText("call-sheet.html", CallSheetPage.Write(CallSheetContent.Of(results)));
        var names = SiteFiles.SlugsOf(results.Episode);
        foreach (var drink in results.Episode.Lineup)
            yield return PackageFile.OfText($"recipes/{names[drink]}.json", ScriptJson.Write(RecipeData.Of(results, drink, chapters)) + "\n");
        yield return PackageFile.OfText("findings.json", FindingJson.File(findings));
    }
}
