using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Data.Tests.Stock;

/// <summary>The composition of stocked ingredients against published figures, each copied here with its source.</summary>
public class StockedFiguresTests
{
    // USDA National Nutrient Database for Standard Reference, Release 26 (2013): total sugars in g per 100 g, and grams in one US fluid ounce (29.5735295625 ml).
    [Theory]
    [InlineData("lime-juice", 1.69, 30.8)] // NDB 09160
    [InlineData("lemon-juice", 2.52, 30.5)] // NDB 09152
    [InlineData("orange-juice", 8.4, 31)] // NDB 09206
    [InlineData("grapefruit-juice", 9.1, 30.9)] // NDB 09128
    [InlineData("pineapple-juice", 9.98, 31.3)] // NDB 09273
    [InlineData("apple-juice", 9.62, 31)] // NDB 09016
    [InlineData("cranberry-juice", 11.87, 31.6)] // NDB 14242
    [InlineData("tomato-juice", 3.56, 30.4)] // NDB 11886
    [InlineData("ginger-ale", 8.7, 30.5)] // NDB 14136
    [InlineData("tonic-water", 8.8, 30.5)] // NDB 14155
    [InlineData("cola", 10.75, 30.7)] // NDB 14148
    [InlineData("lemon-lime-soda", 10.38, 30.8)] // NDB 14144
    [InlineData("soda-water", 0, 29.6)] // NDB 14121
    public void Sugar_and_density_are_those_of_the_nutrient_database(string slug, double sugarIn100Grams, double gramsInFluidOunce)
    {
        var inside = DemoData.Ingredient(slug).Composition;
        var density = gramsInFluidOunce / 29.5735295625;

        Assert.Equal(density, inside.DensityGramsPerMillilitre!.Value, 0.001);
        Assert.Equal(sugarIn100Grams * density, inside.SugarGramsPer100Millilitres!.Value, 0.02);
        Assert.Contains("USDA SR26", inside.Source, StringComparison.Ordinal);
    }

    // Penniston et al., Journal of Endourology 2008; 22(3): 567 to 570: citric acid of fresh juice, g per litre.
    [Theory]
    [InlineData("lime-juice", 45.86)]
    [InlineData("lemon-juice", 48.0)]
    [InlineData("orange-juice", 9.10)]
    public void Acid_is_that_of_the_published_titration(string slug, double gramsPerLitre) =>
        Assert.Equal(gramsPerLitre / 10, DemoData.Ingredient(slug).Composition.AcidGramsPer100Millilitres!.Value, 0.005);

    // OIML R 22 (1975), general formula: density of ethanol and water at 20 °C, kg/m³.
    [Theory]
    [InlineData(40, 948.05)]
    [InlineData(42, 944.76)]
    [InlineData(43, 943.06)]
    [InlineData(45, 939.54)]
    [InlineData(46, 937.73)]
    [InlineData(50, 930.14)]
    public void Unsweetened_spirits_weigh_what_the_alcohol_tables_say(double percent, double kilogramsPerCubicMetre)
    {
        var spirits = DemoData.Shelf.All.Where(spirit => spirit is { Kind: IngredientKind.Spirit, Prep: null } && Math.Abs(spirit.Composition.Strength!.Value.Percent - percent) < 1e-9).ToList();

        Assert.NotEmpty(spirits);
        Assert.All(spirits, spirit => Assert.Equal(kilogramsPerCubicMetre / 1000, spirit.Composition.DensityGramsPerMillilitre!.Value, 0.00002));
    }

    // ICUMSA sucrose density polynomial (SPS-4) at 20 °C: 50 °Bx 1229.65 kg/m³, 66.67 °Bx 1326.77 kg/m³.
    [Theory]
    [InlineData("sugar-syrup", 50, 1229.65)]
    [InlineData("rich-syrup", 66.667, 1326.77)]
    public void A_syrup_by_weight_holds_its_share_of_sugar(string slug, double brix, double kilogramsPerCubicMetre)
    {
        var inside = DemoData.Ingredient(slug).Composition;

        Assert.Equal(kilogramsPerCubicMetre / 1000, inside.DensityGramsPerMillilitre!.Value, 0.0001);
        Assert.Equal(brix * kilogramsPerCubicMetre / 1000, inside.SugarGramsPer100Millilitres!.Value, 0.01);
    }

    // USDA SR26: honey (NDB 19296) 82.12 g of sugar in 100 g and 339 g in a cup of 236.588 ml; agave syrup (NDB 19912) 68.03 g and 6.9 g in a teaspoon of 4.929 ml.
    [Theory]
    [InlineData("honey", 82.12, 339 / 236.588)]
    [InlineData("agave-syrup", 68.03, 6.9 / 4.929)]
    public void Honey_and_agave_are_as_sweet_as_the_nutrient_database_says(string slug, double sugarIn100Grams, double density)
    {
        var inside = DemoData.Ingredient(slug).Composition;

        Assert.Equal(density, inside.DensityGramsPerMillilitre!.Value, 0.001);
        Assert.Equal(sugarIn100Grams * density, inside.SugarGramsPer100Millilitres!.Value, 0.1);
    }

    // A hand press gives no more than the database's fully extracted fruit: USDA SR26 household measures, 44, 48, 86 and 196 g of juice.
    [Theory]
    [InlineData("lime", "lime-juice", 25, 30, 42.2)]
    [InlineData("lemon", "lemon-juice", 40, 45, 46.5)]
    [InlineData("orange", "orange-juice", 70, 90, 82)]
    [InlineData("grapefruit", "grapefruit-juice", 150, 200, 187.6)]
    public void A_fruit_is_planned_at_what_a_hand_press_gives(string fruit, string juice, double least, double most, double extracted)
    {
        var produce = DemoData.Ingredient(fruit).Produce!;

        Assert.Equal(juice, produce.Juice.Text);
        Assert.InRange(produce.JuiceMillilitres, least, most);
        Assert.True(produce.JuiceMillilitres <= extracted);
    }

    // Lowest strengths: rum and whisky read in a reprint of Regulation (EEC) 1576/89, Article 3; the others, as Regulation (EU) 2019/787, Annex I has them, from memory.
    [Theory]
    [InlineData("rum", 37.5)]
    [InlineData("whisky", 40)]
    [InlineData("gin", 35)] // 37.5 for gin; genever may be weaker
    [InlineData("vodka", 37.5)]
    [InlineData("brandy", 36)]
    public void No_spirit_is_weaker_than_its_name_allows(string kind, double percent) =>
        Assert.All(DemoData.Shelf.All.Where(spirit => spirit.Kind == IngredientKind.Spirit && spirit.Class == kind), spirit => Assert.True(spirit.Composition.Strength!.Value.Percent >= percent, spirit.Name));

    // Regulation (EU) 2019/787, Annex I, from memory: a liqueur holds 100 g of sugar in a litre, a crème 250 g, crème de cassis 400 g; sloe gin has 25 % and more.
    [Fact]
    public void Liqueurs_are_as_sweet_as_their_names_ask()
    {
        var liqueurs = DemoData.Shelf.All.Where(liqueur => liqueur.Kind == IngredientKind.Liqueur && liqueur.Class is not ("amaro" or "absinthe")).ToList();

        Assert.All(liqueurs, liqueur => Assert.True(liqueur.Composition.SugarGramsPer100Millilitres >= 10, liqueur.Name));
        Assert.All(liqueurs.Where(liqueur => liqueur.Name.Contains("rème de", StringComparison.Ordinal)), liqueur => Assert.True(liqueur.Composition.SugarGramsPer100Millilitres >= 25, liqueur.Name));
        Assert.True(DemoData.Ingredient("creme-de-cassis").Composition.SugarGramsPer100Millilitres >= 40);
        Assert.True(DemoData.Ingredient("sloe-gin").Composition.Strength!.Value.Percent >= 25);
    }

    // 27 CFR 5.203 (as before 2025) and Directive 2007/45/EC, Annex: both name 750 ml or 700 ml; 700 ml is the spirits bottle of Europe and Australia (common practice).
    [Fact]
    public void Spirits_are_bought_in_the_700_ml_bottle() =>
        Assert.All(DemoData.Shelf.All.Where(spirit => spirit is { Kind: IngredientKind.Spirit, Prep: null }), spirit => Assert.Contains(spirit.Packs, pack => pack.Holds == Measure.Millilitres(700)));
}
