using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients.Preps;
using Barshow.Engine.Specs.Analysis;
using Barshow.Engine.Specs.Checks;

namespace Barshow.Data.Tests.Stock;

/// <summary>What the trade's checks and the reckoning of house preps say of the stock.</summary>
public class StockedSpecCheckTests
{
    public static TheoryData<string> Drinks => [.. DemoData.Drinks.Select(drink => drink.Slug.Text)];

    public static TheoryData<string> Preps => [.. DemoData.Shelf.All.Where(ingredient => ingredient.Prep is not null).Select(ingredient => ingredient.Slug.Text)];

    [Theory, MemberData(nameof(Drinks))]
    public void A_stocked_drink_passes_the_trades_checks(string slug) =>
        Assert.DoesNotContain(SpecChecker.Check(DemoData.Drink(slug), new AnalysisSetting(DemoData.Shelf, DemoData.Kit)), finding => finding.Severity is not Severity.Note);

    [Theory, MemberData(nameof(Preps))]
    public void A_stocked_house_prep_yields_no_more_than_goes_in(string slug) =>
        Assert.Empty(HousePrepYield.Of(DemoData.Ingredient(slug), DemoData.Shelf).Findings);
}
