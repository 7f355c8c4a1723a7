using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Ingredients.Preps;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using CsCheck;

namespace Barshow.Engine.Tests.Ingredients;

public class HousePrepYieldTests
{
    private static readonly Ingredient Sugar = Of("White sugar", IngredientKind.Sugar);
    private static readonly Ingredient Water = Of("Water", IngredientKind.Water);
    private static readonly Ingredient Salt = Of("Salt", IngredientKind.Salt);
    private static readonly Ingredient Mint = Of("Mint", IngredientKind.Herb);
    private static readonly Ingredient Syrup = Prep("Sugar syrup", ("White sugar", "500 g"), ("Water", "500 g"));
    private static readonly Ingredient Lime = Of("Lime juice", IngredientKind.Juice) with { Composition = new() { SugarGramsPer100Millilitres = 1.6, AcidGramsPer100Millilitres = 6 } };
    private static readonly Ingredient Rum = Of("White rum", IngredientKind.Spirit) with { Composition = new() { Strength = Strength.FromPercent(40) } };

    [Fact]
    public void One_to_one_syrup_by_weight_yields_by_its_density_and_not_by_its_weight()
    {
        var yield = YieldOf(Syrup);

        // 1000 g of 50 °Bx at 1.2297 g/ml (ICUMSA).
        Assert.Equal(813.2, yield.Millilitres!.Value, 0.1);
        Assert.False(yield.IsStated);
        Assert.Equal(61.48, yield.Composition.SugarGramsPer100Millilitres!.Value, 0.01);
        Assert.Empty(yield.Findings);
    }

    [Fact]
    public void A_stated_yield_wins()
    {
        var yield = YieldOf(Syrup with { Prep = Syrup.Prep! with { Yield = Measure.Millilitres(780) } });

        Assert.Equal(780, yield.Millilitres);
        Assert.True(yield.IsStated);
        Assert.Equal(813.2, yield.ComputedMillilitres, 0.1);
    }

    [Fact]
    public void What_is_made_from_another_prep_counts_that_ones_sugar()
    {
        var yield = YieldOf(Prep("Mint syrup", ("Mint", "1/2 bunch"), ("Sugar syrup", "250 ml")));

        Assert.Equal(250, yield.Millilitres!.Value, 6);
        Assert.Equal(61.48, yield.Composition.SugarGramsPer100Millilitres!.Value, 0.01);
    }

    [Fact]
    public void A_cordial_keeps_acid_and_sugar_and_an_infusion_its_strength()
    {
        var cordial = YieldOf(Prep("Lime cordial", ("Lime juice", "100 ml"), ("White sugar", "100 g")));
        var infusion = YieldOf(Prep("Mint rum", ("White rum", "200 ml"), ("Mint", "1 bunch")));

        Assert.Equal(6, cordial.Composition.AcidGramsPer100Millilitres!.Value * cordial.Millilitres!.Value / 100, 6);
        Assert.Equal(101.6, cordial.Composition.SugarGramsPer100Millilitres!.Value * cordial.Millilitres!.Value / 100, 6);
        Assert.Equal(40, infusion.Composition.Strength!.Value.Percent, 6);
    }

    [Fact]
    public void Brine_takes_little_more_room_than_its_water() =>
        Assert.Equal(87, YieldOf(Prep("Saline", ("Salt", "20 g"), ("Water", "80 g"))).Millilitres!.Value, 0.5);

    [Fact]
    public void A_prep_made_from_itself_names_the_loop()
    {
        var cordial = Prep("Herb cordial", ("Herb syrup", "100 ml"));
        var syrup = Prep("Herb syrup", ("Herb cordial", "100 ml"));

        var finding = Assert.Single(YieldOf(syrup, cordial, syrup).Findings);

        Assert.Equal(FindingCatalogue.PrepInItself, finding.Kind);
        Assert.Equal("Herb syrup is made from itself: herb syrup, made from herb cordial, made from herb syrup.", finding.Message);
        Assert.Equal("Take it out of its own inputs.", finding.Remedy);
    }

    [Fact]
    public void An_input_the_house_does_not_know_is_said()
    {
        var finding = Assert.Single(YieldOf(Prep("Sea syrup", ("Sea fig", "100 ml"), ("Water", "100 ml"))).Findings);

        Assert.Equal("Sea syrup is made with \"sea-fig\", which the house does not know; it counts as nothing in the batch.", finding.Message);
    }

    [Theory]
    [InlineData(894, false)]
    [InlineData(895, true)]
    public void A_stated_yield_over_a_tenth_above_its_inputs_is_doubted(int stated, bool doubted)
    {
        var findings = YieldOf(Syrup with { Prep = Syrup.Prep! with { Yield = Measure.Millilitres(stated) } }).Findings;

        Assert.Equal(doubted, findings.Count > 0);
        if (doubted)
            Assert.Equal("Sugar syrup states a yield of 895 ml, but its inputs fill 813 ml at most.", findings[0].Message);
    }

    [Fact]
    public void Nothing_that_flows_yields_nothing()
    {
        var yield = YieldOf(Prep("Mint bundle", ("Mint", "1 bunch")));

        Assert.Null(yield.Millilitres);
        Assert.Equal(0, yield.ComputedMillilitres);
    }

    [Fact]
    public void What_is_no_house_prep_yields_nothing() => Assert.Null(YieldOf(Rum).Millilitres);

    [Fact]
    public void Yield_grows_with_the_batch() =>
        Gen.Select(Gen.Int[1, 2000], Gen.Int[1, 2000], Gen.Int[0, 500], Gen.Int[2, 12]).Sample((sugar, water, juice, times) =>
            Assert.Equal(Batch(sugar, water, juice) * times, Batch(sugar * times, water * times, juice * times), 1e-6 * (sugar + water + juice) * times));

    private static double Batch(int sugar, int water, int juice) =>
        YieldOf(Prep("Batch", ("White sugar", $"{sugar} g"), ("Water", $"{water} g"), ("Lime juice", $"{juice} ml"))).Millilitres!.Value;

    private static HousePrepYield YieldOf(Ingredient prep, params Ingredient[] more) =>
        HousePrepYield.Of(prep, new([.. more, Sugar, Water, Salt, Mint, Syrup, Lime, Rum]));

    private static Ingredient Of(string name, IngredientKind kind) => new() { Slug = Slug.Of(name), Name = name, Kind = kind };

    private static Ingredient Prep(string name, params (string Name, string Amount)[] inputs) => Of(name, IngredientKind.Syrup) with
    {
        Prep = new() { Inputs = [.. inputs.Select(input => new PrepInput(Slug.Of(input.Name), Measure.Parse(input.Amount)))] },
    };
}
