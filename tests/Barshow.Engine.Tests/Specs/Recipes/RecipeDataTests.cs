using Barshow.Engine.Findings;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Reading.Recipes;

namespace Barshow.Engine.Tests.Specs.Recipes;

/// <summary>Recipes are found in the data of a page: schema.org Recipe as JSON-LD in the shapes that pages use.</summary>
public class RecipeDataTests
{
    private const string Bare = """
        {"@context":"https://schema.org","@type":"Recipe","name":"Salt Lane Sour","author":{"@type":"Person","name":"A. Barkeep"},"url":"https://salt-lane.example/sour",
         "recipeIngredient":["60 ml white rum","22.5 ml lime juice","22.5 ml simple syrup"],
         "recipeInstructions":[{"@type":"HowToStep","text":"Shake with ice for 12 seconds."},{"@type":"HowToStep","text":"Strain into a coupe and garnish with a lime wheel."}]}
        """;

    [Theory]
    [InlineData(Bare)]
    [InlineData("[" + Bare + "]")]
    [InlineData("""{"@context":"https://schema.org","@graph":[{"@type":"WebSite","name":"Salt Lane"},""" + Bare + "]}")]
    [InlineData("""{"@type":"WebPage","mainEntity":""" + Bare + "}")]
    [InlineData("<!doctype html><html><head><script>var a = '<p>';</script><script type=\"application/ld+json\">" + Bare + "</script></head><body>Buy things</body></html>")]
    [InlineData("<SCRIPT TYPE='application/ld+json'>{ broken</SCRIPT>\n<script class=x type=application/ld+json>" + Bare + "</script >")]
    public void A_recipe_is_found_wherever_it_stands(string page)
    {
        var found = RecipeDataReader.Read(page);

        Assert.Equal("Salt Lane Sour", Assert.Single(found.Recipes).Name);
        Assert.Empty(found.Findings);
        var spec = RecipeReader.Read(found.Recipes[0].Text, TestBar.Shelf, TestBar.Kit).Spec!;
        Assert.Equal(("Salt Lane Sour", 3, MethodKind.Shaken, "coupe"), (spec.Name, spec.Lines.Count, spec.Method!.Kind, spec.Serve.Glass.Text));
        Assert.Equal(["Shake with ice for 12 seconds.", "Strain into a coupe and garnish with a lime wheel."], spec.Steps);
        Assert.Equal(["A. Barkeep, https://salt-lane.example/sour"], spec.Sources);
        Assert.True(RecipeDataReader.LooksLikeData(page));
    }

    [Theory]
    [InlineData("""["Shake.","Strain into a coupe."]""")]
    [InlineData("""[{"@type":"HowToSection","name":"Make it","itemListElement":[{"@type":"HowToStep","text":"Shake."},{"@type":"HowToStep","name":"Strain into a coupe."}]}]""")]
    [InlineData("""{"@type":"ItemList","itemListElement":[{"@type":"HowToStep","text":"<p>Shake.</p>"},{"@type":"HowToStep","text":"Strain into a coupe."}]}""")]
    [InlineData("\"Shake.\\nStrain into a coupe.\"")]
    [InlineData("\"<ol><li>Shake.</li><li>Strain into a coupe.</li></ol>\"")]
    public void Instructions_are_text_steps_or_sections(string instructions)
    {
        var found = RecipeDataReader.Read($$"""{"@type":["NewsArticle","Recipe"],"name":"Sour","ingredients":"60 ml white rum","recipeInstructions":{{instructions}}}""");

        Assert.Equal("Name: Sour\n60 ml white rum\nInstructions\nShake.\nStrain into a coupe.\n", Assert.Single(found.Recipes).Text);
    }

    [Fact]
    public void Entities_of_a_page_are_read_as_what_they_stand_for() => Assert.Contains("3/4 oz cr\u00e8me & lime", RecipeDataReader.Read(
        """{"@type":"Recipe","name":"Sour","recipeIngredient":["3/4 oz cr&egrave;me &amp; lime"]}""").Recipes[0].Text, StringComparison.Ordinal);

    [Theory]
    [InlineData("<html><body>Nothing here</body></html>", "The page holds no schema.org Recipe as JSON-LD.")]
    [InlineData("""{"@type":"Article"}""", "The page holds no schema.org Recipe as JSON-LD.")]
    [InlineData("""{"@type":"Recipe","name":"Half" """, "The page's recipe data is no sound JSON, or is nested too deep, so it was not read.")]
    [InlineData("""{"@type":"Recipe","name":"\ud800"}""", "The page's recipe data is no sound JSON, or is nested too deep, so it was not read.")]
    public void A_page_without_a_sound_recipe_is_refused_with_a_sentence(string page, string sentence)
    {
        var found = RecipeDataReader.Read(page);

        Assert.Empty(found.Recipes);
        Assert.Equal((FindingCatalogue.RecipeDataUnreadable, sentence), (found.Findings[0].Kind, found.Findings[0].Message));
    }

    [Theory]
    [InlineData(28, true)]
    [InlineData(40, false)]
    public void Nesting_is_bounded(int depth, bool isRead) =>
        Assert.Equal(isRead, RecipeDataReader.Read(string.Concat(Enumerable.Repeat("[", depth)) + """{"@type":"Recipe","name":"Deep"}""" + new string(']', depth)).Recipes.Count == 1);

    [Fact]
    public void Size_is_bounded()
    {
        var page = new string(' ', RecipeDataReader.MostCharacters - 40) + """{"@type":"Recipe","name":"Far"}""";
        Assert.Single(RecipeDataReader.Read(page).Recipes);

        Assert.Equal("The page holds 3.0 MB; pages of up to 2 MB are read.", RecipeDataReader.Read(new string(' ', 3_000_000)).Findings[0].Message);
    }

    [Fact]
    public void A_hostile_page_ends_and_gives_no_markup()
    {
        var tags = string.Concat(Enumerable.Repeat("<a", 300_000));
        Assert.Single(RecipeDataReader.Read($$"""{"@type":"Recipe","name":"{{tags}}"}""").Recipes);
        Assert.Empty(RecipeDataReader.Read(string.Concat(Enumerable.Repeat("<script", 200_000))).Recipes);

        var text = RecipeDataReader.Read("""{"@type":"Recipe","name":"<img src=x onerror=alert(1)>Sour","url":"javascript:alert(1)","author":[[["x"]],7,{"name":"B"}],"recipeIngredient":[null,7,{"a":1},"<script>1 oz gin</script>"]}""").Recipes[0].Text;
        Assert.Equal("Name: Sour\n1 oz gin\nSource: B\n", text);
    }

    [Theory]
    [InlineData("Salt Lane Sour\n2 oz white rum")]
    [InlineData("")]
    public void Typed_recipes_are_no_data(string text) => Assert.False(RecipeDataReader.LooksLikeData(text));
}
