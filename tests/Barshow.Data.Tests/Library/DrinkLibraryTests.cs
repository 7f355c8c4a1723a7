using Barshow.Data.Library;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Library;

public sealed class DrinkLibraryTests : IAsyncLifetime
{
    private TestHouse _house = null!;
    private DrinkLibrary _library = null!;

    public async Task InitializeAsync()
    {
        _house = await TestHouse.OpenAsync();
        _library = _house.Get<DrinkLibrary>();
        await _house.Ingredients.SaveAsync(Make.Ingredient("White rum") with { Class = "rum", OnHand = Measure.Millilitres(700) }, null);
        await _house.Ingredients.SaveAsync(Make.Ingredient("Gin") with { Class = "gin" }, null);
        await _house.Ingredients.SaveAsync(Make.Ingredient("Lime juice", IngredientKind.Juice) with { Composition = new() { Strength = Strength.FromPercent(0) } }, null);
        await _house.Ingredients.SaveAsync(Make.Ingredient("Lime", IngredientKind.Fruit) with { Produce = new() { Juice = Slug.Of("lime juice"), JuiceMillilitres = 30 }, OnHand = Measure.Of(6, null) }, null);
        await _house.Ingredients.SaveAsync(Make.Ingredient("Sugar", IngredientKind.Sugar) with { Staple = true }, null);
        await _house.Ingredients.SaveAsync(Make.Prep("Mint syrup", "sugar", "mint"), null);
        await _house.Drinks.SaveAsync(Make.Drink("Tide Pool Sour", "white rum", "lime juice"), null);
        await _house.Drinks.SaveAsync(Make.Drink("Ébène Fizz", "gin", "lime juice") with { Family = "fizz", Method = new(MethodKind.Built), Tags = ["dry"], Serve = new() { Glass = Slug.Of("highball") } }, null);
        await _house.Drinks.SaveAsync(Make.Drink("Garden Cup", "mint syrup", "lime juice") with { Tags = ["herbal"] }, null);
    }

    public async Task DisposeAsync() => await _house.DisposeAsync();

    [Fact]
    public async Task Without_a_query_all_are_listed_by_name_whatever_their_accents() =>
        Assert.Equal(["Ébène Fizz", "Garden Cup", "Tide Pool Sour"], await NamesAsync(new()));

    [Fact]
    public async Task A_name_is_found_without_accents_and_nearly_spelled()
    {
        Assert.Equal(["Ébène Fizz"], await NamesAsync(new() { Text = "ebene" }));
        Assert.Equal(["Garden Cup"], await NamesAsync(new() { Text = "gardne" }));
    }

    [Fact]
    public async Task Base_family_method_glass_tag_and_ingredient_narrow_the_list()
    {
        Assert.Equal(["Tide Pool Sour"], await NamesAsync(new() { Base = "rum" }));
        Assert.Equal(["Ébène Fizz"], await NamesAsync(new() { Base = "gin" }));
        Assert.Equal(["Ébène Fizz"], await NamesAsync(new() { Family = "fizz" }));
        Assert.Equal(["Ébène Fizz"], await NamesAsync(new() { Method = MethodKind.Built }));
        Assert.Equal(["Ébène Fizz"], await NamesAsync(new() { Glass = Slug.Of("highball") }));
        Assert.Equal(["Garden Cup"], await NamesAsync(new() { Tag = "herbal" }));
        Assert.Equal(["Garden Cup"], await NamesAsync(new() { Ingredient = Slug.Of("mint syrup") }));
        Assert.Empty(await NamesAsync(new() { Base = "rum", Family = "fizz" }));
    }

    [Fact]
    public async Task Strength_as_served_narrows_the_list()
    {
        Assert.Equal(["Ébène Fizz", "Tide Pool Sour"], await NamesAsync(new() { StrengthFrom = 10 }));
        Assert.Equal(["Garden Cup"], await NamesAsync(new() { StrengthTo = 1 }));
    }

    [Fact]
    public async Task What_is_on_hand_covers_a_drink_and_the_rest_is_named()
    {
        var found = await _library.FindAsync(new());

        Assert.Equal(
            [("Ébène Fizz", "gin"), ("Garden Cup", "mint syrup"), ("Tide Pool Sour", "")],
            found.Select(each => (each.Drink.Spec.Name, string.Join(", ", each.Drink.Missing))));
        Assert.Equal(["Tide Pool Sour"], await NamesAsync(new() { OnHandOnly = true }));
    }

    [Fact]
    public async Task A_drink_featured_lately_can_be_left_out()
    {
        await _house.Featured.AddAsync(Make.Feature("Tide Pool Sour", year: 2026, month: 4));

        Assert.Equal(["Ébène Fizz", "Garden Cup"], await NamesAsync(new() { NotFeaturedSince = new(2026, 4, 1) }));
        Assert.Equal(3, (await NamesAsync(new() { NotFeaturedSince = new(2026, 4, 2) })).Count);
        Assert.Equal(new DateOnly(2026, 4, 1), (await _library.FindAsync(new() { Text = "tide" }))[0].LastFeatured);
    }

    [Fact]
    public async Task What_changed_is_read_again_and_the_rest_is_kept()
    {
        var before = await _library.LoadAsync();
        Assert.Same(before, await _library.LoadAsync());

        await _house.Drinks.SaveAsync(Make.Drink("Tide Pool Sour", "white rum", "lime juice") with { Taste = "sharp" }, 1);
        await _house.Drinks.DeleteAsync(Slug.Of("Garden Cup"));
        var after = await _library.LoadAsync();

        Assert.Equal(["Ébène Fizz", "Tide Pool Sour"], after.Select(drink => drink.Spec.Name));
        Assert.Same(before[0], after[0]);
        Assert.Equal(("sharp", 2), (after[1].Spec.Taste, after[1].Stored.Version));
    }

    [Fact]
    public async Task A_changed_ingredient_changes_what_the_list_says_of_a_drink()
    {
        await _library.LoadAsync();

        await _house.Ingredients.SaveAsync(Make.Ingredient("Gin") with { Class = "gin", OnHand = Measure.Millilitres(700) }, 1);

        Assert.Equal(["Ébène Fizz", "Tide Pool Sour"], await NamesAsync(new() { OnHandOnly = true }));
    }

    [Fact]
    public async Task A_drink_is_reckoned_anew_when_an_ingredient_of_it_changes_and_only_then()
    {
        var before = (await _library.LoadAsync()).ToDictionary(drink => drink.Spec.Name, drink => drink.Analysis);

        await _house.Ingredients.SaveAsync(Make.Ingredient("Gin") with { Class = "gin", Composition = new() { Strength = Strength.FromPercent(57) } }, 1);
        var after = (await _library.LoadAsync()).ToDictionary(drink => drink.Spec.Name, drink => drink.Analysis);

        Assert.True(after["Ébène Fizz"].EthanolMillilitres > before["Ébène Fizz"].EthanolMillilitres);
        Assert.Same(before["Tide Pool Sour"], after["Tide Pool Sour"]);
    }

    [Fact]
    public async Task A_drink_is_reckoned_anew_when_an_input_of_its_prep_or_the_fruit_of_its_juice_changes()
    {
        var before = (await _library.LoadAsync()).ToDictionary(drink => drink.Spec.Name, drink => drink.Analysis);

        await _house.Ingredients.SaveAsync(Make.Ingredient("Sugar", IngredientKind.Sugar) with { Staple = true, Class = "sugar" }, 1);
        var sugar = (await _library.LoadAsync()).ToDictionary(drink => drink.Spec.Name, drink => drink.Analysis);
        Assert.NotSame(before["Garden Cup"], sugar["Garden Cup"]);
        Assert.Same(before["Ébène Fizz"], sugar["Ébène Fizz"]);

        await _house.Ingredients.SaveAsync(Make.Ingredient("Lime", IngredientKind.Fruit) with { Produce = new() { Juice = Slug.Of("lime juice"), JuiceMillilitres = 20 } }, 1);
        var lime = (await _library.LoadAsync()).ToDictionary(drink => drink.Spec.Name, drink => drink.Analysis);
        Assert.NotSame(sugar["Ébène Fizz"], lime["Ébène Fizz"]);
    }

    [Fact]
    public async Task After_a_restored_backup_the_library_is_that_of_the_backup()
    {
        var backup = _house.Get<Backup.HouseBackup>();
        var path = await backup.BackUpAsync();
        await _house.Drinks.SaveAsync(Make.Drink("Low Tide"), null);
        await _house.Drinks.DeleteAsync(Slug.Of("Garden Cup"));
        Assert.Equal(["Ébène Fizz", "Low Tide", "Tide Pool Sour"], await NamesAsync(new()));

        await backup.RestoreAsync(path);
        Assert.Equal(["Ébène Fizz", "Garden Cup", "Tide Pool Sour"], await NamesAsync(new()));
    }

    [Fact]
    public async Task Ingredients_are_searched_the_same_way()
    {
        Assert.Equal(["Lime", "Lime juice"], (await _house.Ingredients.SearchAsync("lime")).Select(each => each.Name));
        Assert.Equal(["Sugar"], (await _house.Ingredients.SearchAsync("suger")).Select(each => each.Name));
    }

    private async Task<IReadOnlyList<string>> NamesAsync(DrinkQuery query) => [.. (await _library.FindAsync(query)).Select(found => found.Drink.Spec.Name)];
}
