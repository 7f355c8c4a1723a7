using Barshow.Engine.Ingredients;

namespace Barshow.Data.Tests.Stock;

/// <summary>
/// Allergens of key ingredients against the lists: Regulation (EU) 1169/2011, Annex II (fourteen classes); US FD&amp;C Act 201(qq) (nine);
/// Australia New Zealand Food Standards Code, Standard 1.2.3, Schedule 9.
/// </summary>
public class StockedAllergenTests
{
    [Theory]
    [InlineData("egg-white", Allergen.Eggs)] // Annex II, 3
    [InlineData("egg-yolk", Allergen.Eggs)]
    [InlineData("egg", Allergen.Eggs)]
    [InlineData("cream", Allergen.Milk)] // Annex II, 7
    [InlineData("milk", Allergen.Milk)]
    [InlineData("condensed-milk", Allergen.Milk)]
    [InlineData("butter", Allergen.Milk)]
    [InlineData("cream-liqueur", Allergen.Milk)]
    [InlineData("orgeat", Allergen.Nuts)] // Annex II, 8: almonds
    [InlineData("almonds", Allergen.Nuts)]
    [InlineData("hazelnut-liqueur", Allergen.Nuts)]
    [InlineData("celery", Allergen.Celery)] // Annex II, 9
    [InlineData("celery-salt", Allergen.Celery)]
    [InlineData("celery-bitters", Allergen.Celery)]
    [InlineData("stout", Allergen.Gluten)] // Annex II, 1: barley; beer is no distillate and is not excepted
    [InlineData("lager", Allergen.Gluten)]
    public void What_holds_an_allergen_says_so(string slug, Allergen allergen) =>
        Assert.Contains(DemoData.Ingredient(slug).Allergens, entry => entry.Allergen == allergen && entry.Presence == AllergenPresence.Contains);

    [Theory]
    [InlineData("worcestershire-sauce", Allergen.Fish)] // anchovy by the usual recipe
    [InlineData("worcestershire-sauce", Allergen.Gluten)] // barley malt vinegar
    [InlineData("amaretto", Allergen.Nuts)] // almond, apricot kernel or neither
    [InlineData("falernum", Allergen.Nuts)]
    [InlineData("aromatic-bitters", Allergen.Nuts)]
    [InlineData("creme-de-cacao", Allergen.Milk)]
    [InlineData("coffee-liqueur", Allergen.Milk)]
    [InlineData("dry-vermouth", Allergen.Sulphites)] // Annex II, 12: above 10 mg/l
    [InlineData("sparkling-wine", Allergen.Sulphites)]
    [InlineData("red-wine", Allergen.Sulphites)]
    [InlineData("dry-cider", Allergen.Sulphites)]
    [InlineData("cocktail-cherry", Allergen.Sulphites)]
    [InlineData("candied-ginger", Allergen.Sulphites)]
    [InlineData("green-olive", Allergen.Sulphites)]
    [InlineData("horseradish", Allergen.Mustard)]
    [InlineData("molasses", Allergen.Sulphites)]
    public void What_depends_on_the_label_sends_to_the_label(string slug, Allergen allergen) =>
        Assert.Contains(DemoData.Ingredient(slug).Allergens, entry => entry.Allergen == allergen && entry.Presence == AllergenPresence.CheckLabel);

    // Annex II, 1(d) and 8(b): cereals and nuts used for making alcoholic distillates are excepted.
    [Fact]
    public void A_plain_distillate_carries_no_entry() =>
        Assert.All(DemoData.Shelf.All.Where(spirit => spirit.Kind == IngredientKind.Spirit), spirit => Assert.Empty(spirit.Allergens));

    [Fact]
    public void Every_wine_and_fortified_wine_speaks_of_sulphites() =>
        Assert.All(
            DemoData.Shelf.All.Where(wine => wine.Kind is IngredientKind.Wine or IngredientKind.FortifiedWine),
            wine => Assert.Contains(wine.Allergens, entry => entry.Allergen == Allergen.Sulphites));

    [Theory]
    [InlineData("egg-white", Hazard.RawEgg)]
    [InlineData("honey", Hazard.Honey)]
    [InlineData("honey-syrup", Hazard.Honey)]
    [InlineData("grapefruit-juice", Hazard.Grapefruit)]
    [InlineData("grapefruit-soda", Hazard.Grapefruit)]
    [InlineData("tonic-water", Hazard.Quinine)]
    [InlineData("cream", Hazard.KeepCold)]
    [InlineData("chilli", Hazard.Chilli)]
    [InlineData("espresso", Hazard.Caffeine)]
    [InlineData("lime-juice", Hazard.FreshJuice)]
    public void What_can_hurt_beyond_allergens_is_marked(string slug, Hazard hazard) => Assert.Contains(hazard, DemoData.Ingredient(slug).Hazards);

    // Common practice for the limit: a spirit of 50 % lights without warming.
    [Fact]
    public void Every_spirit_of_50_percent_and_more_is_marked_as_overproof() =>
        Assert.All(
            DemoData.Shelf.All.Where(spirit => spirit.Composition.Strength is { Percent: >= 50 }),
            spirit => Assert.Contains(Hazard.OverproofSpirit, spirit.Hazards));
}
