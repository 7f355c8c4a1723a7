using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Stock;

public class StockedDrinkTests
{
    public static TheoryData<string> Names => [.. DemoData.Drinks.Select(drink => drink.Slug.Text)];

    [Fact]
    public void Ninety_five_drinks_and_more_are_stocked()
    {
        Assert.True(DemoData.Drinks.Count >= 95, $"There are {DemoData.Drinks.Count} drinks.");
        Assert.Distinct(DemoData.Drinks.Select(drink => drink.Slug));
        Assert.Distinct(DemoData.Drinks.SelectMany(drink => drink.Aliases.Append(drink.Name)).Select(NameFolding.Fold));
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_line_of_a_drink_is_an_ingredient_of_the_house_with_an_amount(string slug) =>
        Assert.All(DemoData.Drink(slug).Lines, line =>
        {
            Assert.True(DemoData.Shelf.TryGet(line.Ingredient, out _), $"{slug}: {line.Name} is no ingredient.");
            Assert.True(line.Planned is not null || line.Use is LineUse.Rimmed, $"{slug}: {line.Name} has no amount.");
        });

    [Theory, MemberData(nameof(Names))]
    public void Every_glass_of_a_drink_stands_on_the_bar(string slug)
    {
        var serve = DemoData.Drink(slug).Serve;

        Assert.All(serve.GlassesInstead.Prepend(serve.Glass), glass => Assert.True(DemoData.Kit.TryGetGlass(glass, out _), $"{slug}: there is no {glass}."));
    }

    [Theory, MemberData(nameof(Names))]
    public void Garnishes_base_swaps_and_parents_are_known(string slug)
    {
        var drink = DemoData.Drink(slug);

        for (var garnishes = new Queue<Garnish>(drink.Garnish is { } first ? [first] : []); garnishes.TryDequeue(out var garnish);)
        {
            Assert.True(DemoData.Shelf.TryGet(garnish.Ingredient, out _), $"{slug}: {garnish.Text} is cut from nothing the house knows.");
            foreach (var instead in garnish.Instead)
                garnishes.Enqueue(instead);
        }

        Assert.All(drink.BaseSwaps, swap => Assert.True(DemoData.Shelf.TryGet(swap, out _), $"{slug}: there is no {swap}."));
        Assert.True(drink.Parent.IsEmpty || DemoData.Drinks.Any(other => other.Slug == drink.Parent), $"{slug}: there is no {drink.Parent}.");
    }

    [Theory, MemberData(nameof(Names))]
    public void A_drink_is_told_whole(string slug)
    {
        var drink = DemoData.Drink(slug);

        Assert.NotNull(drink.Method);
        Assert.NotEqual("", drink.Family);
        Assert.NotEmpty(drink.Tags);
        Assert.NotEqual("", drink.Taste);
        Assert.NotEmpty(drink.Sources);
        Assert.True(drink.Steps.Count >= 2, $"{slug} has {drink.Steps.Count} steps.");
        Assert.All(drink.Steps, step => Assert.Matches(@"^\p{Lu}.*\.$", step));
    }

    [Theory, MemberData(nameof(Names))]
    public void A_count_stands_with_every_method_that_has_one(string slug)
    {
        var method = DemoData.Drink(slug).Method!;

        switch (method.Kind)
        {
            case MethodKind.Shaken or MethodKind.Stirred or MethodKind.MuddledAndShaken or MethodKind.Swizzled or MethodKind.Blended:
                Assert.InRange(method.Seconds ?? 0, 5, 60);
                break;
            case MethodKind.Thrown:
                Assert.InRange(method.Pours ?? 0, 3, 12);
                break;
            default:
                Assert.Null(method.Seconds);
                break;
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void What_is_fizzy_is_never_shaken(string slug)
    {
        var drink = DemoData.Drink(slug);
        if (drink.Method!.Kind is MethodKind.Built or MethodKind.Layered)
            return;

        Assert.All(drink.Lines.Where(line => DemoData.Shelf[line.Ingredient]!.Fizzy), line => Assert.Equal(LineUse.Topped, line.Use));
    }

    [Theory, MemberData(nameof(Names))]
    public void A_library_amount_that_left_its_source_says_why(string slug) =>
        Assert.All(DemoData.Drink(slug).Lines.SelectMany(line => line.Amounts.Skip(1)), amount => Assert.False(string.IsNullOrWhiteSpace(amount.Reason), $"{slug}: {amount.Measure} gives no reason."));

    [Theory, MemberData(nameof(Names))]
    public void Every_volume_over_a_barspoon_can_be_said_in_ounces(string slug) =>
        // Ounces in quarters and thirds are proposed; what is poured by spoon, dash and drop is counted.
        Assert.All(DemoData.Drink(slug).Lines.Select(line => line.Planned).Where(measure => measure?.Unit == Unit.Ounce), measure =>
            Assert.True(measure!.Low!.Value.Denominator is 1 or 2 or 3 or 4, $"{slug}: {measure}"));

    [Fact]
    public void Vodka_carries_no_more_than_one_drink_in_ten()
    {
        var vodka = DemoData.Drinks.Count(drink => drink.Lines.Any(line => DemoData.Shelf[line.Ingredient] is { Kind: IngredientKind.Spirit, Class: "vodka" }));

        Assert.InRange(vodka, 1, DemoData.Drinks.Count / 10);
    }
}
