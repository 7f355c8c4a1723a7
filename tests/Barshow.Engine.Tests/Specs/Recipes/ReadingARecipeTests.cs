using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Reading.Recipes;

namespace Barshow.Engine.Tests.Specs.Recipes;

/// <summary>A whole recipe is pasted and becomes a spec, each line taken for what it is.</summary>
public class ReadingARecipeTests
{
    private static ReadRecipe Read(string text, IReadOnlyDictionary<int, RecipeRole>? corrected = null) => RecipeReader.Read(text, TestBar.Shelf, TestBar.Kit, corrected);

    private const string Short = "Salt Lane Sour\n2 oz white rum\n22.5 ml lime juice\n¾ oz sugar syrup\nShaken 12 seconds, coupe, lime wheel";

    [Fact]
    public void Name_lines_and_closing_line_make_a_spec()
    {
        var read = Read(Short);

        Assert.Equal(["Name", "Ingredient", "Ingredient", "Ingredient", "Finish"], read.Lines.Select(line => line.Role.ToString()));
        Assert.Equal(("Salt Lane Sour", "salt-lane-sour", 3), (read.Spec!.Name, read.Spec.Slug.Text, read.Spec.Lines.Count));
        Assert.Equal(new Method(MethodKind.Shaken, 12), read.Spec.Method);
        Assert.Equal(("coupe", "lime wheel"), (read.Spec.Serve.Glass.Text, read.Spec.Garnish!.Text));
        Assert.Equal(Measure.Ounces(3, 4), read.Spec.Lines[2].Planned);
        Assert.Empty(read.Findings);
    }

    [Fact]
    public void Sentences_say_method_glass_and_garnish_as_well()
    {
        var read = Read("""
            SALT LANE SOUR
            Serves: 1

            Ingredients
            • 60 ml white rum
            • 25 ml lime juice, freshly pressed
            • 20 ml simple syrup

            Method
            1. Add everything to a tin, fill it with ice and shake for 12 seconds.
            2. Double strain into a chilled coupe. Garnish with a lime wheel.
            """);

        Assert.Equal(3, read.Spec!.Lines.Count);
        Assert.Equal(new Method(MethodKind.Shaken, 12), read.Spec.Method);
        Assert.Equal(("coupe", true, Straining.Fine, IceKind.None), (read.Spec.Serve.Glass.Text, read.Spec.Serve.Chilled, read.Spec.Serve.Strain, read.Spec.Serve.Ice));
        Assert.Equal(Slug.Of("Lime"), read.Spec.Garnish!.Ingredient);
        Assert.Equal(["Add everything to a tin, fill it with ice and shake for 12 seconds.", "Double strain into a chilled coupe. Garnish with a lime wheel."], read.Spec.Steps);
    }

    [Theory]
    [InlineData("Method: Shake with ice for 12 seconds and strain into a coupe.\nGlass: coupe\nGarnish: lime wheel")]
    [InlineData("Method: shaken 12 seconds\nGlass: coupe\nGarnish: lime wheel")]
    [InlineData("Glass: coupe\nGarnish: lime wheel\nMethod: shaken 12 seconds")]
    [InlineData("Shake for 12 seconds, strain into a coupe and garnish with a lime wheel.")]
    public void Keys_and_a_paragraph_say_the_same(string close)
    {
        var spec = Read("Salt Lane Sour\n2 oz white rum\n3/4 oz lime juice\n" + close).Spec!;

        Assert.Equal((new Method(MethodKind.Shaken, 12), "coupe", Slug.Of("Lime")), (spec.Method, spec.Serve.Glass.Text, spec.Garnish?.Ingredient ?? default));
    }

    [Fact]
    public void What_is_muddled_first_and_then_shaken_is_one_method() => Assert.Equal(MethodKind.MuddledAndShaken,
        Read("Mint Sour\n6 mint leaves\n2 oz white rum\nMuddle the mint gently.\nAdd the rum and shake with ice.").Spec!.Method!.Kind);

    [Fact]
    public void What_is_not_understood_is_marked_in_its_line()
    {
        var read = Read("Salt Lane Sour\n2 oz white rum\n1 oz moon milk\ntwelvety ml lime juice\nShaken, coupe, lime wheel");

        var unknown = Assert.Single(read.Lines[2].Findings);
        Assert.Equal((3, "moon milk"), (unknown.Line, unknown.Place!.Value.Of(read.Lines[2].Text)));
        Assert.Equal("The house does not know \"moon milk\" in Salt Lane Sour: its strength, sugar, acid, allergens and packs count as nothing.", unknown.Message);
        Assert.All(read.Lines[3].Findings, finding => Assert.Equal(4, finding.Line));
        Assert.Contains(read.Lines[3].Findings, finding => finding.Severity >= Severity.Fix);
        Assert.Equal("twelvety ml lime juice", read.Lines[3].Line!.Text);
    }

    [Fact]
    public void The_user_says_what_a_line_is_and_that_holds()
    {
        var text = "Salt Lane Sour\nmoon milk of the house\n2 oz white rum\nShaken, coupe";
        Assert.Equal(RecipeRole.Ingredient, Read(text).Lines[1].Role);

        var read = Read(text, new Dictionary<int, RecipeRole> { [2] = RecipeRole.Note });

        Assert.Equal(["moon milk of the house"], read.Spec!.Notes);
        Assert.Single(read.Spec.Lines);
    }

    [Fact]
    public void A_recipe_that_names_its_source_keeps_its_amounts_as_the_sources()
    {
        var spec = Read(Short + "\nSource: a manual of 1900").Spec!;

        Assert.Equal(["a manual of 1900"], spec.Sources);
        Assert.All(spec.Lines, line => Assert.Equal(AmountLayer.Source, Assert.Single(line.Amounts).Layer));
    }

    [Fact]
    public void Without_a_name_or_a_method_it_says_so()
    {
        var read = Read("2 oz white rum\n3/4 oz lime juice");

        Assert.Equal(RecipeReader.Nameless, read.Spec!.Name);
        Assert.Equal(
            ["No line gives the drink's name; it is kept as \"Drink without a name\".", "Drink without a name does not say how it is made: no line names a method."],
            read.Findings.Select(finding => finding.Message));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   \n \n")]
    public void Nothing_pasted_is_no_spec(string text) => Assert.Equal((null, 0), (Read(text).Spec, Read(text).Findings.Count));

    [Fact]
    public void A_name_alone_is_no_spec_and_says_what_is_missing() =>
        Assert.Equal("Salt Lane Sour has no ingredient lines.", Assert.Single(Read("Salt Lane Sour").Findings).Message);

    [Fact]
    public void The_two_hundredth_line_is_read_and_the_next_is_left_out()
    {
        string Lines(int count) => "Long\n" + string.Join('\n', Enumerable.Repeat("1 dash aromatic bitters", count - 1));

        Assert.DoesNotContain(Read(Lines(200)).Findings, finding => finding.Kind == FindingCatalogue.RecipeTooLong);
        var read = Read(Lines(201));
        Assert.Equal(200, read.Lines.Count);
        Assert.Contains("The recipe is longer than 200 lines or 20,000 characters; what comes after was left out.", read.Findings.Select(finding => finding.Message));
    }

    [Theory]
    [InlineData("::::\n:::")]
    [InlineData("1.\n2)\n- -\n• •")]
    [InlineData("\0\u0001\n<script>alert(1)</script>\n2 oz <b>rum</b>")]
    [InlineData("Garnish:\nMethod:\nGlass:")]
    public void Odd_text_never_throws(string text) => Assert.NotNull(Read(text).Lines);
}
