using Barshow.Engine.Findings;
using Barshow.Engine.Publishing.Packaging;

namespace Barshow.Engine.Tests.Publishing;

public class EpisodePackageTests
{
    [Fact]
    public void A_filmed_episode_gives_every_file() =>
        Assert.Equal(
            ["description.txt", "chapters.vtt", "mise.csv", "running-order.csv", "shopping.csv", "viewer-shopping.txt", "call-sheet.html", "recipes/harbour-sour.json", "recipes/dune.json", "recipes/kelp.json", "findings.json"],
            EpisodePackage.Make(ShootDays.Results()).Files.Select(file => file.Path));

    [Fact]
    public void Without_film_times_there_is_no_chapter_track_and_a_finding_says_so()
    {
        var package = EpisodePackage.Make(ShootDays.Results(SaltLane.Evening));

        Assert.DoesNotContain(package.Files, file => file.Path == "chapters.vtt");
        Assert.Contains(package.Findings, finding => finding.Kind == FindingCatalogue.ChaptersWithheld);
        Assert.Contains("\"chapters-withheld\"", package.Files[^1].ReadText(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_results_give_the_same_bytes()
    {
        var (one, two) = (EpisodePackage.Make(ShootDays.Results()), EpisodePackage.Make(ShootDays.Results()));

        Assert.All(one.Files.Zip(two.Files), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.Path));
    }

    [Fact]
    public void Two_drinks_of_one_name_get_a_file_each()
    {
        var episode = SaltLane.Evening with { Lineup = [SaltLane.Dune, SaltLane.Dune with { Takes = 3 }] };

        Assert.Equal(
            ["recipes/dune.json", "recipes/dune-2.json"],
            EpisodePackage.Make(SaltLane.Results(episode)).Files.Select(file => file.Path).Where(path => path.StartsWith("recipes/", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_findings_of_the_other_engines_come_first_and_a_stop_stops()
    {
        var stop = new Finding(FindingCatalogue.PairDisagrees, "lime", "A.", "B.");

        var package = EpisodePackage.Make(SaltLane.Results(SaltLane.Filmed) with { Findings = [stop] });

        Assert.Same(stop, package.Findings[0]);
        Assert.True(package.IsStopped);
        Assert.False(EpisodePackage.Make(SaltLane.Results(SaltLane.Filmed)).IsStopped);
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void Paths_stay_inside_the_package_whatever_a_drink_is_called(string name)
    {
        var drink = SaltLane.Dune with { Spec = SaltLane.Dune.Spec with { Name = name, Slug = Names.Slug.Of(name) } };

        var package = EpisodePackage.Make(SaltLane.Results(SaltLane.Evening with { Lineup = [drink] }));

        Assert.All(package.Files, file => Assert.Matches("^[a-z0-9-]+(/[a-z0-9-]+)?\\.(txt|vtt|csv|html|json)$", file.Path));
    }
}
