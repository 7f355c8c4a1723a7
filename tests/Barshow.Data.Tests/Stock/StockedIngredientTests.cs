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
}
