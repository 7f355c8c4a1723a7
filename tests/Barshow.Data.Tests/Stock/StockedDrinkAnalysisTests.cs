using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Planning;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Data.Tests.Stock;

/// <summary>What the engines say of the stocked drinks: a newcomer opens a library in which nothing needs mending.</summary>
public class StockedDrinkAnalysisTests
{
    private static readonly Bar Bar = new(DemoData.Read<House>("demo/house.json"), DemoData.Shelf, DemoData.Kit);

    public static TheoryData<string> Names => [.. DemoData.Drinks.Select(drink => drink.Slug.Text)];

    [Theory, MemberData(nameof(Names))]
    public void No_stocked_drink_needs_mending(string slug)
    {
        var drink = DemoData.Drink(slug);

        Assert.DoesNotContain(Analyse(drink).Findings, finding => finding.Severity is Severity.Stop or Severity.Fix);
        Assert.Empty(drink.Lines.Where(line => line.Planned is not null).SelectMany(line => CalloutCheck.Findings(Callout.Of(line.Planned!, Convention.Bar), line.Name)));
    }

    [Theory, MemberData(nameof(Names))]
    public void What_is_in_a_stocked_drink_is_known(string slug) => Assert.Empty(Analyse(DemoData.Drink(slug)).Unknown);

    [Theory, MemberData(nameof(Names))]
    public void All_that_a_stocked_drink_takes_can_be_bought_at_a_price(string slug)
    {
        var episode = new Episode { Slug = Slug.Of("one drink"), Title = "One drink", Lineup = [new() { Spec = DemoData.Drink(slug) }] };

        foreach (var demandFor in Enum.GetValues<DemandFor>())
        {
            var basket = BasketPlanner.Plan(episode, Bar, demandFor);

            Assert.DoesNotContain(basket.Findings, finding => finding.Severity is Severity.Stop or Severity.Fix);
            Assert.Empty(basket.Unpriced.Where(item => item.Ingredient is not { Staple: true }).Select(item => item.Name));
        }
    }

    [Fact]
    public void A_drink_of_the_alcohol_free_family_holds_none() =>
        Assert.All(DemoData.Drinks.Where(drink => drink.Family == "alcohol-free"), drink => Assert.Equal(0, Analyse(drink).EthanolMillilitres));

    // A standard drink is 8 to 14 g by country, so a count in a note would be wrong somewhere.
    [Fact]
    public void No_note_counts_standard_drinks() =>
        Assert.DoesNotMatch(@"(?i)\b(\d+|one|two|three|four|five)( and a half)? standard drink", string.Join('\n', DemoData.Drinks.SelectMany(drink => drink.Notes)));

    [Theory, MemberData(nameof(Names))]
    public void A_served_drink_is_weaker_than_the_strongest_bottle_in_it(string slug)
    {
        var drink = DemoData.Drink(slug);
        var strongest = drink.Lines.Max(line => DemoData.Shelf[line.Ingredient]!.Composition.Strength?.Share ?? 0);

        Assert.True(Analyse(drink).ServedStrength.High <= strongest);
    }

    private static DrinkAnalysis Analyse(Spec drink) => DrinkAnalyser.Analyse(drink, new AnalysisSetting(DemoData.Shelf, DemoData.Kit) { Convention = Convention.Bar });
}
