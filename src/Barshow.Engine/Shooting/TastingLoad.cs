using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients.Alcohol;
using Barshow.Engine.Names;

namespace Barshow.Engine.Shooting;

/// <summary>What one drink adds to the day's count.</summary>
/// <param name="Drink">The drink.</param>
/// <param name="Name">Its name.</param>
/// <param name="Poured">Standard drinks in all its takes and real doubles.</param>
/// <param name="Tasted">Standard drinks in the presenter's sips, one for each take.</param>
public sealed record TastedDrink(Slug Drink, string Name, double Poured, double Tasted);

/// <summary>Standard drinks that the day pours, beside those that the presenter's sips come to. It counts; it says nothing of what anyone may do after it.</summary>
public sealed record TastingLoad
{
    /// <summary>Where the standard drink is counted, with its size: "US standard drinks of 14 g".</summary>
    public string Unit { get; init; } = "";

    /// <summary>Drink by drink, in viewer order.</summary>
    public IReadOnlyList<TastedDrink> Drinks { get; init; } = [];

    /// <summary>Standard drinks poured.</summary>
    public double Poured => Drinks.Sum(drink => drink.Poured);

    /// <summary>Standard drinks tasted, when every sip is swallowed.</summary>
    public double Tasted => Drinks.Sum(drink => drink.Tasted);

    /// <summary>The count with its caution, and what could not be counted.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Counts an episode's shoot day.</summary>
    public static TastingLoad Of(Episode episode, Bar bar, ShootingPace? pace = null)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        pace ??= ShootingPace.Default;
        List<TastedDrink> drinks = [];
        List<Finding> findings = [];
        foreach (var drink in episode.Lineup)
        {
            var traits = DrinkTraits.Of(drink.Spec, bar, episode.Convention);
            var takes = episode.TakesOf(drink);
            var sip = traits.ServedMillilitres > 0 ? Math.Min(1, pace.SipMillilitres / traits.ServedMillilitres) : 0;
            var each = Count(new StandardDrinks(traits.EthanolMillilitres), bar.House.DrinkRegion);
            drinks.Add(new(drink.Spec.Slug, drink.Name, each * (takes + drink.TastedSwapOuts), each * takes * sip));
            if (traits.Unknown.Count > 0)
                findings.Add(new(FindingCatalogue.TastingLoadUnknown, drink.Name,
                    $"How strong {string.Join(" and ", traits.Unknown)} is, is not known, so {drink.Name} may count for more than is shown.",
                    "Give its strength from the label."));
        }

        TastingLoad load = new() { Unit = UnitOf(bar.House.DrinkRegion), Drinks = drinks };
        if (load.Poured > 0)
            findings.Insert(0, new(FindingCatalogue.TastingLoad, "tasting",
                string.Create(CultureInfo.InvariantCulture, $"The takes pour {load.Poured:0.0} {load.Unit}; a sip of {pace.SipMillilitres} ml of each comes to {load.Tasted:0.0}."),
                "Sip and spit, with food and water; the strongest last. Nobody who is under age, pregnant, on medicines, in recovery or about to drive is asked to taste. Follow local rules."));
        return load with { Findings = findings };
    }

    private static double Count(StandardDrinks drinks, DrinkRegion region) => region switch
    {
        DrinkRegion.Australia => drinks.Australia,
        DrinkRegion.NewZealand => drinks.NewZealand,
        DrinkRegion.UnitedKingdom => drinks.UnitedKingdom,
        DrinkRegion.Ireland => drinks.Ireland,
        DrinkRegion.Canada => drinks.Canada,
        _ => drinks.UnitedStates,
    };

    private static string UnitOf(DrinkRegion region) => region switch
    {
        DrinkRegion.UnitedKingdom => "UK units of 10 ml of alcohol",
        DrinkRegion.Canada => "Canadian standard drinks of 17.05 ml of alcohol",
        DrinkRegion.UnitedStates => "US standard drinks of 14 g",
        _ => "standard drinks of 10 g",
    };
}
