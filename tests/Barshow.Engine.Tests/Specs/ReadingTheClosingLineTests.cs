using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Reading;
using static Barshow.Engine.Tests.Specs.TestBar;

namespace Barshow.Engine.Tests.Specs;

public class ReadingTheClosingLineTests
{
    [Theory]
    [InlineData("shaken 12 seconds, coupe, lime wheel", "shaken 12 s | coupe, chilled, None, Fine | lime wheel")]
    [InlineData("muddled and built, highball over crushed ice, mint sprig", "muddled and built | highball, Crushed, None | mint sprig")]
    [InlineData("stirred, chilled nick and nora, no garnish, straw", "stirred | nick-and-nora, chilled, None, Single, straw | -")]
    [InlineData("built, highball, lime wedge", "built | highball, Cubed, None | lime wedge")]
    [InlineData("Built in a highball, lime wedge", "built | highball, Cubed, None | lime wedge")]
    [InlineData("swizzled 10 s, highball, mint sprig", "swizzled 10 s | highball, Crushed, None | mint sprig")]
    [InlineData("shaken, rocks, lime wheel", "shaken | rocks, Cubed, Single | lime wheel")]
    [InlineData("shaken, rocks glass over one large cube, lime wheel", "shaken | rocks, Large, Single | lime wheel")]
    [InlineData("shaken, old fashioned glass", "shaken | rocks, Cubed, Single | -")]
    [InlineData("stirred 30 seconds, rocks, orange twist", "stirred 30 s | rocks, Cubed, Single | orange twist")]
    [InlineData("dry shaken then shaken 10 seconds, coupe, three drops of aromatic bitters", "dry and shaken 10 s | coupe, chilled, None, Fine | three drops of aromatic bitters")]
    [InlineData("dry shake, shake 12 s, coupe", "dry and shaken 12 s | coupe, chilled, None, Fine | -")]
    [InlineData("muddled and shaken, double strained, coupe, mint leaf", "muddled and shaken | coupe, chilled, None, Fine | mint leaf")]
    [InlineData("thrown 5 pours, coupe, olive", "thrown 5 times | coupe, chilled, None, Single | olive")]
    [InlineData("blended, highball, pineapple wedge and cherry", "blended | highball, chilled, None, None | pineapple wedge and cherry")]
    [InlineData("layered, small coupe, none", "layered | small-coupe, chilled, None, None | -")]
    [InlineData("built and stirred briefly, rocks", "built | rocks, Cubed, None | -")]
    [InlineData("built, flute", "built | flute, chilled, None, None | -")]
    [InlineData("shaken 10 to 12 seconds, coupe or nick and nora, lemon twist", "shaken 12 s | coupe or nick-and-nora, chilled, None, Fine | lemon twist")]
    [InlineData("shaken 10–12 seconds and fine strained into a chilled coupe, lime wheel or lime twist", "shaken 12 s | coupe, chilled, None, Fine | lime wheel or lime twist")]
    [InlineData("shaken twelve seconds; coupe; garnish: lime wheel", "shaken 12 s | coupe, chilled, None, Fine | lime wheel")]
    [InlineData("shaken 12s, coupe, garnished with a lime wheel", "shaken 12 s | coupe, chilled, None, Fine | a lime wheel")]
    [InlineData("Shaken & open poured, rocks, lime wedge & mint sprig", "shaken | rocks, Cubed, Open | lime wedge and mint sprig")]
    [InlineData("stirred, silver cup, mint sprig", "stirred | silver-cup, Cubed, Single | mint sprig")]
    [InlineData("shaken, coupe, salt rim, lime wheel", "shaken | coupe, chilled, None, Fine | salt rim and lime wheel")]
    [InlineData("built over cubed ice, highball, lime wheel, mint sprig and straw", "built | highball, Cubed, None, straw | lime wheel and mint sprig")]
    [InlineData("stirred, coupe", "stirred | coupe, chilled, None, Single | -")]
    [InlineData("shaken", "shaken | -, None, Fine | -")]
    [InlineData("coupe, lime wheel", "- | coupe, None, None | lime wheel")]
    [InlineData("stirred, served up in a coupe, lemon twist", "stirred | coupe, chilled, None, Single | lemon twist")]
    [InlineData("stirred, on the rocks, lemon twist", "stirred | -, Cubed, Single | lemon twist")]
    [InlineData("shaken hard with ice for 12 seconds, double strained into a chilled coupe, lime wheel", "shaken 12 s | coupe, chilled, None, Fine | lime wheel")]
    [InlineData("stirred with ice, rocks over a large cube, orange peel", "stirred | rocks, Large, Single | orange peel")]
    [InlineData("blended with crushed ice, highball", "blended | highball, chilled, None, None | -")]
    [InlineData("shaken with crushed ice, open poured, rocks", "shaken | rocks, Crushed, Open | -")]
    public void A_closing_line_gives_method_serve_and_garnish(string line, string expected) => Assert.Equal(expected, Written(FinishReader.Read(line, Kit, Shelf)));

    [Theory]
    [InlineData("shakn 12 seconds, coupe", "shakn", "\"shakn\" is read as \"shaken\".")]
    [InlineData("Sitrred, coupe", "Sitrred", "\"Sitrred\" is read as \"stirred\".")]
    public void A_slip_of_the_pen_is_read_as_it_was_meant(string line, string written, string sentence)
    {
        var finish = FinishReader.Read(line, Kit, Shelf);

        var finding = Assert.Single(finish.Findings);
        Assert.Equal(FindingCatalogue.ReadingRepaired, finding.Kind);
        Assert.Equal(sentence, finding.Message);
        Assert.Equal(written, finding.Place!.Value.Of(line));
        Assert.NotNull(finish.Method);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" , ; ")]
    [InlineData("\u0000\ud800,\u200b")]
    public void A_line_that_says_nothing_is_a_finding(string line)
    {
        var finding = Assert.Single(FinishReader.Read(line, Kit, Shelf).Findings);

        Assert.Equal(FindingCatalogue.FinishUnreadable, finding.Kind);
    }

    [Fact]
    public void An_enormous_line_is_cut_and_read()
    {
        var finish = FinishReader.Read("shaken, coupe, " + new string('x', 1_000_000), Kit, Shelf);

        Assert.Equal(MethodKind.Shaken, finish.Method!.Kind);
    }

    [Fact]
    public void Garnish_is_counted_from_what_the_house_knows()
    {
        var garnish = FinishReader.Read("shaken, coupe, two lime wheels and mint sprig", Kit, Shelf).Garnish!;

        Assert.Equal("lime", garnish.Ingredient.Text);
        Assert.Equal("2 wheel", garnish.Measure!.ToString());
        var beside = Assert.Single(garnish.Beside);
        Assert.Equal("mint", beside.Ingredient.Text);
        Assert.Equal("1 sprig", beside.Measure!.ToString());
    }

    [Theory]
    [InlineData("mint", "")]
    [InlineData("two limes", "2")]
    [InlineData("salt rim", "")]
    [InlineData("lime wheel on the rim", "1 wheel")]
    [InlineData("half lime wheel", "1/2 wheel")]
    public void A_garnish_is_counted_only_where_it_can_be(string garnish, string measure) =>
        Assert.Equal(measure, FinishReader.Read("shaken, coupe, " + garnish, Kit, Shelf).Garnish!.Measure?.ToString() ?? "");

    [Fact]
    public void A_spent_shell_is_bought_for_nothing()
    {
        var garnish = FinishReader.Read("shaken, rocks over crushed ice, spent lime shell", Kit, Shelf).Garnish!;

        Assert.True(garnish.FromLeftovers);
        Assert.Equal("lime", garnish.Ingredient.Text);
        Assert.Null(garnish.Measure);
    }

    [Theory]
    [InlineData("shaken 12 seconds, coupe, lime wheel", true)]
    [InlineData("Muddled and built, rocks", true)]
    [InlineData("dry shaken, coupe", true)]
    [InlineData("60 ml white rum", false)]
    [InlineData("2 oz shaken cream", false)]
    [InlineData("salt", false)]
    [InlineData("", false)]
    public void A_closing_line_is_told_from_an_ingredient(string line, bool expected) => Assert.Equal(expected, FinishReader.LooksLikeFinish(line));

    private static string Written(Finish finish)
    {
        var method = finish.Method is null ? "-"
            : (finish.Method.DryShake ? "dry and " : "") + finish.Method.Name
            + (finish.Method.Seconds is { } seconds ? string.Create(CultureInfo.InvariantCulture, $" {seconds} s") : "")
            + (finish.Method.Pours is { } pours ? string.Create(CultureInfo.InvariantCulture, $" {pours} times") : "");
        var serve = finish.Serve;
        var glass = string.Join(" or ", new[] { serve.Glass }.Concat(serve.GlassesInstead).Select(slug => slug.IsEmpty ? "-" : slug.Text));
        var served = string.Join(", ", new[] { glass, serve.Chilled ? "chilled" : "", serve.Ice.ToString(), serve.Strain.ToString(), serve.Straw ? "straw" : "" }.Where(text => text.Length > 0));
        var garnish = finish.Garnish is null ? "-" : string.Join(" or ", finish.Garnish.Instead.Select(each => each.Text).Prepend(finish.Garnish.Text));
        return $"{method} | {served} | {garnish}";
    }
}
