using System.Globalization;
using System.Text.Json.Nodes;
using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Descriptions.Parts;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Publishing.Packaging;
using Barshow.Engine.Publishing.Pictures;
using Barshow.Engine.Publishing.StructuredData;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Cautions;

namespace Barshow.Engine.Publishing.Site;

/// <summary>A folder the maker can host as it is: a page for the episode and one for each drink, with structured data, a print style, and no scripts.</summary>
public sealed class SitePages
{
    private readonly EpisodeResults _results;
    private readonly ChapterList _chapters;
    private readonly LinePrinter _printer;
    private readonly IReadOnlyDictionary<LineupDrink, string> _names;

    private SitePages(EpisodeResults results, ChapterList chapters)
    {
        _results = results;
        _chapters = chapters;
        _printer = new(results.Episode.Convention, results.Bar.House);
        _names = SiteFiles.SlugsOf(results.Episode);
    }

    private Episode Episode => _results.Episode;

    /// <summary>The files of the folder, each made when it is asked for.</summary>
    public static IEnumerable<PackageFile> Of(EpisodeResults results, ChapterList chapters)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(chapters);
        return new SitePages(results, chapters).Files();
    }

    private IEnumerable<PackageFile> Files()
    {
        yield return PackageFile.OfText("index.html", Index());
        yield return PackageFile.OfText("style.css", SiteStyle.Css + "\n");
        yield return new("pictures/lineup.png", LineupPicture.Png(_results));
        foreach (var drink in Episode.Lineup)
        {
            yield return PackageFile.OfText(SiteFiles.Page(_names[drink]), Page(drink));
            yield return new(SiteFiles.Picture(_names[drink]), LineupPicture.Png(_results, drink));
        }
    }

    private string Index()
    {
        var html = Begin(Episode.Title, [ListOf(), VideoOf()]);
        html.Add($"<h1>{Episode.Title}</h1>\n");
        AddDisclosure(html);
        if (Episode.Theme.Length > 0)
            html.Add($"<p class=\"lead\">{Episode.Theme}</p>\n");
        if (WebAddress.TryRead(Episode.FilmAddress, out var film))
            html.Add($"<p><a href=\"{film}\">Watch the film</a></p>\n");
        html.Add($"<h2>The drinks</h2>\n<p class=\"small\">{RecipePart.Convention(Episode.Convention)}</p>\n<ul class=\"drinks\">\n");
        foreach (var drink in Episode.Lineup)
            html.Add($"<li><a href=\"{SiteFiles.Page(_names[drink])}\"><img src=\"{SiteFiles.Picture(_names[drink])}\" alt=\"\" width=\"1200\" height=\"1200\" loading=\"lazy\">{drink.Name}</a></li>\n");
        html.Add("</ul>\n");
        if (_results.ViewerBasket is { } basket)
            AddList(html, "Shopping, to make each drink once", [.. ShoppingPart.Items(basket), ShoppingPart.AtHome(basket)]);
        AddList(html, "How far the first things go", ShoppingPart.Ladder(Episode, _results.Ladder));
        AddLinks(html);
        AddList(html, "Gifts", SponsorParts.Gifts(Episode).Full.Split('\n'));
        AddList(html, "Corrections", Episode.Publications.Where(version => version.Notice.Length > 0).Reverse().Select(version => version.Notice));
        AddList(html, "Cautions", CautionPart.Write(_results).Full.Split('\n'));
        return End(html);
    }

    private string Page(LineupDrink drink)
    {
        var spec = drink.Spec;
        var html = Begin($"{spec.Name}: {Episode.Title}", [RecipeData.Of(_results, drink, _chapters)]);
        html.Add($"<nav aria-label=\"Where you are\"><p class=\"small\"><a href=\"index.html\">{Episode.Title}</a></p></nav>\n<h1>{spec.Name}</h1>\n");
        AddDisclosure(html);
        if (spec.Taste.Length > 0)
            html.Add($"<p class=\"lead\">{spec.Taste}</p>\n");
        html.Add($"<img class=\"picture\" src=\"{SiteFiles.Picture(_names[drink])}\" alt=\"{spec.Name}, drawn in its glass\" width=\"1200\" height=\"1200\">\n");
        html.Add("<h2>What goes in</h2>\n<ul class=\"lines\">\n");
        foreach (var line in spec.Lines)
            html.Add($"<li>{Casing.AtStart(_printer.Line(line))}</li>\n");
        html.Add($"</ul>\n<p class=\"small\">{RecipePart.Convention(Episode.Convention)}</p>\n");
        if (ServeWords.Of(spec, _results.Bar.Kit) is { Length: > 0 } serve)
            html.Add($"<p>{serve}</p>\n");
        html.Add("<h2>How it is made</h2>\n<ol>\n");
        var number = 0;
        foreach (var step in RecipeSteps.Of(spec, _results.Bar.Kit, _printer))
            html.Add($"<li id=\"step-{++number}\">{step.Text}</li>\n");
        html.Add("</ol>\n");
        if (FilmAddress(drink) is { } film)
            html.Add($"<p><a href=\"{film}\">See it made on film</a></p>\n");
        AddList(html, "Instead", InsteadOf(spec));
        AddList(html, "Stories", spec.Stories.Select(story => $"{story.Text} ({SurenessWords(story.Sureness)}{(story.Source is { } source ? $": {source}" : "")})"));
        AddList(html, "Strength and cautions", Strength(drink).Concat(DrinkCautions.Of(spec, _results.Bar.Ingredients).Sentences(_results.Bar.House.AudienceRegion)));
        AddList(html, "Sources", spec.Sources);
        return End(html);
    }

    private static HtmlBuilder Begin(string title, IEnumerable<JsonObject?> data)
    {
        var html = new HtmlBuilder();
        html.Add("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Add($"<title>{title}</title>\n<link rel=\"stylesheet\" href=\"style.css\">\n");
        foreach (var node in data)
            if (node is not null)
                html.AddData(node);
        return html.Add("</head>\n<body>\n<main>\n");
    }

    private static string End(HtmlBuilder html) => html.Add("</main>\n</body>\n</html>\n").ToString();

    private void AddDisclosure(HtmlBuilder html)
    {
        if (SponsorParts.Disclosure(Episode, []).Full is { Length: > 0 } disclosure)
            html.Add($"<p class=\"disclosure\">{disclosure}</p>\n");
    }

    private static void AddList(HtmlBuilder html, string heading, IEnumerable<string> lines)
    {
        var all = lines.Where(line => line.Length > 0).ToList();
        if (all.Count == 0)
            return;
        html.Add($"<h2>{heading}</h2>\n<ul>\n");
        foreach (var line in all)
            html.Add($"<li>{line}</li>\n");
        html.Add("</ul>\n");
    }

    private void AddLinks(HtmlBuilder html)
    {
        if (Episode.Links.Count == 0)
            return;
        html.Add("<h2>Links</h2>\n<ul>\n");
        foreach (var link in Episode.Links)
        {
            if (WebAddress.TryRead(link.Address, out var address))
                html.Add($"<li><a href=\"{address}\">{(link.Label.Length > 0 ? link.Label : address)}</a></li>\n");
            else
                html.Add($"<li>{link.Label}: {link.Address}</li>\n");
        }

        html.Add("</ul>\n");
    }

    private string? FilmAddress(LineupDrink drink) =>
        WebAddress.TryRead(Episode.FilmAddress, out var address) && _chapters.Chapters.FirstOrDefault(chapter => chapter.Drinks.Contains(drink.Spec.Slug)) is { } chapter
            ? address.Split('#')[0] + string.Create(CultureInfo.InvariantCulture, $"#t={chapter.StartSeconds}")
            : null;

    private IEnumerable<string> InsteadOf(Spec spec) =>
        StandInPart.Write(Episode with { Lineup = [new LineupDrink { Spec = spec }] }, _results.Bar, _printer).Full.Split('\n');

    private IEnumerable<string> Strength(LineupDrink drink) =>
        _results.Analyses.GetValueOrDefault(drink.Spec.Slug) is { } analysis && AlcoholWords.Of(analysis, _results.Bar.House.DrinkRegion) is { Length: > 0 } words ? [words + "."] : [];

    private static string SurenessWords(Sureness sureness) => sureness switch
    {
        Sureness.Documented => "documented",
        Sureness.Told => "told, not shown",
        Sureness.Disputed => "disputed",
        _ => throw new ArgumentOutOfRangeException(nameof(sureness), sureness, "No such sureness."),
    };

    // One list of all drinks, because a Recipe is one dish; addresses only where the house says where it hosts its pages.
    private JsonObject ListOf() => new()
    {
        ["@context"] = "https://schema.org",
        ["@type"] = "ItemList",
        ["name"] = PlainText.Line(Episode.Title),
        ["numberOfItems"] = Episode.Lineup.Count,
        ["itemListElement"] = new JsonArray([.. Episode.Lineup.Select((drink, i) =>
        {
            var item = new JsonObject { ["@type"] = "ListItem", ["position"] = i + 1, ["name"] = PlainText.Line(drink.Name) };
            if (WebAddress.Under(_results.Bar.House.SiteAddress, SiteFiles.Page(_names[drink])) is { } address)
                item["url"] = address;
            return item;
        })]),
    };

    private JsonObject? VideoOf()
    {
        var video = VideoData.Of(Episode, _results.Bar, _chapters);
        video?.Insert(0, "@context", "https://schema.org");
        return video;
    }
}
