using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Data.Tests.Stock;

public class StockedIngredientTests
{
    public static TheoryData<string> Names => [.. DemoData.Shelf.All.Select(ingredient => ingredient.Slug.Text)];

    [Theory, MemberData(nameof(Names))]
    public void Every_ingredient_that_another_speaks_of_is_on_the_shelf(string slug)
    {
        var ingredient = DemoData.Ingredient(slug);

        Assert.All(
            [
                .. ingredient.StandIns.Select(standIn => standIn.Ingredient),
                .. ingredient.Prep?.Inputs.Select(input => input.Ingredient) ?? [],
                .. ingredient.Produce is { Juice.IsEmpty: false } produce ? [produce.Juice] : Array.Empty<Slug>(),
            ],
            named => Assert.True(DemoData.Shelf.TryGet(named, out _), $"{slug} speaks of {named}, which is not there."));
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_figure_names_its_source(string slug)
    {
        var ingredient = DemoData.Ingredient(slug);
        var composition = ingredient.Composition;

        if (composition.Strength is not null || composition.SugarGramsPer100Millilitres is not null || composition.AcidGramsPer100Millilitres is not null || composition.DensityGramsPerMillilitre is not null)
            Assert.NotEqual("", composition.Source);
        if (ingredient.Produce is { } produce)
            Assert.NotEqual("", produce.Source);
        if (ingredient.Fresh is { } window)
            Assert.NotEqual("", window.Source);
    }

    [Fact]
    public void No_two_ingredients_share_a_slug() => Assert.Distinct(DemoData.Shelf.All.Select(ingredient => ingredient.Slug));

    [Fact]
    public void A_hundred_and_twenty_five_ingredients_and_fifteen_house_preps_are_stocked()
    {
        Assert.True(DemoData.Shelf.All.Count >= 125, $"There are {DemoData.Shelf.All.Count} ingredients.");
        Assert.True(DemoData.Shelf.All.Count(ingredient => ingredient.Prep is not null) >= 15);
    }

    [Fact]
    public void A_house_prep_says_how_it_is_made_and_how_long_it_keeps() =>
        Assert.All(DemoData.Shelf.All.Where(ingredient => ingredient.Prep is not null), ingredient =>
        {
            Assert.NotEmpty(ingredient.Prep!.Inputs);
            Assert.NotEmpty(ingredient.Prep.Steps);
            Assert.All(ingredient.Prep.Steps, step => Assert.Matches(@"^\p{Lu}.*\.$", step));
            Assert.True(ingredient.Prep.HandsOn > TimeSpan.Zero);
            Assert.True(ingredient.Fresh is { } window && window.Best > TimeSpan.Zero && window.Keep >= window.Best, ingredient.Name);
        });

    [Fact]
    public void No_house_prep_goes_into_itself()
    {
        foreach (var ingredient in DemoData.Shelf.All)
            Follow(ingredient.Slug, []);

        static void Follow(Slug slug, HashSet<Slug> above)
        {
            Assert.True(above.Add(slug), $"{slug} goes into itself.");
            foreach (var input in DemoData.Shelf[slug]!.Prep?.Inputs ?? [])
                Follow(input.Ingredient, [.. above]);
        }
    }

    // The windows that film plans hang on; the mint and basil figures are common practice without a source.
    [Theory]
    [InlineData("mint-syrup", 24)]
    [InlineData("basil-syrup", 2)]
    [InlineData("lime-juice", 10)]
    [InlineData("sugar-syrup", 14 * 24)]
    public void A_fresh_window_is_as_long_as_the_trade_has_it(string slug, int bestHours) => Assert.Equal(TimeSpan.FromHours(bestHours), DemoData.Ingredient(slug).Fresh!.Best);

    [Theory]
    [InlineData("fresh lime juice", "lime-juice")]
    [InlineData("freshly squeezed lemon juice", "lemon-juice")]
    [InlineData("simple syrup", "sugar-syrup")]
    [InlineData("Sugar syrup", "sugar-syrup")]
    [InlineData("2:1 syrup", "rich-syrup")]
    [InlineData("soda", "soda-water")]
    [InlineData("club soda", "soda-water")]
    [InlineData("sparkling water", "soda-water")]
    [InlineData("superfine sugar", "caster-sugar")]
    [InlineData("mint leaves", "mint")]
    [InlineData("fresh mint sprigs", "mint")]
    [InlineData("bitters", "aromatic-bitters")]
    [InlineData("limes", "lime")]
    [InlineData("egg whites", "egg-white")]
    [InlineData("London dry gin", "gin")]
    [InlineData("tequila", "blanco-tequila")]
    [InlineData("cognac", "brandy")]
    [InlineData("champagne", "sparkling-wine")]
    [InlineData("sweet red vermouth", "sweet-vermouth")]
    [InlineData("crème de mûre", "creme-de-mure")]
    [InlineData("cilantro", "coriander")]
    [InlineData("maraschino cherries", "cocktail-cherry")]
    public void An_ingredient_is_found_by_the_words_people_use(string words, string slug) => Assert.Equal(slug, DemoData.Shelf.Named(words)?.Slug.Text);

    [Fact]
    public void No_name_means_two_ingredients()
    {
        var names = DemoData.Shelf.All.SelectMany(ingredient => ingredient.Aliases.Append(ingredient.Name).Select(NameFolding.Fold).Distinct().Select(name => (name, ingredient.Slug)));

        Assert.All(names.GroupBy(pair => pair.name), group => Assert.True(group.Count() == 1, $"{group.Key} means {string.Join(" and ", group.Select(pair => pair.Slug))}."));
    }

    [Theory]
    [InlineData("caster-sugar", "US", "superfine sugar")]
    [InlineData("soda-water", "US", "club soda")]
    [InlineData("sugar-syrup", "UK", "sugar syrup")]
    public void A_name_of_another_country_is_known(string slug, string region, string name) =>
        Assert.Contains(DemoData.Ingredient(slug).RegionalNames, regional => regional == new RegionalName(region, name));

    [Theory]
    [InlineData("dry-cider", "AU")]
    [InlineData("apple-juice", "US")]
    [InlineData("ginger-beer", "AU")]
    [InlineData("lemon-lime-soda", "UK")]
    public void A_name_that_means_something_else_elsewhere_warns(string slug, string region) =>
        Assert.Contains(DemoData.Ingredient(slug).RegionalNames, regional => regional.Region == region && regional.Warning is not null);

    [Theory]
    [InlineData("white-sugar", "salt", "water", "ice", "honey")]
    public void A_home_is_assumed_to_have_the_staples(params string[] slugs) => Assert.All(slugs, slug => Assert.True(DemoData.Ingredient(slug).Staple));

    [Fact]
    public void What_holds_gas_is_marked() =>
        Assert.Equal(
            ["bitter-lemon", "cola", "dry-cider", "ginger-ale", "ginger-beer", "grapefruit-soda", "lager", "lemon-lime-soda", "soda-water", "sparkling-apple", "sparkling-wine", "stout", "tonic-water"],
            DemoData.Shelf.All.Where(ingredient => ingredient.Fizzy).Select(ingredient => ingredient.Slug.Text).Order());

    [Fact]
    public void Whatever_is_not_made_or_pressed_can_be_bought_at_a_price() =>
        Assert.All(
            DemoData.Shelf.All.Where(ingredient => ingredient is { Prep: null, Staple: false } && !DemoData.Shelf.All.Any(fruit => fruit.Produce?.Juice == ingredient.Slug && fruit.Slug != ingredient.Slug)),
            ingredient => Assert.True(ingredient.Packs.Any(pack => pack.Price > 0), ingredient.Name));
}
