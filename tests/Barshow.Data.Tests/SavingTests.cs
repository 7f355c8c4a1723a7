using System.Text.Json;
using Barshow.Data.Json;
using Barshow.Data.Rows;
using Barshow.Data.Stores;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests;

public sealed class SavingTests : IAsyncLifetime
{
    private TestHouse _house = null!;

    public async Task InitializeAsync() => _house = await TestHouse.OpenAsync();

    public async Task DisposeAsync() => await _house.DisposeAsync();

    [Fact]
    public async Task A_new_drink_is_version_1_and_carries_who_saved_it_and_when()
    {
        var result = await _house.Drinks.SaveAsync(Make.Drink(), null, "Noor");

        var saved = Assert.IsType<SaveResult<Spec>.Saved>(result).Now;
        Assert.Equal((1, "Noor", _house.Clock.Now), (saved.Version, saved.SavedBy, saved.SavedAt));
        var found = await _house.Drinks.FindAsync(Slug.Of("Tide Pool Sour"));
        Assert.Equal((1, "Noor", _house.Clock.Now), (found!.Version, found.SavedBy, found.SavedAt));
    }

    [Fact]
    public async Task Each_save_counts_the_version_up()
    {
        await _house.Drinks.SaveAsync(Make.Drink(), null);

        var second = await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "sharp" }, 1);

        Assert.Equal(2, Assert.IsType<SaveResult<Spec>.Saved>(second).Now.Version);
        Assert.Equal("sharp", (await _house.Drinks.FindAsync(Slug.Of("Tide Pool Sour")))!.Value.Taste);
    }

    [Fact]
    public async Task A_save_that_changes_nothing_leaves_the_version_as_it_is()
    {
        await _house.Drinks.SaveAsync(Make.Drink(), null);

        var again = await _house.Drinks.SaveAsync(Make.Drink(), 1);

        Assert.Equal(1, Assert.IsType<SaveResult<Spec>.Saved>(again).Now.Version);
        Assert.Single(await _house.Drinks.HistoryAsync(Slug.Of("Tide Pool Sour")));
    }

    [Fact]
    public async Task A_save_on_an_older_version_is_refused_and_shows_what_the_other_saved()
    {
        await _house.Drinks.SaveAsync(Make.Drink(), null, "Noor");
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "sharp" }, 1, "Idris");

        var late = await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "soft" }, 1, "Noor");

        var theirs = Assert.IsType<SaveResult<Spec>.Conflict>(late).Theirs;
        Assert.Equal((2, "Idris", "sharp"), (theirs.Version, theirs.SavedBy, theirs.Value.Taste));
        Assert.Equal("sharp", (await _house.Drinks.FindAsync(Slug.Of("Tide Pool Sour")))!.Value.Taste);
    }

    [Fact]
    public async Task A_new_drink_never_replaces_one_that_is_there()
    {
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "sharp" }, null);

        var second = await _house.Drinks.SaveAsync(Make.Drink(), null);

        Assert.Equal("sharp", Assert.IsType<SaveResult<Spec>.Conflict>(second).Theirs.Value.Taste);
    }

    [Fact]
    public async Task A_free_slug_counts_up_where_the_name_is_taken()
    {
        await _house.Drinks.SaveAsync(Make.Drink(), null);

        Assert.Equal("tide-pool-sour-2", (await _house.Drinks.FreeSlugAsync("Tide Pool Sour")).Text);
        Assert.Equal("low-tide", (await _house.Drinks.FreeSlugAsync("Low Tide")).Text);
    }

    [Fact]
    public async Task The_history_tells_who_did_what_and_how_it_was_before()
    {
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "soft" }, null, "Noor");
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "sharp" }, 1, "Idris");
        await _house.Drinks.DeleteAsync(Slug.Of("Tide Pool Sour"), "Noor");

        var lines = await _house.Drinks.HistoryAsync(Slug.Of("Tide Pool Sour"));

        Assert.Equal([(3, Deed.Binned, "Noor"), (2, Deed.Saved, "Idris"), (1, Deed.Made, "Noor")], lines.Select(line => (line.Version, line.Deed, line.By)));
        Assert.Equal([null, "soft", null], lines.Select(line => line.Before?.Taste));
    }

    [Fact]
    public async Task The_history_of_one_thing_keeps_its_latest_hundred_lines()
    {
        await _house.Drinks.SaveAsync(Make.Drink(), null);
        for (var version = 1; version < 200; version++)
            await _house.Drinks.SaveAsync(Make.Drink() with { Taste = $"taste {version}" }, version);

        var lines = await _house.Drinks.HistoryAsync(Slug.Of("Tide Pool Sour"));

        Assert.Equal(100, lines.Count);
        Assert.Equal((200, 101), (lines[0].Version, lines[^1].Version));
    }

    [Fact]
    public async Task Settings_that_were_never_saved_are_those_a_house_starts_with()
    {
        var stored = await _house.House.LoadAsync();

        Assert.Equal(0, stored.Version);
        Assert.Equal(new House(), stored.Value);
        Assert.Equal(1, Assert.IsType<SaveResult<House>.Saved>(await _house.House.SaveAsync(stored.Value with { Name = "Salt Lane Bar" }, stored.Version)).Now.Version);
        Assert.Equal("Salt Lane Bar", (await _house.House.LoadAsync()).Value.Name);
    }

    [Fact]
    public async Task Two_who_save_the_first_settings_at_once_meet()
    {
        await _house.House.SaveAsync(new House { Name = "Salt Lane Bar" }, 0);

        Assert.IsType<SaveResult<House>.Conflict>(await _house.House.SaveAsync(new House { Name = "Other" }, 0));
    }

    [Fact]
    public async Task A_feature_may_change_its_day()
    {
        await _house.Featured.AddAsync(Make.Feature());
        var (id, stored) = Assert.Single(await _house.Featured.ListAsync());

        var moved = await _house.Featured.SaveAsync(id, stored.Value with { Date = new(2025, 5, 2) }, stored.Version);

        Assert.Equal(2, Assert.IsType<SaveResult<Engine.Featured.Feature>.Saved>(moved).Now.Version);
        Assert.Equal(new DateOnly(2025, 5, 2), Assert.Single((await _house.Featured.LoadAsync()).Features).Date);
    }

    [Fact]
    public async Task A_feature_is_not_logged_twice_for_one_episode_and_day()
    {
        await _house.Featured.AddAsync(Make.Feature());

        Assert.IsType<SaveResult<Engine.Featured.Feature>.Conflict>(await _house.Featured.AddAsync(Make.Feature()));
    }

    [Fact]
    public async Task The_log_is_listed_oldest_first()
    {
        await _house.Featured.AddAsync(Make.Feature("Second", year: 2025));
        await _house.Featured.AddAsync(Make.Feature("First", year: 2024));

        Assert.Equal(["First", "Second"], (await _house.Featured.LoadAsync()).Features.Select(feature => feature.Spec.Name));
    }

    [Fact]
    public async Task Episodes_are_listed_with_open_dates_first_then_the_latest_shoot()
    {
        await _house.Episodes.SaveAsync(Make.Episode("Old") with { ShootDate = new(2027, 1, 1) }, null);
        await _house.Episodes.SaveAsync(Make.Episode("Open") with { ShootDate = null }, null);
        await _house.Episodes.SaveAsync(Make.Episode("New", Make.Drink()) with { ShootDate = new(2027, 2, 1) }, null);

        var list = await _house.Episodes.ListAsync();

        Assert.Equal([("Open", 0), ("New", 1), ("Old", 0)], list.Select(episode => (episode.Title, episode.DrinkCount)));
    }

    [Fact]
    public async Task The_bar_is_read_again_where_it_changed_and_only_there()
    {
        await _house.Ingredients.SaveAsync(Make.Ingredient("White rum"), null);
        await _house.Ingredients.SaveAsync(Make.Ingredient("Gin"), null);
        var before = await _house.Bar.LoadAsync();
        Assert.Same(before, await _house.Bar.LoadAsync());

        await _house.Ingredients.SaveAsync(Make.Ingredient("Gin") with { Class = "gin" }, 1);
        await _house.House.SaveAsync(new House { Name = "Salt Lane Bar" }, 0);
        var after = await _house.Bar.LoadAsync();

        Assert.Equal("gin", after.Ingredients[Slug.Of("gin")]!.Class);
        Assert.Equal("Salt Lane Bar", after.House.Name);
        Assert.Same(before.Ingredients[Slug.Of("White rum")], after.Ingredients[Slug.Of("White rum")]);
    }

    [Fact]
    public async Task A_house_reopened_after_a_restart_is_exactly_as_it_was()
    {
        var folder = TestHouse.NewFolder();
        var episode = Make.Episode("One bottle, three drinks", Make.Drink(), Make.Drink("Ébène Fizz"));
        await using (var first = await TestHouse.OpenAsync(folder, keepFolder: true))
        {
            await first.Episodes.SaveAsync(episode, null);
            await first.Ingredients.SaveAsync(Make.Prep("Mint syrup", "sugar", "mint"), null);
        }

        await using var second = await TestHouse.OpenAsync(folder);

        Assert.Equal(Json(episode), Json((await second.Episodes.FindAsync(episode.Slug))!.Value));
        Assert.Equal(Json(Make.Prep("Mint syrup", "sugar", "mint")), Json((await second.Ingredients.FindAsync(Slug.Of("Mint syrup")))!.Value));
    }

    private static string Json<T>(T value) => JsonSerializer.Serialize(value, DomainJson.Compact);
}
