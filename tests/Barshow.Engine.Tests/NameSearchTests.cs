using Barshow.Engine.Names;

namespace Barshow.Engine.Tests;

public sealed class NameSearchTests
{
    [Theory]
    [InlineData("tide pool sour", "Tide Pool Sour")]
    [InlineData("Tide", "Tide Pool Sour")]
    [InlineData("pool", "Tide Pool Sour")]
    [InlineData("sour tide", "Tide Pool Sour")]
    [InlineData("so ti", "Tide Pool Sour")]
    [InlineData("ide poo", "Tide Pool Sour")]
    [InlineData("ebene", "Ébène Fizz")]
    [InlineData("ÉBÈNE", "Ebene Fizz")]
    [InlineData("smorrebrod", "Smørrebrød")]
    [InlineData("whisky", "Whiskey Cobbler")]
    [InlineData("whiskey", "Whisky Cobbler")]
    [InlineData("coblber", "Whisky Cobbler")] // two letters changed places
    [InlineData("grandine", "Grenadine Swizzle")] // two slips in eight letters
    [InlineData("barley water", "Lemon barley-water")]
    [InlineData("dont", "Don't Look")]
    public void A_name_is_found_by_what_a_person_types(string typed, string name) => Assert.NotNull(Rank(typed, name));

    [Theory]
    [InlineData("gin", "Gun Rickey")] // three letters must be right
    [InlineData("mint", "Moat Cobbler")] // two slips in four letters
    [InlineData("sour gin", "Tide Pool Sour")]
    [InlineData("grenadine", "Gardenia")] // more slips than two
    public void A_name_is_not_found_by_what_is_too_far_off(string typed, string name) => Assert.Null(Rank(typed, name));

    [Fact]
    public void The_better_answer_ranks_first()
    {
        string[] names = ["Hot Rum Mull", "Rum", "Dark Rum Sour", "Rum Swizzle", "Drumlin"];

        var found = names.Select(name => (Name: name, Rank: Rank("rum", name))).Where(each => each.Rank is not null).OrderBy(each => each.Rank).Select(each => each.Name);

        Assert.Equal(["Rum", "Rum Swizzle", "Hot Rum Mull", "Dark Rum Sour", "Drumlin"], found);
    }

    [Fact]
    public void Well_spelled_ranks_before_misspelled() => Assert.True(Rank("cobbler", "Sherry Cobbler") < Rank("coblber", "Sherry Cobbler"));

    [Fact]
    public void Any_of_the_names_will_do() => Assert.Equal(0, NameSearch.Rank("low tide", "tide pool sour\nlow tide"));

    [Fact]
    public void Nothing_typed_answers_everything() => Assert.Equal(0, Rank("", "Tide Pool Sour"));

    [Fact]
    public void A_text_without_end_is_no_trouble() => Assert.Null(Rank(new string('a', 100_000), "Tide Pool Sour"));

    private static int? Rank(string typed, string name) => NameSearch.Rank(NameFolding.Fold(typed), NameFolding.Fold(name));
}
