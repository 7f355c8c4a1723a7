using System.Text.Json;
using System.Text.RegularExpressions;
using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Packaging;
using Barshow.Engine.Publishing.Site;
using Barshow.Engine.Specs;
using Barshow.Engine.Tests.Publishing.Vocabulary;
using SkiaSharp;

namespace Barshow.Engine.Tests.Publishing;

public partial class SiteTests
{
    private static readonly House Hosting = SaltLane.House with { SiteAddress = "https://saltlane.example/drinks" };

    [Fact]
    public void There_is_a_page_for_the_episode_and_a_page_and_a_picture_for_each_drink() =>
        Assert.Equal(
            ["index.html", "style.css", "pictures/lineup.png", "harbour-sour.html", "pictures/harbour-sour.png", "dune.html", "pictures/dune.png", "kelp.html", "pictures/kelp.png"],
            Site(SaltLane.Filmed).Select(file => file.Path));

    [Fact]
    public void Every_link_and_picture_inside_the_folder_exists()
    {
        var files = Site(SaltLane.Filmed);
        var paths = files.Select(file => file.Path).ToHashSet();

        foreach (var page in files.Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)))
            foreach (Match target in Targets().Matches(page.ReadText()))
                if (!target.Groups[1].Value.StartsWith("https://", StringComparison.Ordinal))
                    Assert.Contains(target.Groups[1].Value, paths);
    }

    [Fact]
    public void No_page_runs_a_script_or_fetches_anything_from_elsewhere()
    {
        foreach (var file in Site(SaltLane.Filmed).Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal) || file.Path.EndsWith(".css", StringComparison.Ordinal)))
        {
            var text = file.ReadText();
            Assert.All(Scripts().Matches(text), script => Assert.Equal("application/ld+json", script.Groups[1].Value));
            Assert.DoesNotMatch("(src=\"https?:|<link[^>]+href=\"https?:|@import|url\\(|<iframe| on[a-z]+=)", text);
        }
    }

    [Fact]
    public void The_structured_data_of_every_page_keeps_to_the_vocabulary()
    {
        var documents = Site(SaltLane.Filmed).Concat(Site(SaltLane.Evening, SaltLane.House))
            .Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal))
            .SelectMany(file => Data().Matches(file.ReadText()))
            .Select(match => match.Groups[1].Value)
            .ToList();

        Assert.Equal(9, documents.Count);
        Assert.All(documents, document => Assert.Empty(VocabularyCheck.Problems(document)));
    }

    [Fact]
    public void The_episodes_page_lists_the_drinks_with_their_addresses()
    {
        var list = JsonDocument.Parse(Data().Match(Site(SaltLane.Filmed)[0].ReadText()).Groups[1].Value).RootElement;

        Assert.Equal("ItemList", list.GetProperty("@type").GetString());
        Assert.Equal("https://saltlane.example/drinks/dune.html", list.GetProperty("itemListElement")[1].GetProperty("url").GetString());
    }

    [Fact]
    public void A_drinks_page_holds_the_lines_the_cautions_and_the_way_to_the_film()
    {
        var page = Site(SaltLane.Filmed).Single(file => file.Path == "harbour-sour.html").ReadText();

        Assert.Contains("<li>¾ oz · 22.5 ml lime juice, freshly pressed</li>", page, StringComparison.Ordinal);
        Assert.Contains("<li>Contains egg.</li>", page, StringComparison.Ordinal);
        Assert.Contains("<a href=\"https://example.org/film#t=42\">See it made on film</a>", page, StringComparison.Ordinal);
        Assert.Contains("Follow local rules and licensed practice.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_disclosure_stands_on_every_page_before_the_drink()
    {
        var episode = SaltLane.Filmed with { Sponsor = new() { Sponsor = "a rum maker", Disclosure = "Ad: paid for by a rum maker." } };

        foreach (var page in Site(episode).Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)))
            Assert.InRange(page.ReadText().IndexOf("<p class=\"disclosure\">Ad: paid for by a rum maker.</p>", StringComparison.Ordinal), 1, page.ReadText().IndexOf("<h2>", StringComparison.Ordinal));
    }

    [Fact]
    public void Pictures_can_be_opened()
    {
        foreach (var file in Site(SaltLane.Filmed).Where(file => file.Path.EndsWith(".png", StringComparison.Ordinal)))
        {
            using var picture = SKBitmap.Decode(file.Bytes.ToArray());
            Assert.Equal(file.Path == "pictures/lineup.png" ? (1920, 1080) : (1200, 1200), (picture.Width, picture.Height));
        }
    }

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void A_hostile_name_adds_no_tag_to_any_page(string name)
    {
        var clean = Pages("plain");
        var hostile = Pages(name.Trim().Length > 1 ? name : "x");

        Assert.Equal(clean.Select(page => page.Count(c => c == '<')), hostile.Select(page => page.Count(c => c == '<')));

        static List<string> Pages(string name)
        {
            var spec = SaltLane.Dune.Spec with { Name = name, Taste = name, Steps = [name], Sources = [name], Stories = [new(name, Sureness.Told, name)], Lines = [SaltLane.Line("2 oz", "white rum", name)] };
            var episode = SaltLane.Filmed with { Title = name, Theme = name, Gifts = [name], Links = [new(name, "https://example.org/x")], Lineup = [SaltLane.Dune with { Spec = spec, FilmSeconds = 20 }] };
            return [.. Site(episode).Where(file => file.Path.EndsWith(".html", StringComparison.Ordinal)).Select(file => file.ReadText())];
        }
    }

    private static List<PackageFile> Site(Episode episode, House? house = null)
    {
        var results = SaltLane.Results(episode, house ?? Hosting);
        return [.. SitePages.Of(results, ChapterPlanner.Plan(episode, new()))];
    }

    [GeneratedRegex("(?:href|src)=\"([^\"#]+)")]
    private static partial Regex Targets();

    [GeneratedRegex("<script type=\"([^\"]+)\"")]
    private static partial Regex Scripts();

    [GeneratedRegex("<script type=\"application/ld\\+json\">\n(.*?)\n</script>", RegexOptions.Singleline)]
    private static partial Regex Data();
}
