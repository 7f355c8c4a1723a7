using System.Text.RegularExpressions;
using Barshow.Engine.Specs;

namespace Barshow.Data.Tests.Stock;

/// <summary>Everything is named by kind. A brand is a proper name, so no capital stands in the middle of a name, a line or a sentence unless it is one of the kinds, places and drinks listed here.</summary>
public partial class StockedNamesTests
{
    // The words that open the name of an ingredient: each is a kind, a colour, a manner or a fruit.
    private static readonly HashSet<string> Kinds =
    [
        .. """
        Absinthe Agave Aged Almonds Amaretto Amaro Apple Apricot Aquavit Aromatic Basil Bitter Black Blackberry Blanco Blended Bourbon Butter Cachaça Candied Cane Cardamom
        Caster Celery Cherry Chickpea Chilli Chocolate Cinnamon Citric Citrus Cloudy Cloves Cocktail Coconut Coffee Cola Cold Coriander Cranberry Cream Creole-style Crème
        Cucumber Dark Demerara Dill Dried Dry Edible Egg Elderflower Espresso Falernum Fernet Fresh Genever Ginger Gold Grape Grapefruit Green Grenadine Hazelnut Herbal
        Hibiscus Honey Honeyed Hot Ice Irish Juniper Lager Lemon Lemon-lime Light Lime Maple Maraschino Mezcal Milk Mint Molasses Nutmeg Old Olive Oloroso Orange Orgeat
        Overproof Passion Pastis Peach Peated Pineapple Pink Pisco Pomegranate Prepared Pressed Raspberry Red Reposado Rich Rosemary Rye Sage Saline Salt Sloe Smoked Soda
        Sparkling Star Stout Strawberry Sugar Sweet Sweetened Tawny Thyme Tomato Tonic Triple Vanilla Verjuice Vodka Water Watermelon Whisky White Worcestershire Yellow
        """.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries),
    ];

    // Kinds that carry the name of a place, places of the stories, and the glass called after two people of fiction.
    private static readonly HashSet<string> Proper =
    [
        "Scotch", "Irish", "Old", "Tom", "English", "American", "French", "United", "States", "California", "Chile", "Cuba", "Florence", "Foynes", "Hudson", "Ireland", "London",
        "New", "York", "Paris", "Puerto", "Rico", "San", "Juan", "Santiago", "I", "Nick", "Nora",
    ];

    public static TheoryData<string> Ingredients => [.. DemoData.Shelf.All.Select(ingredient => ingredient.Slug.Text)];

    public static TheoryData<string> Drinks => [.. DemoData.Drinks.Select(drink => drink.Slug.Text)];

    [Theory, MemberData(nameof(Ingredients))]
    public void An_ingredient_is_named_by_its_kind(string slug)
    {
        var name = DemoData.Ingredient(slug).Name;

        Assert.True(Kinds.Contains(name.Split(' ')[0]) || char.IsAsciiDigit(name[0]), $"{name} does not open with a kind.");
    }

    [Theory, MemberData(nameof(Ingredients))]
    public void No_proper_name_stands_in_what_is_said_of_an_ingredient(string slug)
    {
        var ingredient = DemoData.Ingredient(slug);

        NoProperName(
        [
            ingredient.Name, .. ingredient.Aliases, .. ingredient.RegionalNames.SelectMany(regional => new[] { regional.Name, regional.Warning ?? "" }),
            .. ingredient.Packs.Select(pack => pack.Name), .. ingredient.StandIns.Select(standIn => standIn.Note ?? ""), .. ingredient.NotInstead.SelectMany(not => new[] { not.What, not.Why }),
            .. ingredient.Questions.SelectMany(question => new[] { question.Question, question.Answer }), .. ingredient.Prep?.Steps ?? [],
        ]);
    }

    [Theory, MemberData(nameof(Drinks))]
    public void No_proper_name_stands_in_what_is_said_of_a_drink(string slug)
    {
        var drink = DemoData.Drink(slug);

        NoProperName(
        [
            .. drink.Lines.SelectMany(line => new[] { line.Name, line.Note ?? "" }), .. Texts(drink.Garnish), .. drink.Steps, drink.Taste, .. drink.Notes, .. drink.Aliases,
            .. drink.NotInstead.SelectMany(not => new[] { not.What, not.Why }), .. drink.Stories.Select(story => story.Text),
            .. drink.Lines.SelectMany(line => line.Amounts).Select(amount => amount.Reason ?? ""),
        ]);
    }

    private static IEnumerable<string> Texts(Garnish? garnish) => garnish is null ? [] : garnish.Instead.SelectMany(Texts).Prepend(garnish.Text);

    private static void NoProperName(IEnumerable<string> texts)
    {
        var drinks = DemoData.Drinks.SelectMany(drink => drink.Name.Split(' ')).ToHashSet();
        foreach (var text in texts)
            Assert.All(InnerCapital().Matches(text), capital => Assert.True(Proper.Contains(capital.Value) || drinks.Contains(capital.Value), $"\"{capital.Value}\" in \"{text}\" looks like a proper name."));
    }

    // A capital letter that opens neither the text nor a sentence.
    [GeneratedRegex(@"(?<!^)(?<![.:?!] )(?<!["" ]\p{Pi})\b\p{Lu}[\p{L}\p{M}]*")]
    private static partial Regex InnerCapital();
}
