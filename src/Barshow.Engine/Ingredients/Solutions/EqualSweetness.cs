using System.Globalization;

namespace Barshow.Engine.Ingredients.Solutions;

/// <summary>The same sweetness in other forms. Grams of sugar are taken as equally sweet; honey and agave taste a little sweeter than their weight.</summary>
/// <param name="SugarGrams">Grams of sugar, 0 or more: so much caster sugar.</param>
public readonly record struct EqualSweetness(double SugarGrams)
{
    /// <summary>Millilitres of 1:1 syrup by weight.</summary>
    public double OneToOneMillilitres => SugarGrams / SugarSolution.OneToOneByWeight.SugarGramsPer100Millilitres * 100;

    /// <summary>Millilitres of 2:1 syrup by weight.</summary>
    public double RichMillilitres => SugarGrams / SugarSolution.TwoToOneByWeight.SugarGramsPer100Millilitres * 100;

    /// <summary>The sweetness of an amount of an ingredient; null when its sugar is not known.</summary>
    public static EqualSweetness? Of(Ingredient ingredient, double millilitres)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Composition.SugarGramsPer100Millilitres is { } sugar ? new(sugar * millilitres / 100) : null;
    }

    /// <summary>As it is printed under a recipe: "10 ml of rich syrup sweeten like 14.4 ml of 1:1 syrup or 8.8 g of caster sugar."</summary>
    /// <param name="millilitres">The amount it stands for.</param>
    /// <param name="name">What that is.</param>
    public string Sentence(double millilitres, string name) => string.Create(CultureInfo.InvariantCulture,
        $"{millilitres:0.#} ml of {name} sweeten like {OneToOneMillilitres:0.#} ml of 1:1 syrup, {RichMillilitres:0.#} ml of 2:1 syrup or {SugarGrams:0.#} g of caster sugar.");
}
