using System.Text.Json.Nodes;
using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Publishing.StructuredData;

/// <summary>Describes one drink as a schema.org Recipe (release 30.0, 2026-03-19) in JSON-LD.</summary>
/// <remarks>The vocabulary has no property for alcohol content, so strength and standard drinks stand in the description.</remarks>
public static class RecipeData
{
    /// <summary>The drink as JSON-LD.</summary>
    /// <param name="results">The episode it is shown in, with all that was computed of it.</param>
    /// <param name="drink">A drink of its lineup.</param>
    /// <param name="chapters">The film's chapters.</param>
    public static JsonObject Of(EpisodeResults results, LineupDrink drink, ChapterList chapters)
    {
        ArgumentNullException.ThrowIfNull(results);
        ArgumentNullException.ThrowIfNull(drink);
        var (episode, bar) = (results.Episode, results.Bar);
        var analysis = results.Analyses.GetValueOrDefault(drink.Spec.Slug);
        var spec = drink.Spec;
        var printer = new LinePrinter(episode.Convention, bar.House);
        var withoutAlcohol = analysis is { EthanolMillilitres: <= 0 } && spec.Lines.All(line => bar.Ingredients.TryGet(line.Ingredient, out _));
        var recipe = new JsonObject
        {
            ["@context"] = "https://schema.org",
            ["@type"] = "Recipe",
            ["name"] = PlainText.Line(spec.Name),
            ["description"] = Description(episode, drink, bar, analysis),
            ["author"] = Author(bar.House),
        };
        if (WebAddress.Under(bar.House.SiteAddress, SiteFiles.Picture(SiteFiles.SlugsOf(episode)[drink])) is { } picture)
            recipe["image"] = new JsonArray(picture);
        if (WebAddress.Under(bar.House.SiteAddress, SiteFiles.Page(SiteFiles.SlugsOf(episode)[drink])) is { } page)
            recipe["url"] = page;
        if (episode.PublishDate is { } date)
            recipe["datePublished"] = Date(date);
        recipe["recipeCategory"] = withoutAlcohol ? "Mocktail" : "Cocktail";
        recipe["recipeYield"] = "1 drink";
        if (spec.Method is { } method)
            recipe["cookingMethod"] = method.Name;
        if (Keywords(drink) is { Length: > 0 } keywords)
            recipe["keywords"] = keywords;
        if (!withoutAlcohol)
            recipe["isFamilyFriendly"] = false;
        if (episode.Sponsor.IsSponsored)
            recipe["sponsor"] = new JsonObject { ["@type"] = "Organization", ["name"] = PlainText.Line(episode.Sponsor.Sponsor) };
        recipe["recipeIngredient"] = new JsonArray([.. spec.Lines.Select(line => JsonValue.Create(PlainText.Line(printer.DataLine(line))))]);
        recipe["recipeInstructions"] = Steps(drink, bar, printer);
        if (VideoData.Of(episode, bar, chapters, drink) is { } video)
            recipe["video"] = video;
        return recipe;
    }

    /// <summary>The house as the author: the presenter where one is named, else the bar.</summary>
    internal static JsonObject Author(House house) => house.Presenter.Length > 0
        ? new JsonObject { ["@type"] = "Person", ["name"] = PlainText.Line(house.Presenter) }
        : new JsonObject { ["@type"] = "Organization", ["name"] = PlainText.Line(house.Name) };

    /// <summary>A date as the vocabulary has it (ISO 8601).</summary>
    internal static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static string Description(Episode episode, LineupDrink drink, Bar bar, DrinkAnalysis? analysis)
    {
        var taste = PlainText.Line(drink.Spec.Taste);
        var sentences = new[]
        {
            taste.Length > 0 ? taste.TrimEnd('.') + "." : $"{PlainText.Line(drink.Name)}, as made in \"{PlainText.Line(episode.Title)}\".",
            analysis is null ? "" : AlcoholWords.Of(analysis, bar.House.DrinkRegion) is { Length: > 0 } strength ? strength + "." : "",
            "For adults of legal drinking age.",
        };
        return string.Join(' ', sentences.Where(sentence => sentence.Length > 0));
    }

    private static string Keywords(LineupDrink drink) => PlainText.Line(string.Join(", ",
        new[] { drink.Spec.Family }.Concat(drink.Spec.Tags).Select(word => word.Replace(',', ' ').Trim()).Where(word => word.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)));

    private static JsonArray Steps(LineupDrink drink, Bar bar, LinePrinter printer) =>
        [.. RecipeSteps.Of(drink.Spec, bar.Kit, printer).Select(step => new JsonObject
        {
            ["@type"] = "HowToStep",
            ["name"] = PlainText.Line(step.Name),
            ["text"] = PlainText.Line(step.Text),
        })];
}
