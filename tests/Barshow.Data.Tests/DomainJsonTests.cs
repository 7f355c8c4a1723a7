using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests;

public class DomainJsonTests
{
    private static readonly Spec Highball = new()
    {
        Slug = Slug.Of("Harbour Highball"),
        Name = "Harbour Highball",
        Lines =
        [
            new() { Name = "white rum", Ingredient = Slug.Of("white rum"), Amounts = [new(AmountLayer.Source, Measure.Millilitres(50)), new(AmountLayer.Library, Measure.Ounces(3, 2), "a jigger shows it")] },
            new() { Name = "soda water", Amounts = [new(AmountLayer.Library, Measure.Millilitres(75).As(OpenMeasure.Top))], Use = LineUse.Topped },
        ],
        Method = new(MethodKind.MuddledAndBuilt, Seconds: 10),
        Serve = new() { Glass = Slug.Of("highball"), Ice = IceKind.Cubed },
    };

    [Fact]
    public void A_spec_comes_back_as_it_was_written()
    {
        var json = JsonSerializer.Serialize(Highball, DomainJson.Compact);

        var back = JsonSerializer.Deserialize<Spec>(json, DomainJson.Compact)!;

        Assert.Equal(json, JsonSerializer.Serialize(back, DomainJson.Compact));
        Assert.Equal(Measure.Ounces(3, 2), back.Lines[0].Planned);
        Assert.Equal(MethodKind.MuddledAndBuilt, back.Method!.Kind);
    }

    [Fact]
    public void Measures_and_names_are_written_under_our_own_names()
    {
        var json = JsonSerializer.Serialize(Highball, DomainJson.Compact);

        Assert.Contains("\"measure\":\"3/2 oz\"", json, StringComparison.Ordinal);
        Assert.Contains("\"measure\":\"top 75 ml\"", json, StringComparison.Ordinal);
        Assert.Contains("\"kind\":\"muddled-and-built\"", json, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strength_is_written_as_its_percentage()
    {
        var json = JsonSerializer.Serialize(new Composition { Strength = Strength.FromPercent(40) }, DomainJson.Compact);

        Assert.Equal("{\"strength\":40}", json);
    }

    [Fact]
    public void What_was_published_and_the_template_come_back_as_they_were_written()
    {
        var version = new Publication { Version = 1, At = new(2027, 3, 20, 9, 0, 0, TimeSpan.FromHours(11)), Description = "½ oz · 15 ml", Drinks = [new("Dune", ["½ oz · 15 ml orgeat"])] };
        var episode = new Episode { Slug = Slug.Of("dune"), Title = "Dune", FilmAddress = "https://example.org/film", Publications = [version] };
        var house = new House { Description = new() { Text = "{disclosure}\nHello", Credits = "Bye", ShortenFirst = [DescriptionPart.Tools] } };

        var backEpisode = JsonSerializer.Deserialize<Episode>(JsonSerializer.Serialize(episode, DomainJson.Compact), DomainJson.Compact)!;
        var backHouse = JsonSerializer.Deserialize<House>(JsonSerializer.Serialize(house, DomainJson.Compact), DomainJson.Compact)!;

        Assert.Equal("https://example.org/film", backEpisode.FilmAddress);
        Assert.Equal(version.At, Assert.Single(backEpisode.Publications).At);
        Assert.Equal(["½ oz · 15 ml orgeat"], backEpisode.Publications[0].Drinks[0].Lines);
        Assert.Equal(("{disclosure}\nHello", "Bye"), (backHouse.Description.Text, backHouse.Description.Credits));
        Assert.Equal([DescriptionPart.Tools], backHouse.Description.ShortenFirst);
    }

    [Fact]
    public void A_nought_that_replaces_another_default_is_kept()
    {
        var json = JsonSerializer.Serialize(new House { SpillShare = 0, Name = "" }, DomainJson.Compact);

        var back = JsonSerializer.Deserialize<House>(json, DomainJson.Compact)!;

        Assert.Equal(0, back.SpillShare);
        Assert.Equal("", back.Name);
    }

    [Theory]
    [InlineData("{\"slug\":\"a\",\"name\":\"A\",\"unheard\":1}")]
    [InlineData("{\"slug\":\"Not A Slug\",\"name\":\"A\"}")]
    [InlineData("{\"slug\":\"a\"}")]
    public void What_is_not_understood_is_refused(string json) =>
        Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Spec>(json, DomainJson.Compact));
}
