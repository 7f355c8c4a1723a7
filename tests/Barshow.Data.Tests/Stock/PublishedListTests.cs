using System.Globalization;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Stock;

/// <summary>
/// The source amounts of the stocked drinks against a published list: International Bartenders Association, list of official cocktails, March 2023.
/// The figures beside this file were copied from the list by way of a public repository (rasmusab/iba-cocktails, MIT, commit 9148d33), amounts and ingredients only.
/// The drink of sparkling wine with sugar, bitters and brandy stands here under a name without a protected place.
/// </summary>
public class PublishedListTests
{
    private static readonly IReadOnlyList<(Slug Drink, Slug Ingredient, Measure Measure)> List = Read();

    public static TheoryData<string> Drinks => [.. List.Select(line => line.Drink.Text).Distinct()];

    [Theory, MemberData(nameof(Drinks))]
    public void The_source_amounts_of_a_drink_are_those_of_the_list(string drink)
    {
        var published = List.Where(line => line.Drink == Slug.Parse(drink)).Select(line => (line.Ingredient, line.Measure)).Order(ByName);

        var stocked = DemoData.Drink(drink).Lines.Where(HasSource).Select(line => (line.Ingredient, line.At(AmountLayer.Source)!)).Order(ByName);

        Assert.Equal(published, stocked);
    }

    [Fact]
    public void No_amount_claims_the_list_that_does_not_stand_in_it() =>
        Assert.All(DemoData.Drinks.Where(drink => drink.Lines.Any(HasSource)), drink => Assert.Contains(List, line => line.Drink == drink.Slug));

    [Fact]
    public void A_drink_with_a_source_amount_names_the_list() =>
        Assert.All(DemoData.Drinks.Where(drink => drink.Lines.Any(HasSource)), drink => Assert.Contains(drink.Sources, source => source.Contains("March 2023", StringComparison.Ordinal)));

    [Fact]
    public void Seventy_drinks_and_more_can_be_traced_to_the_list() =>
        Assert.True(List.Select(line => line.Drink).Distinct().Count() >= 70);

    private static readonly Comparer<(Slug Ingredient, Measure Measure)> ByName =
        Comparer<(Slug Ingredient, Measure Measure)>.Create((one, other) => one.Ingredient.CompareTo(other.Ingredient));

    private static bool HasSource(SpecLine line) => line.Amounts is [{ Layer: AmountLayer.Source }, ..];

    private static List<(Slug, Slug, Measure)> Read() =>
        [.. File.ReadLines(Path.Combine(DemoData.Repository, "tests", "Barshow.Data.Tests", "Stock", "published-list-2023.csv")).Skip(1)
            .Select(line => line.Split(','))
            .Select(cells => (Slug.Parse(cells[0]), Slug.Parse(cells[1]), MeasureOf(cells[2], cells[3])))];

    // The list writes decimals and ranges with a hyphen; "top", "splash" and "fill" stand where it gives no number.
    private static Measure MeasureOf(string amount, string unit)
    {
        if (amount.Length == 0)
            return Measure.Parse(unit);
        var ends = amount.Split('-').Select(end => Rational.FromDecimal(decimal.Parse(end, CultureInfo.InvariantCulture))).ToArray();
        return Measure.Between(ends[0], ends[^1], Unit.Named(unit));
    }
}
