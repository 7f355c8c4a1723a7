using System.Text.Json;

namespace Barshow.Web.Tests.Verbs;

public sealed class PackagingByCommandTests : IDisposable
{
    private const string Brief = """
        Two drinks for a short evening
        Bottle: white rum, 700 ml, 40%
        Shoot: 2027-03-06, call 10:00
        Publish: 2027-03-20
        Disclosure: We bought the rum ourselves.

        Lantern Sour
        2 oz white rum
        3/4 oz lime juice, freshly pressed
        1/2 oz 1:1 syrup
        Shaken, coupe, lime wheel
        At 0:00

        Lantern Long
        1 1/2 oz white rum
        1/2 oz lime juice
        Top with 3 oz ginger beer
        Built, highball, lime wedge
        At 2:30
        """;

    private readonly Executable _barshow = new();

    public void Dispose() => _barshow.Dispose();

    [Fact]
    public void A_clean_brief_gives_every_file_and_no_stop()
    {
        var outcome = Package(Brief);

        Assert.Equal(0, outcome.ExitCode);
        Assert.Empty(outcome.Errors);
        string[] expected = ["call-sheet.html", "description.txt", "findings.json", "mise.csv", "recipes/lantern-long.json", "recipes/lantern-sour.json", "running-order.csv", "shopping.csv", "viewer-shopping.txt"];
        Assert.Superset(expected.ToHashSet(), Files());
        Assert.StartsWith("We bought the rum ourselves.", File.ReadAllText(_barshow.At("out/description.txt")), StringComparison.Ordinal);
        Assert.Contains("2 oz · 60 ml white rum", File.ReadAllText(_barshow.At("out/description.txt")), StringComparison.Ordinal);
        Assert.Contains("Two drinks for a short evening", outcome.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Chapters_are_written_from_film_times_and_taken_away_when_those_are_gone()
    {
        Package(Brief + "\n\nLantern Up\n2 oz white rum\n1 oz dry vermouth\nStirred, coupe\nAt 5:00\n");
        var withTimes = File.ReadAllText(_barshow.At("out/chapters.vtt"));

        var without = Package(Brief.Replace("At 0:00", "", StringComparison.Ordinal).Replace("At 2:30", "", StringComparison.Ordinal));

        Assert.StartsWith("WEBVTT", withTimes, StringComparison.Ordinal);
        Assert.Contains("00:02:30.000 --> 00:05:00.000", withTimes, StringComparison.Ordinal);
        Assert.False(File.Exists(_barshow.At("out/chapters.vtt")));
        Assert.Contains("no chapters: film times are missing", without.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Sides_that_disagree_are_a_stop_with_their_line()
    {
        var outcome = Package(Brief.Replace("3/4 oz lime juice", "3/4 oz (25 ml) lime juice", StringComparison.Ordinal));

        Assert.Equal(2, outcome.ExitCode);
        var finding = Assert.Single(Findings(), finding => finding.GetProperty("kind").GetString() == "pair-disagrees");
        Assert.Equal("stop", finding.GetProperty("severity").GetString());
        Assert.Equal(9, finding.GetProperty("line").GetInt32());
        Assert.Equal("Lantern Sour", finding.GetProperty("drink").GetString());
    }

    [Fact]
    public void Every_finding_has_its_kind_severity_subject_message_and_remedy()
    {
        Package(Brief.Replace("Shoot: 2027-03-06, call 10:00", "Shoot: soon", StringComparison.Ordinal));

        Assert.NotEmpty(Findings());
        foreach (var finding in Findings())
            foreach (var member in new[] { "kind", "severity", "subject", "message", "remedy" })
                Assert.NotEmpty(finding.GetProperty(member).GetString()!);
    }

    [Fact]
    public void An_empty_brief_stops_and_says_how_to_begin()
    {
        var outcome = Package("\n\n");

        Assert.Equal(2, outcome.ExitCode);
        Assert.Equal("brief-empty", Assert.Single(Findings()).GetProperty("kind").GetString());
    }

    [Fact]
    public void The_strength_on_the_bottles_own_label_counts()
    {
        Package(Brief.Replace("40%", "60%", StringComparison.Ordinal));

        // 60 ml at 60 % are 36 ml of ethanol, 28.4 g: 2.8 Australian standard drinks of 10 g.
        Assert.Contains("2.8 (Lantern Sour)", File.ReadAllText(_barshow.At("out/description.txt")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_earlier_run_wrote_does_not_stay_beside_what_is_new()
    {
        Package(Brief);
        File.WriteAllText(_barshow.At("out/notes of my own.txt"), "mine");

        Package("");

        Assert.Equal(["findings.json", "notes of my own.txt"], Files().Order());
    }

    [Fact]
    public void A_brief_packaged_again_is_not_featured_before_by_itself()
    {
        Package(Brief);
        Package(Brief);

        Assert.DoesNotContain(Findings(), finding => finding.GetProperty("kind").GetString() is "featured-too-soon");
        var later = Package(Brief.Replace("Two drinks for a short evening", "Another evening", StringComparison.Ordinal).Replace("Publish: 2027-03-20", "Publish: 2027-06-20", StringComparison.Ordinal));
        Assert.Equal(0, later.ExitCode);
        Assert.Contains(Findings(), finding => finding.GetProperty("kind").GetString() is "featured-too-soon"
            && finding.GetProperty("message").GetString() == "Lantern Sour was shown on 20 March 2027, 3 months before this date. The remake rule asks for 12 months.");
    }

    [Fact]
    public void A_stored_episode_is_packaged_by_the_name_it_is_kept_under()
    {
        Package(Brief);

        var outcome = _barshow.Run(null, "package", "two-drinks-for-a-short-evening", "--out", "again");

        Assert.Equal(0, outcome.ExitCode);
        Assert.Equal(File.ReadAllText(_barshow.At("out/description.txt")), File.ReadAllText(_barshow.At("again/description.txt")));
    }

    [Theory]
    [InlineData("barshow: There is no file \"nowhere.txt\" and no episode is kept under that name.", "package", "nowhere.txt", "--out", "out")]
    [InlineData("barshow: Option '--out' is required.", "package", "nowhere.txt")]
    [InlineData("barshow: Option '--out' names a folder.", "package", "nowhere.txt", "--out", "")]
    [InlineData("barshow: \".\" is a folder; give a brief file.", "package", ".", "--out", "out")]
    [InlineData("barshow: Unrecognized command or argument 'packge'.", "packge")]
    public void A_broken_call_says_one_sentence(string sentence, params string[] args)
    {
        var outcome = _barshow.Run(null, args);

        Assert.Equal(1, outcome.ExitCode);
        Assert.Equal(sentence, outcome.Errors.Trim());
        Assert.Empty(outcome.Output);
    }

    private Outcome Package(string brief)
    {
        File.WriteAllText(_barshow.At("brief.txt"), brief);
        return _barshow.Run(null, "package", "brief.txt", "--out", "out");
    }

    private HashSet<string> Files() => [.. Directory.EnumerateFiles(_barshow.At("out"), "*", SearchOption.AllDirectories).Select(path => Path.GetRelativePath(_barshow.At("out"), path).Replace('\\', '/'))];

    private List<JsonElement> Findings()
    {
        using var json = JsonDocument.Parse(File.ReadAllText(_barshow.At("out/findings.json")));
        return [.. json.RootElement.EnumerateArray().Select(element => element.Clone())];
    }
}
