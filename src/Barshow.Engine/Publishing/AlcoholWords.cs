using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients.Alcohol;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Publishing;

/// <summary>Says how strong a drink is: its strength as served as a range, and how many standard drinks it is where the audience counts them.</summary>
public static class AlcoholWords
{
    /// <summary>"18–21 % alcohol by volume as served, 1.4 US standard drinks"; empty for a drink without alcohol.</summary>
    public static string Of(DrinkAnalysis analysis, DrinkRegion region)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        if (analysis.EthanolMillilitres <= 0)
            return "";
        var (low, high) = (Percent(analysis.ServedStrength.Low), Percent(analysis.ServedStrength.High));
        return $"{(low == high ? low : $"{low}–{high}")} % alcohol by volume as served, {Count(analysis, region)} {UnitOf(region)}";
    }

    /// <summary>How many standard drinks, to one decimal.</summary>
    public static string Count(DrinkAnalysis analysis, DrinkRegion region)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        return In(analysis.StandardDrinks, region).ToString("0.0", CultureInfo.InvariantCulture);
    }

    /// <summary>What is counted: "US standard drinks (14 g)", "UK units (10 ml)".</summary>
    public static string UnitOf(DrinkRegion region) => region switch
    {
        DrinkRegion.UnitedStates => "US standard drinks (14 g of alcohol each)",
        DrinkRegion.Australia => "Australian standard drinks (10 g of alcohol each)",
        DrinkRegion.NewZealand => "New Zealand standard drinks (10 g of alcohol each)",
        DrinkRegion.UnitedKingdom => "UK units (10 ml of alcohol each)",
        DrinkRegion.Ireland => "Irish standard drinks (10 g of alcohol each)",
        DrinkRegion.Canada => "Canadian standard drinks (17.05 ml of alcohol each)",
        _ => throw new ArgumentOutOfRangeException(nameof(region), region, "No such region."),
    };

    private static double In(StandardDrinks drinks, DrinkRegion region) => region switch
    {
        DrinkRegion.UnitedStates => drinks.UnitedStates,
        DrinkRegion.Australia => drinks.Australia,
        DrinkRegion.NewZealand => drinks.NewZealand,
        DrinkRegion.UnitedKingdom => drinks.UnitedKingdom,
        DrinkRegion.Ireland => drinks.Ireland,
        DrinkRegion.Canada => drinks.Canada,
        _ => throw new ArgumentOutOfRangeException(nameof(region), region, "No such region."),
    };

    private static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture);
}
