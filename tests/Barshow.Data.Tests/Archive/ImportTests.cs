using Barshow.Data.Archive;
using Barshow.Data.Archive.Import;
using Barshow.Data.Stores;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Names;

namespace Barshow.Data.Tests.Archive;

public sealed class ImportTests : IAsyncLifetime
{
    private static readonly HouseArchive ThreeDrinks = new()
    {
        Drinks = new([Make.Drink("Low Tide"), Make.Drink("Tide Pool Sour") with { Taste = "sharp" }, Make.Drink("Sand Bar")], []),
    };

    private TestHouse _house = null!;

    public async Task InitializeAsync()
    {
        _house = await TestHouse.OpenAsync();
        await _house.Drinks.SaveAsync(Make.Drink("Low Tide"), null);
        await _house.Drinks.SaveAsync(Make.Drink("Tide Pool Sour") with { Taste = "soft" }, null);
        await _house.Drinks.SaveAsync(Make.Drink("Our Own"), null);
    }

    public async Task DisposeAsync() => await _house.DisposeAsync();

    [Fact]
    public async Task The_plan_says_what_is_added_changed_and_left()
    {
        var plan = await _house.Get<HouseImport>().PlanAsync(ThreeDrinks);

        Assert.Equal(
            [("low-tide", ImportStep.Leave), ("tide-pool-sour", ImportStep.Change), ("sand-bar", ImportStep.Add)],
            plan.Lines.Select(line => (line.Slug, line.Step)));
        Assert.Equal(1, plan.Untouched);
    }

    [Fact]
    public async Task Planning_changes_nothing()
    {
        await _house.Get<HouseImport>().PlanAsync(ThreeDrinks);

        Assert.Equal("soft", (await _house.Drinks.FindAsync(Slug.Of("Tide Pool Sour")))!.Value.Taste);
        Assert.Null(await _house.Drinks.FindAsync(Slug.Of("Sand Bar")));
    }

    [Fact]
    public async Task What_was_agreed_is_done_and_what_was_replaced_stays_in_the_history()
    {
        var import = _house.Get<HouseImport>();
        var plan = await import.PlanAsync(ThreeDrinks);

        var result = await import.ApplyAsync(ThreeDrinks, plan, "Noor");

        Assert.True(result.Done);
        var changed = (await _house.Drinks.FindAsync(Slug.Of("Tide Pool Sour")))!;
        Assert.Equal(("sharp", 2, "Noor"), (changed.Value.Taste, changed.Version, changed.SavedBy));
        Assert.Equal("soft", (await _house.Drinks.HistoryAsync(Slug.Of("Tide Pool Sour")))[0].Before!.Taste);
        Assert.Equal(1, (await _house.Drinks.FindAsync(Slug.Of("Low Tide")))!.Version);
        Assert.NotNull(await _house.Drinks.FindAsync(Slug.Of("Sand Bar")));
        Assert.NotNull(await _house.Drinks.FindAsync(Slug.Of("Our Own")));
    }

    [Fact]
    public async Task A_plan_that_no_longer_holds_is_not_carried_out()
    {
        var import = _house.Get<HouseImport>();
        var plan = await import.PlanAsync(ThreeDrinks);
        await _house.Drinks.SaveAsync(Make.Drink("Tide Pool Sour") with { Taste = "salty" }, 1);

        var result = await import.ApplyAsync(ThreeDrinks, plan);

        Assert.False(result.Done);
        Assert.Equal(2, result.Plan.Lines.Single(line => line.Slug == "tide-pool-sour").Version);
        Assert.Equal("salty", (await _house.Drinks.FindAsync(Slug.Of("Tide Pool Sour")))!.Value.Taste);
        Assert.Null(await _house.Drinks.FindAsync(Slug.Of("Sand Bar")));
    }

    [Fact]
    public async Task Importing_the_same_again_leaves_everything()
    {
        var import = _house.Get<HouseImport>();
        await import.ApplyAsync(ThreeDrinks, null);

        var plan = await import.PlanAsync(ThreeDrinks);

        Assert.All(plan.Lines, line => Assert.Equal(ImportStep.Leave, line.Step));
    }

    [Fact]
    public async Task The_bin_is_joined_and_nothing_lies_in_it_twice()
    {
        var archive = new HouseArchive { Drinks = new([], [new(Make.Drink("Drowned"), 4, new(2027, 1, 1, 0, 0, 0, TimeSpan.Zero), "Idris")]) };
        var import = _house.Get<HouseImport>();

        await import.ApplyAsync(archive, null);
        await import.ApplyAsync(archive, null);

        var binned = Assert.Single(await _house.Drinks.ListDeletedAsync());
        Assert.Equal(("drowned", "Idris"), (binned.Slug, binned.DeletedBy));
        Assert.Equal(5, Assert.IsType<SaveResult<Engine.Specs.Spec>.Saved>(await _house.Drinks.RestoreAsync(binned.Id)).Now.Version);
    }

    [Fact]
    public async Task Preps_that_would_close_a_circle_with_those_that_are_here_are_not_imported()
    {
        await _house.Ingredients.SaveAsync(Make.Prep("Mint syrup", "Mint tea"), null);
        var archive = new HouseArchive { Ingredients = new([Make.Prep("Mint tea", "Mint syrup"), Make.Ingredient()], []) };
        var import = _house.Get<HouseImport>();

        var plan = await import.PlanAsync(archive);
        var result = await import.ApplyAsync(archive, plan);

        Assert.Equal("Nothing can be imported: house preps would be made from one another in a circle (Mint syrup, which needs Mint tea, which needs Mint syrup).", plan.Objection);
        Assert.False(result.Done);
        Assert.Single(await _house.Ingredients.ListAsync());
    }

    [Fact]
    public async Task A_house_that_is_not_empty_is_not_stocked() =>
        Assert.False(await _house.Get<HouseImport>().ApplyToEmptyAsync(ThreeDrinks));
}
