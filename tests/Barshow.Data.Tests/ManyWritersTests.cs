using System.Globalization;
using Barshow.Data.Stores;
using Barshow.Data.Tests.Support;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests;

public sealed class ManyWritersTests
{
    private const int Writers = 8;
    private const int Saves = 20;

    [Fact]
    public async Task Eight_writers_at_once_each_save_all_of_theirs()
    {
        await using var house = await TestHouse.OpenAsync();

        await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(async () =>
        {
            for (var save = 0; save < Saves; save++)
                Assert.IsType<SaveResult<Spec>.Saved>(await house.Drinks.SaveAsync(Make.Drink($"Drink {writer} {save}"), null));
        })));

        Assert.Equal(Writers * Saves, (await house.Drinks.ListAsync()).Count);
    }

    [Fact]
    public async Task Of_eight_who_save_over_one_version_one_is_taken_and_seven_hear_of_it()
    {
        await using var house = await TestHouse.OpenAsync();
        await house.Drinks.SaveAsync(Make.Drink(), null);

        var results = await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() =>
            house.Drinks.SaveAsync(Make.Drink() with { Taste = $"taste of {writer}" }, 1, $"writer {writer}"))));

        var taken = Assert.Single(results.OfType<SaveResult<Spec>.Saved>()).Now;
        var told = results.OfType<SaveResult<Spec>.Conflict>().ToList();
        Assert.Equal(Writers - 1, told.Count);
        Assert.All(told, conflict => Assert.Equal((2, taken.Value.Taste, taken.SavedBy), (conflict.Theirs.Version, conflict.Theirs.Value.Taste, conflict.Theirs.SavedBy)));
    }

    [Fact]
    public async Task Eight_who_give_way_and_try_again_all_come_through_and_nothing_is_overwritten()
    {
        await using var house = await TestHouse.OpenAsync();
        await house.Drinks.SaveAsync(Make.Drink() with { Tags = [] }, null);
        var slug = Slug.Of("Tide Pool Sour");

        await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(async () =>
        {
            SaveResult<Spec> result;
            do
            {
                var now = (await house.Drinks.FindAsync(slug))!;
                result = await house.Drinks.SaveAsync(now.Value with { Tags = [.. now.Value.Tags, $"tag {writer}"] }, now.Version);
            }
            while (result is SaveResult<Spec>.Conflict);
        })));

        var drink = (await house.Drinks.FindAsync(slug))!;
        Assert.Equal(Enumerable.Range(0, Writers).Select(writer => $"tag {writer}"), drink.Value.Tags.Order(StringComparer.Ordinal));
        Assert.Equal(1 + Writers, drink.Version);
    }

    [Fact]
    public async Task Reading_goes_on_while_another_writes()
    {
        await using var house = await TestHouse.OpenAsync();
        await house.Drinks.SaveAsync(Make.Drink(), null);
        await using var db = await house.OpenDbAsync();
        await using var writing = await db.Database.BeginTransactionAsync();

        Assert.NotNull(await house.Drinks.FindAsync(Slug.Of("Tide Pool Sour")));
        Assert.Empty((await house.Bar.LoadAsync()).Ingredients.All);
        Assert.Single(await house.Get<Data.Library.DrinkLibrary>().LoadAsync());
    }

    [Fact]
    public async Task A_house_saved_where_commas_part_decimals_is_the_same_everywhere()
    {
        await using var house = await TestHouse.OpenAsync();
        var before = CultureInfo.CurrentCulture;
        var drink = Make.Drink() with { Lines = [new() { Name = "rum", Amounts = [new(AmountLayer.Library, Measure.Millilitres(45, 2))] }], Serve = new() { WashLine = 0.85 } };
        try
        {
            CultureInfo.CurrentCulture = new("de-DE");
            await house.Drinks.SaveAsync(drink, null);
            var found = (await house.Drinks.FindAsync(drink.Slug))!;
            Assert.Equal((0.85, Measure.Millilitres(45, 2), house.Clock.Now), (found.Value.Serve.WashLine, found.Value.Lines[0].Planned, found.SavedAt));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        var again = (await house.Drinks.FindAsync(drink.Slug))!;
        Assert.Equal((0.85, Measure.Millilitres(45, 2), house.Clock.Now), (again.Value.Serve.WashLine, again.Value.Lines[0].Planned, again.SavedAt));
    }
}
