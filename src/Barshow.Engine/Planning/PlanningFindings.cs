using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning;

/// <summary>The sentences of planning, in one place so that tone and numbers stay even.</summary>
internal static partial class PlanningFindings
{
    public static Finding IngredientUnknown(string name, string drink) => new(FindingCatalogue.IngredientUnknown, name,
        $"{Upper(name)} in {drink} is not among the house's ingredients.",
        "Add it to the ingredients with its pack and strength, or choose the ingredient that is meant.")
    { Ingredient = name, Drink = drink };

    public static Finding GarnishNotCounted(LineupDrink drink, Garnish garnish) => new(FindingCatalogue.GarnishNotCounted, garnish.Text,
        $"The garnish of {drink.Name}, {garnish.Text}, names no ingredient of the house, so nothing is bought for it.",
        "Say what it is cut from, or add that ingredient.")
    { Drink = drink.Name };

    public static Finding OpenAmountAssumed(Spec spec, SpecLine line, OpenMeasure open, double millilitres) => new(FindingCatalogue.OpenAmountAssumed, line.Name,
        $"{spec.Name} leaves the {line.Name} to the hand ({Measure.NameOf(open).Replace('-', ' ')}); {Millilitres(millilitres)} is planned.",
        "Write the amount in the spec if the hand differs.")
    { Drink = spec.Name, Ingredient = line.Name, Line = line.BriefLine };

    public static Finding PartsAssumed(Spec spec) => new(FindingCatalogue.PartsAssumed, spec.Name,
        $"{spec.Name} is written in parts; {Millilitres(Practice.PartsMillilitres)} before ice is planned for all parts together.",
        "Write the amounts in ounces or millilitres.")
    { Drink = spec.Name };

    public static Finding PrepInItself(Ingredient prep) => new(FindingCatalogue.PrepInItself, prep.Name,
        $"{prep.Name} is made, on some way, from itself, so what it takes cannot be counted.",
        $"Take {prep.Name} out of its own inputs and out of theirs.")
    { Ingredient = prep.Name };

    public static Finding PrepYieldUnknown(Ingredient prep) => new(FindingCatalogue.PrepYieldUnknown, prep.Name,
        $"One batch of {prep.Name} states no yield, and none follows from its inputs, so what it takes is not counted.",
        "Write what one batch gives, in millilitres.")
    { Ingredient = prep.Name };

    public static Finding UntastedBesideSponsor(LineupDrink drink) => new(FindingCatalogue.UntastedBesideSponsor, drink.Name,
        $"{drink.Name} has {Count(drink.UntastedSwapOuts, "swap-out")} of water or cold tea in a sponsored film.",
        "Make it a tasted swap-out wherever the sponsor's product or the drink's true look is shown.")
    { Drink = drink.Name };

    public static Finding CutYieldAssumed(Ingredient fruit, Unit cut, int perPiece) => new(FindingCatalogue.CutYieldAssumed, fruit.Name,
        $"{fruit.Name} does not say how many {cut.SpokenMany} one gives; {Number(perPiece)} are planned.",
        $"Write how many {cut.SpokenMany} one {fruit.Name} gives.")
    { Ingredient = fruit.Name };

    public static Finding PackUnknown(string name, string need) => new(FindingCatalogue.PackUnknown, name,
        $"{need} of {name} is needed, and no pack of it is known.",
        "Add how it is bought: the pack's name, what it holds and its price.")
    { Ingredient = name };

    public static Finding PackInOtherUnit(Ingredient ingredient, string need) => new(FindingCatalogue.PackInOtherUnit, ingredient.Name,
        $"{need} of {ingredient.Name} is needed, but its packs are measured in another unit: {string.Join(", ", ingredient.Packs.Select(pack => $"{pack.Name} ({pack.Holds})"))}.",
        "Give a pack in the unit of the spec, or write the density of the ingredient.")
    { Ingredient = ingredient.Name };

    public static Finding PriceMissing(Ingredient ingredient, Pack pack) => new(FindingCatalogue.PriceMissing, ingredient.Name,
        $"The {pack.Name} of {ingredient.Name} has no price, so {ingredient.Name} is planned by the fewest packs and its cost is left out.",
        "Write the price of the pack.")
    { Ingredient = ingredient.Name };

    public static Finding OnHandNotUsed(Ingredient ingredient) => new(FindingCatalogue.OnHandNotUsed, ingredient.Name,
        $"{ingredient.OnHand} of {ingredient.Name} on hand is measured in another unit than the demand, so it is not taken off.",
        "Write what is on hand in the unit of the spec.")
    { Ingredient = ingredient.Name };

    public static Finding PackEmpty(Ingredient ingredient, Pack pack) => new(FindingCatalogue.PackEmpty, ingredient.Name,
        $"The {pack.Name} of {ingredient.Name} holds nothing, or its price is below nought or above a million; it is left out.",
        "Write what the pack holds and what it costs.")
    { Ingredient = ingredient.Name };

    public static Finding StandInNotBalanced(Ingredient ingredient) => new(FindingCatalogue.StandInNotBalanced, ingredient.Name,
        $"The sugar or the acid of {ingredient.Name} is not known, so it counts as none where the drinks are balanced again.",
        "Write what is in it, in grams to 100 ml.")
    { Ingredient = ingredient.Name };

    /// <summary>"540 ml", "1,240 ml", "22.5 ml".</summary>
    internal static string Millilitres(double amount) => amount.ToString("#,0.#", CultureInfo.InvariantCulture) + " ml";

    internal static string Number(int number) => number.ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>"1 bottle", "3 bottles".</summary>
    internal static string Count(int number, string one, string? many = null) => $"{Number(number)} {(number == 1 ? one : many ?? one + "s")}";

    internal static string Upper(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    internal static string And(IEnumerable<string> names)
    {
        var all = names.ToList();
        return all.Count < 2 ? string.Concat(all) : string.Join(", ", all.SkipLast(1)) + " and " + all[^1];
    }
}
