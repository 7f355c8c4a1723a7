using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Publishing.Cards;
using Barshow.Engine.Publishing.Packaging;

namespace Barshow.Engine.Tests.Publishing;

public class EpisodePackageTests
{
    private static readonly PackageSettings Plain = new() { Cards = false, Site = false, Pdf = false };

    [Fact]
    public void A_filmed_episode_gives_every_plain_file() =>
        Assert.Equal(
            ["description.txt", "chapters.vtt", "mise.csv", "running-order.csv", "shopping.csv", "viewer-shopping.txt", "call-sheet.html", "recipes/harbour-sour.json", "recipes/dune.json", "recipes/kelp.json", "findings.json"],
            Paths(EpisodePackage.Make(ShootDays.Results(), Plain)));

    [Fact]
    public void Everything_adds_calendar_papers_pages_and_cards()
    {
        var results = ShootDays.Results(ShootDays.Episode with { Lineup = [ShootDays.Episode.Lineup[0] with { Spec = ShootDays.Episode.Lineup[0].Spec with { Lines = [SaltLane.Line("2 oz", "white rum")] } }] });

        var paths = Paths(EpisodePackage.Make(results with { Said = [new(results.Episode.Lineup[0].Spec.Slug, 1, 50, 53)] }, new() { MadeAt = new(2027, 2, 1, 9, 0, 0, TimeSpan.Zero) }));

        Assert.Equal(
            [
                "callouts.vtt", "call-sheet.ics", "call-sheet.pdf", "mise.pdf", "site/index.html", "site/style.css", "site/pictures/lineup.png", "site/harbour-sour.html", "site/pictures/harbour-sour.png",
                "cards/cues.csv", "cards/01-harbour-sour-1-white-rum.svg", "cards/01-harbour-sour-1-white-rum-1920x1080.png", "cards/01-harbour-sour-1-white-rum-3840x2160.png", "findings.json",
            ],
            paths.Skip(8));
    }

    [Fact]
    public void Without_film_times_there_is_no_chapter_track_and_a_finding_says_so()
    {
        var package = EpisodePackage.Make(ShootDays.Results(SaltLane.Evening), Plain);

        Assert.DoesNotContain(package.Files, file => file.Path == "chapters.vtt");
        Assert.Contains(package.Findings, finding => finding.Kind == FindingCatalogue.ChaptersWithheld);
        Assert.Contains("\"chapters-withheld\"", package.Files[^1].ReadText(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_results_give_the_same_bytes()
    {
        var settings = new PackageSettings { MadeAt = new(2027, 2, 1, 9, 0, 0, TimeSpan.Zero), Pdf = false };
        var (one, two) = (EpisodePackage.Make(ShootDays.Results(), settings), EpisodePackage.Make(ShootDays.Results(), settings));

        Assert.Equal(Paths(one), Paths(two));
        Assert.All(one.Files.Zip(two.Files), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.Path));
    }

    [Fact]
    public void Two_drinks_of_one_name_get_a_file_each()
    {
        var episode = SaltLane.Evening with { Lineup = [SaltLane.Dune, SaltLane.Dune with { Takes = 3 }] };

        Assert.Equal(["recipes/dune.json", "recipes/dune-2.json"], Paths(EpisodePackage.Make(SaltLane.Results(episode), Plain)).Where(path => path.StartsWith("recipes/", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_findings_of_the_other_engines_come_first_and_a_stop_stops()
    {
        var stop = new Finding(FindingCatalogue.PairDisagrees, "lime", "A.", "B.");

        var package = EpisodePackage.Make(SaltLane.Results(SaltLane.Filmed) with { Findings = [stop] }, Plain);

        Assert.Same(stop, package.Findings[0]);
        Assert.True(package.IsStopped);
        Assert.False(EpisodePackage.Make(SaltLane.Results(SaltLane.Filmed), Plain).IsStopped);
    }

    [Fact]
    public void Progress_is_told_of_each_file_and_the_packing_can_be_stopped()
    {
        var told = new List<PackageProgress>();
        using var stop = new CancellationTokenSource();

        Assert.Throws<OperationCanceledException>(() => EpisodePackage.Make(ShootDays.Results(), null, new Now<PackageProgress>(step =>
        {
            told.Add(step);
            if (told.Count == 3)
                stop.Cancel();
        }), stop.Token));

        Assert.Equal(["description.txt", "chapters.vtt", "mise.csv"], told.Select(step => step.File));
        Assert.Equal([1, 2, 3], told.Select(step => step.Done));
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Paths_stay_inside_the_package_whatever_a_drink_is_called(string name)
    {
        var drink = SaltLane.Dune with { Spec = SaltLane.Dune.Spec with { Name = name, Slug = Slug.Of(name), Lines = [SaltLane.Line("2 oz", "white rum") with { Name = name }] } };

        var results = SaltLane.Results(SaltLane.Evening with { Lineup = [drink] });

        var paths = Paths(EpisodePackage.Make(results, Plain)).Concat(CalloutCard.Of(results.Episode, results.Bar.House).Select(card => $"cards/{card.FileName}.svg")).ToList();

        Assert.All(paths, path => Assert.Matches("^[a-z0-9-]+(/[a-z0-9-]+)?\\.(txt|vtt|csv|html|json|svg)$", path));
        Assert.All(paths, path => Assert.True(path.Length < 200, path));
        Assert.Equal(paths.Count, paths.Distinct().Count());
    }

    private static IEnumerable<string> Paths(EpisodePackage package) => package.Files.Select(file => file.Path);

    // System.Progress tells later, on another thread.
    private sealed class Now<T>(Action<T> tell) : IProgress<T>
    {
        public void Report(T value) => tell(value);
    }
}
