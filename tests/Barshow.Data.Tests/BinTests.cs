using Barshow.Data.Stores;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests;

public sealed class BinTests : IAsyncLifetime
{
    private static readonly Slug Sour = Slug.Of("Tide Pool Sour");
    private TestHouse _house = null!;

    public async Task InitializeAsync()
    {
        _house = await TestHouse.OpenAsync();
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "sharp" }, null, "Noor");
    }

    public async Task DisposeAsync() => await _house.DisposeAsync();

    [Fact]
    public async Task What_is_deleted_lies_in_the_bin_and_nowhere_else()
    {
        await _house.Drinks.DeleteAsync(Sour, "Idris");

        Assert.Null(await _house.Drinks.FindAsync(Sour));
        Assert.Empty(await _house.Drinks.ListAsync());
        var binned = Assert.Single(await _house.Drinks.ListDeletedAsync());
        Assert.Equal(("Tide Pool Sour", "Idris", _house.Clock.Now), (binned.Name, binned.DeletedBy, binned.DeletedAt));
    }

    [Fact]
    public async Task A_delete_can_be_undone()
    {
        var id = await _house.Drinks.DeleteAsync(Sour);

        var restored = await _house.Drinks.RestoreAsync(id!.Value);

        Assert.Equal("sharp", Assert.IsType<SaveResult<Spec>.Saved>(restored).Now.Value.Taste);
        Assert.Equal("sharp", (await _house.Drinks.FindAsync(Sour))!.Value.Taste);
        Assert.Empty(await _house.Drinks.ListDeletedAsync());
    }

    [Fact]
    public async Task Nothing_is_restored_over_a_thing_that_took_its_name()
    {
        var id = await _house.Drinks.DeleteAsync(Sour);
        await _house.Drinks.SaveAsync(Make.Drink() with { Taste = "soft" }, null);

        var restored = await _house.Drinks.RestoreAsync(id!.Value);

        Assert.Equal("soft", Assert.IsType<SaveResult<Spec>.Conflict>(restored).Theirs.Value.Taste);
        Assert.Single(await _house.Drinks.ListDeletedAsync());
    }

    [Fact]
    public async Task A_name_used_again_goes_on_counting_versions()
    {
        await _house.Drinks.DeleteAsync(Sour);

        var again = await _house.Drinks.SaveAsync(Make.Drink(), null);

        Assert.Equal(3, Assert.IsType<SaveResult<Spec>.Saved>(again).Now.Version);
    }

    [Fact]
    public async Task A_page_that_was_open_when_the_thing_was_deleted_hears_that_it_is_gone()
    {
        var id = await _house.Drinks.DeleteAsync(Sour);

        var late = await _house.Drinks.SaveAsync(Make.Drink(), 1);

        Assert.Equal(id, Assert.IsType<SaveResult<Spec>.Gone>(late).InBin);
    }

    [Fact]
    public async Task Emptying_the_bin_takes_only_what_lies_in_it()
    {
        await _house.Drinks.SaveAsync(Make.Drink("Low Tide"), null);
        await _house.Drinks.DeleteAsync(Sour);

        Assert.Equal(1, await _house.Drinks.EmptyBinAsync());

        Assert.Empty(await _house.Drinks.ListDeletedAsync());
        Assert.NotNull(await _house.Drinks.FindAsync(Slug.Of("Low Tide")));
    }

    [Fact]
    public async Task One_thing_can_be_thrown_out_of_the_bin_by_itself()
    {
        await _house.Drinks.SaveAsync(Make.Drink("Low Tide"), null);
        var first = await _house.Drinks.DeleteAsync(Sour);
        await _house.Drinks.DeleteAsync(Slug.Of("Low Tide"));

        await _house.Drinks.EmptyBinAsync([first!.Value]);

        Assert.Equal("Low Tide", Assert.Single(await _house.Drinks.ListDeletedAsync()).Name);
    }

    [Fact]
    public async Task Deleting_what_is_not_there_says_so() => Assert.Null(await _house.Drinks.DeleteAsync(Slug.Of("Nowhere")));
}
