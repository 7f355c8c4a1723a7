using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Cautions;
using static Barshow.Engine.Tests.Specs.TestBar;

namespace Barshow.Engine.Tests.Specs;

public class DrinkCautionTests
{
    private static readonly Ingredient Almonds = Of("Almonds", IngredientKind.Other) with { Allergens = [new(Allergen.Nuts, AllergenPresence.Contains, "almond")] };
    private static readonly Ingredient NutSyrup = Of("Nut syrup", IngredientKind.Syrup) with
    {
        Prep = new() { Inputs = [new(Slug.Of("Almonds"), Measure.Parse("100 g")), new(Slug.Of("Sea fig"), Measure.Parse("1"))] },
    };
    private static readonly Ingredient Vermouth = Of("White vermouth", IngredientKind.FortifiedWine) with { Allergens = [new(Allergen.Sulphites, AllergenPresence.CheckLabel)] };
    private static readonly Ingredient Overproof = Of("Overproof rum", IngredientKind.Spirit, 50);
    private static readonly IngredientShelf Bar = new([Almonds, NutSyrup, Vermouth, Overproof, .. Shelf.All]);

    [Fact]
    public void What_a_house_prep_is_made_of_is_named_through_it()
    {
        var cautions = DrinkCautions.Of(Spec("Nut syrup"), Bar);

        Assert.Equal([new("Pier Light", Allergen.Nuts, AllergenPresence.Contains, "Nut syrup", "almond")], cautions.Allergens);
    }

    [Fact]
    public void Garnishes_that_will_do_instead_count_too()
    {
        var spec = Spec("Gin") with { Garnish = new("lemon twist") { Beside = [new("almonds") { Ingredient = Slug.Of("Almonds") }], Instead = [new("foam") { Ingredient = Slug.Of("Egg white") }] } };

        var cautions = DrinkCautions.Of(spec, Bar);

        Assert.Equal([Allergen.Eggs, Allergen.Nuts], cautions.Allergens.Select(entry => entry.Allergen));
        Assert.Equal([Hazard.RawEgg], cautions.Hazards);
    }

    [Fact]
    public void A_spirit_of_50_percent_lights()
    {
        Assert.Equal([Hazard.OverproofSpirit], DrinkCautions.Of(Spec("Overproof rum"), Bar).Hazards);
        Assert.Empty(DrinkCautions.Of(Spec("Gin"), Bar).Hazards);
    }

    [Fact]
    public void Every_caution_is_a_sentence_and_the_last_defers_to_local_rules()
    {
        var spec = Spec("Egg white", "Nut syrup", "White vermouth", "Sea grape") with { Hazards = [Hazard.Flame] };

        var sentences = DrinkCautions.Of(spec, Bar).Sentences("UK");

        Assert.Equal("Contains egg, tree nuts (almond).", sentences[0]);
        Assert.Equal("Check the label for sulphites (white vermouth).", sentences[1]);
        Assert.Equal("Check the label of sea grape: the house does not know what is in it.", sentences[2]);
        Assert.StartsWith("Raw egg: use pasteurised egg", sentences[3], StringComparison.Ordinal);
        Assert.StartsWith("Flame: never pour from a bottle", sentences[4], StringComparison.Ordinal);
        Assert.Contains("Follow local rules and licensed practice", sentences[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_drink_of_which_nothing_is_known_is_never_called_free_of_anything()
    {
        var sentences = DrinkCautions.Of(Spec("Gin"), Bar).Sentences("US");

        Assert.Equal([CautionWords.Closing], sentences);
        Assert.All(Enum.GetValues<Hazard>(), hazard => Assert.False(string.IsNullOrWhiteSpace(CautionWords.Of(hazard)) || string.IsNullOrWhiteSpace(CautionWords.NameOf(hazard))));
        Assert.All(Enum.GetValues<Allergen>(), allergen => Assert.False(string.IsNullOrWhiteSpace(CautionWords.NameOf(allergen, "US"))));
    }

    [Theory]
    [InlineData("US", "Check the label for sulfites (white vermouth).")]
    [InlineData("AU", "Check the label for sulphites (white vermouth).")]
    public void Sulphites_are_spelt_as_the_region_spells_them(string region, string sentence) =>
        Assert.Equal(sentence, DrinkCautions.Of(Spec("White vermouth"), Bar).Sentences(region)[0]);

    private static Spec Spec(params string[] names) => Drink(MethodKind.Shaken, "Coupe",
        [.. names.Select(name => new SpecLine { Name = name.ToLowerInvariant(), Ingredient = Bar.Named(name)?.Slug ?? default, Amounts = [new(AmountLayer.Library, Measure.Millilitres(30))] })]);
}
