using Barshow.Data.Stores;
using Barshow.Data.Tests.Support;
using Barshow.Data.Use;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;

namespace Barshow.Data.Tests;

public sealed class IngredientUseTests : IAsyncLifetime
{
    private static readonly Slug Lime = Slug.Of("lime juice");
    private TestHouse _house = null!;

    public async Task InitializeAsync() => _house = await TestHouse.OpenAsync();

    public async Task DisposeAsync() => await _house.DisposeAsync();

    [Fact]
    public async Task An_ingredient_that_is_used_nowhere_says_so()
    {
        await _house.Drinks.SaveAsync(Make.Drink("Dry One", "gin"), null);

        var use = await UseAsync();

        Assert.False(use.Any);
        Assert.Equal("Lime juice is used nowhere.", use.Sentence("Lime juice"));
    }

    [Fact]
    public async Task Drinks_preps_and_episodes_are_named()
    {
        await _house.Drinks.SaveAsync(Make.Drink("Tide Pool Sour"), null);
        await _house.Ingredients.SaveAsync(Make.Prep("Lime cordial", "lime juice", "sugar"), null);
        await _house.Episodes.SaveAsync(Make.Episode("One", Make.Drink("Low Tide")), null);

        Assert.Equal(
            "Lime juice is used in 1 drink (Tide Pool Sour), 1 house prep (Lime cordial) and 1 episode (One).",
            (await UseAsync()).Sentence("Lime juice"));
    }

    [Fact]
    public async Task Of_many_drinks_three_are_named_and_the_rest_are_counted()
    {
        for (var count = 1; count <= 5; count++)
            await _house.Drinks.SaveAsync(Make.Drink($"Drink {count}"), null);

        Assert.Equal("Lime juice is used in 5 drinks (Drink 1, Drink 2, Drink 3 and 2 more).", (await UseAsync()).Sentence("Lime juice"));
    }

    [Fact]
    public async Task A_garnish_a_base_swap_a_bottle_a_stand_in_and_a_juice_are_uses()
    {
        await _house.Drinks.SaveAsync(Make.Drink("Garnished", "gin") with { Garnish = new("wheel") { Instead = [new("spoon") { Ingredient = Lime }] } }, null);
        await _house.Drinks.SaveAsync(Make.Drink("Swapped", "gin") with { BaseSwaps = [Lime] }, null);
        await _house.Episodes.SaveAsync(Make.Episode("Bottle") with { Bottle = new() { Name = "lime juice", Ingredient = Lime } }, null);
        await _house.Ingredients.SaveAsync(Make.Ingredient("Lime", IngredientKind.Fruit) with { Produce = new() { Juice = Lime } }, null);
        await _house.Ingredients.SaveAsync(Make.Ingredient("Lemon juice", IngredientKind.Juice) with { StandIns = [new(Lime)] }, null);

        var use = await UseAsync();

        Assert.Equal(["Garnished", "Swapped"], use.Drinks.Select(each => each.Name));
        Assert.Equal(["Bottle"], use.Episodes.Select(each => each.Name));
        Assert.Equal(["Lemon juice", "Lime"], use.Ingredients.Select(each => each.Name));
    }

    [Fact]
    public async Task A_text_that_happens_to_be_the_slug_is_no_use()
    {
        await _house.Drinks.SaveAsync(Make.Drink("Dry One", "gin") with { Taste = "lime-juice" }, null);

        Assert.False((await UseAsync()).Any);
    }

    [Fact]
    public async Task What_lies_in_the_bin_is_no_use()
    {
        await _house.Drinks.SaveAsync(Make.Drink(), null);
        await _house.Drinks.DeleteAsync(Slug.Of("Tide Pool Sour"));

        Assert.False((await UseAsync()).Any);
    }

    [Fact]
    public async Task A_prep_that_needs_itself_through_others_is_refused_with_the_loop_named()
    {
        await _house.Ingredients.SaveAsync(Make.Prep("Mint syrup", "Mint tea", "Sugar"), null);
        await _house.Ingredients.SaveAsync(Make.Prep("Mint tea", "Mint", "Green water"), null);

        var result = await _house.Ingredients.SaveAsync(Make.Prep("Green water", "Water", "Mint syrup"), null);

        Assert.Equal(
            "Green water cannot be made this way: Green water, which needs Mint syrup, which needs Mint tea, which needs Green water. Take one of them out of the inputs.",
            Assert.IsType<SaveResult<Ingredient>.Refused>(result).Sentence);
        Assert.Null(await _house.Ingredients.FindAsync(Slug.Of("Green water")));
    }

    [Fact]
    public async Task A_prep_that_needs_itself_is_refused()
    {
        var result = await _house.Ingredients.SaveAsync(Make.Prep("Mint syrup", "Mint syrup"), null);

        Assert.Equal(
            "Mint syrup cannot be made this way: Mint syrup, which needs Mint syrup. Take one of them out of the inputs.",
            Assert.IsType<SaveResult<Ingredient>.Refused>(result).Sentence);
    }

    [Fact]
    public async Task Preps_that_share_an_input_are_no_loop()
    {
        await _house.Ingredients.SaveAsync(Make.Prep("Rich syrup", "Sugar"), null);
        await _house.Ingredients.SaveAsync(Make.Prep("Mint syrup", "Rich syrup", "Mint"), null);

        Assert.IsType<SaveResult<Ingredient>.Saved>(await _house.Ingredients.SaveAsync(Make.Prep("Garden syrup", "Rich syrup", "Mint syrup"), null));
    }

    private Task<IngredientUse> UseAsync() => _house.Get<IngredientUseFinder>().FindAsync(Lime);
}
