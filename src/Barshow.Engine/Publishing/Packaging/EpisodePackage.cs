using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.CallSheet;
using Barshow.Engine.Publishing.Cards;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Corrections;
using Barshow.Engine.Publishing.Descriptions;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Publishing.Site;
using Barshow.Engine.Publishing.StructuredData;
using Barshow.Engine.Publishing.Tables;
using Barshow.Engine.Publishing.Tracks;

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
    /// <remarks>The same results and settings give the same bytes, but for the PDF files, which carry the hour they were made.</remarks>
    /// <param name="results">The episode with all that was computed of it.</param>
    /// <param name="settings">What goes in; everything when not given.</param>
    /// <param name="progress">Told of each file.</param>
    /// <param name="cancel">Stops the packing between two files.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static EpisodePackage Make(EpisodeResults results, PackageSettings? settings = null, IProgress<PackageProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(results);
        settings ??= PackageSettings.Everything;
        var chapters = ChapterPlanner.Plan(results.Episode, results.Bar.House.Limits);
        var description = DescriptionComposer.Compose(results, chapters);
        IReadOnlyList<Finding> findings = [.. results.Findings, .. chapters.Findings, .. description.Findings];
        var cards = settings.Cards ? CalloutCard.Of(results.Episode, results.Bar.House) : [];
        var about = 14 + results.Episode.Lineup.Count * (settings.Site ? 3 : 1) + cards.Count * CalloutCard.Sizes.Count;
        var files = new List<PackageFile>();
        foreach (var file in PlainFiles(results, chapters, description).Concat(FurtherFiles(results, settings, chapters, cards, findings)).Append(PackageFile.OfText("findings.json", FindingJson.File(findings))))
        {
            cancel.ThrowIfCancellationRequested();
            files.Add(file);
            progress?.Report(new(file.Path, files.Count, Math.Max(about, files.Count)));
        }

        return new() { Description = description, Chapters = chapters, Findings = findings, Files = files };
    }

    private static IEnumerable<PackageFile> PlainFiles(EpisodeResults results, ChapterList chapters, DescriptionBlock description)
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
    }

    private static IEnumerable<PackageFile> FurtherFiles(EpisodeResults results, PackageSettings settings, ChapterList chapters, IReadOnlyList<CalloutCard> cards, IReadOnlyList<Finding> findings)
    {
        if (CalloutTrack.Write(results) is { } track)
            yield return PackageFile.OfText("callouts.vtt", track);
        if (PickUpTable.Write(findings) is { } pickUps)
            yield return PackageFile.OfText("pick-ups.csv", pickUps);
        if (CorrectionNotice.Write(results, settings.MadeAt is { } day ? DateOnly.FromDateTime(day.Date) : null) is { } corrections)
            yield return PackageFile.OfText("corrections.txt", corrections);
        var sheet = CallSheetContent.Of(results);
        if (settings.MadeAt is { } madeAt && CallSheetCalendar.Write(results, sheet, madeAt) is { } calendar)
            yield return PackageFile.OfText("call-sheet.ics", calendar);
        if (settings.Pdf)
        {
            yield return new("call-sheet.pdf", PdfSheets.CallSheet(sheet, results.Bar.House));
            if (results.Mise is { } mise)
                yield return new("mise.pdf", PdfSheets.Mise(mise, results));
        }

        if (settings.Site)
            foreach (var page in SitePages.Of(results, chapters))
                yield return page with { Path = "site/" + page.Path };
        if (cards.Count > 0)
            yield return PackageFile.OfText("cards/cues.csv", CueList.Write(results, cards));
        // Drawing is most of the work, and each card is drawn for itself.
        foreach (var file in cards.AsParallel().AsOrdered().SelectMany(card => card.Files()))
            yield return file with { Path = "cards/" + file.Path };
    }
}
