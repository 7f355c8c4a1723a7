using System.Text.Json;
using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Chapters;
using Barshow.Engine.Publishing.Escaping;
using Barshow.Engine.Publishing.StructuredData;
using Barshow.Engine.Tests.Publishing.Vocabulary;

namespace Barshow.Engine.Tests.Publishing;

public class StructuredDataTests
{
    [Fact]
    public void A_recipe_holds_both_units_and_the_steps()
    {
        var recipe = Recipe(SaltLane.Evening, 0);

        Assert.Equal("Recipe", recipe.GetProperty("@type").GetString());
        Assert.Equal(
            ["2 oz (60 ml) white rum", "¾ oz (22.5 ml) lime juice, freshly pressed", "½ oz (15 ml) rich syrup", "1 egg white"],
            Texts(recipe.GetProperty("recipeIngredient")));
        Assert.Equal("shaken", recipe.GetProperty("cookingMethod").GetString());
        Assert.Equal(
            [
                "Chill the coupe.",
                "Measure into the shaker: 2 oz · 60 ml white rum, ¾ oz · 22.5 ml lime juice, freshly pressed, ½ oz · 15 ml rich syrup, 1 egg white.",
                "Add ice and shake for 12 seconds.",
                "Fine-strain into the coupe.",
                "Garnish: lime wheel.",
            ],
            recipe.GetProperty("recipeInstructions").EnumerateArray().Select(step => step.GetProperty("text").GetString()!));
    }

    [Fact]
    public void A_topped_drink_says_with_what() =>
        Assert.Contains("top with soda water", Texts(Recipe(SaltLane.Evening, 1).GetProperty("recipeIngredient")));

    [Fact]
    public void Strength_stands_in_the_description_because_the_vocabulary_has_no_property_for_it()
    {
        var recipe = Recipe(SaltLane.Evening, 0);

        Assert.Matches(@"^Harbour Sour, as made in ""Three drinks, one bottle of white rum""\. 1\d–\d\d % alcohol by volume as served, 1\.4 US standard drinks \(14 g of alcohol each\)\. For adults of legal drinking age\.$", recipe.GetProperty("description").GetString());
        Assert.False(recipe.TryGetProperty("nutrition", out _));
        Assert.False(recipe.GetProperty("isFamilyFriendly").GetBoolean());
    }

    [Fact]
    public void A_drink_without_alcohol_is_no_cocktail()
    {
        var drink = SaltLane.Dune with { Spec = SaltLane.Dune.Spec with { Lines = [SaltLane.Line("15 ml", "lime juice"), SaltLane.Line("90 ml", "soda water")] } };

        var recipe = Recipe(SaltLane.Evening with { Lineup = [drink] }, 0);

        Assert.Equal("Mocktail", recipe.GetProperty("recipeCategory").GetString());
        Assert.False(recipe.TryGetProperty("isFamilyFriendly", out _));
    }

    [Fact]
    public void The_film_and_the_drinks_clip_are_given_once_the_film_has_an_address_and_times()
    {
        var video = Recipe(SaltLane.Filmed, 1).GetProperty("video");

        Assert.Equal("PT10M", video.GetProperty("duration").GetString());
        var clip = Assert.Single(video.GetProperty("hasPart").EnumerateArray());
        Assert.Equal("Dune", clip.GetProperty("name").GetString());
        Assert.Equal(190, clip.GetProperty("startOffset").GetInt32());
        Assert.Equal(400, clip.GetProperty("endOffset").GetInt32());
        // W3C Media Fragments URI 1.0: "#t=190" is the film from 190 seconds.
        Assert.Equal("https://example.org/film#t=190", clip.GetProperty("url").GetString());
    }

    [Fact]
    public void Without_an_address_there_is_no_film_and_without_times_no_clip()
    {
        Assert.False(Recipe(SaltLane.Filmed with { FilmAddress = "" }, 0).TryGetProperty("video", out _));
        Assert.False(Recipe(SaltLane.Evening with { FilmAddress = "https://example.org/film" }, 0).GetProperty("video").TryGetProperty("hasPart", out _));
    }

    [Fact]
    public void Every_document_keeps_to_the_vocabulary()
    {
        foreach (var episode in new[] { SaltLane.Evening, SaltLane.Filmed, ShootDays.Episode, SaltLane.Evening with { FilmAddress = "https://example.org/film" } })
            foreach (var house in new[] { SaltLane.House, SaltLane.House with { Presenter = "Wren", SiteAddress = "https://saltlane.example/drinks/" } })
                for (var i = 0; i < episode.Lineup.Count; i++)
                    Assert.Empty(VocabularyCheck.Problems(Json(episode, i, house)));
    }

    // Each of these is wrong by the release; a check that lets one pass is no check.
    [Theory]
    [InlineData("""{"@context":"https://schema.org","@type":"Recipe","ingredients":"gin"}""", "$.ingredients is superseded.")]
    [InlineData("""{"@context":"https://schema.org","@type":"Recipe","alcohol":"12"}""", "$.alcohol is no property of Recipe.")]
    [InlineData("""{"@context":"https://schema.org","@type":"Drink"}""", "$ has no known type.")]
    [InlineData("""{"@context":"https://schema.org","@type":"Clip","startOffset":"42"}""", "$.startOffset[0] is no Number: 42")]
    [InlineData("""{"@context":"https://schema.org","@type":"VideoObject","duration":"10M"}""", "$.duration[0] is no Duration: 10M")]
    [InlineData("""{"@context":"https://schema.org","@type":"Recipe","datePublished":"24/11/2026"}""", "$.datePublished[0] is no Date or DateTime: 24/11/2026")]
    [InlineData("""{"@context":"https://schema.org","@type":"Recipe","author":"A. Host"}""", "$.author[0] is no Person or Organization: A. Host")]
    [InlineData("""{"@context":"https://schema.org","@type":"Recipe","image":"pictures/a.png"}""", "$.image[0] is no URL or ImageObject: pictures/a.png")]
    [InlineData("""{"@type":"Recipe"}""", "The context is not the vocabulary's.")]
    public void The_check_finds_what_is_wrong(string json, string problem) =>
        Assert.Equal(problem, Assert.Single(VocabularyCheck.Problems(json)));

    [Theory]
    [MemberData(nameof(HostileNames.All), MemberType = typeof(HostileNames))]
    public void A_hostile_name_stays_a_string_and_leaves_no_script_element(string name)
    {
        var drink = SaltLane.Filmed.Lineup[0];
        drink = drink with { Spec = drink.Spec with { Name = name.Trim().Length > 0 ? name : "x", Taste = name, Family = name, Tags = [name], Steps = [name.Trim().Length > 0 ? name : "x"], Lines = [SaltLane.Line("2 oz", "white rum", name)] } };
        var episode = SaltLane.Filmed with { Title = name.Trim().Length > 0 ? name : "x", Lineup = [drink, .. SaltLane.Filmed.Lineup.Skip(1)] };

        var json = Json(episode, 0, SaltLane.House);

        Assert.DoesNotContain(json, c => c is '<' or '>' or '&');
        Assert.DoesNotContain("</script", json, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(PlainText.Line(drink.Name), JsonDocument.Parse(json).RootElement.GetProperty("name").GetString());
    }

    private static JsonElement Recipe(Episode episode, int index) => JsonDocument.Parse(Json(episode, index, SaltLane.House)).RootElement;

    private static string Json(Episode episode, int index, House house)
    {
        var results = SaltLane.Results(episode, house);
        return ScriptJson.Write(RecipeData.Of(results, episode.Lineup[index], ChapterPlanner.Plan(episode, house.Limits)));
    }

    private static IEnumerable<string> Texts(JsonElement list) => list.EnumerateArray().Select(text => text.GetString()!);
}
