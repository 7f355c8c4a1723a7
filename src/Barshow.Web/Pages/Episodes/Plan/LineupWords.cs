using System.Globalization;
using Barshow.Engine.Planning.Lineup;

namespace Barshow.Web.Pages.Episodes.Plan;

/// <summary>The aims of a lineup in words.</summary>
internal static class LineupWords
{
    /// <summary>As the list of aims names it.</summary>
    public static string Of(Aim aim) => aim switch
    {
        Aim.Cost => "Basket cost",
        Aim.Variety => "Variety",
        Aim.Freshness => "Freshness",
        _ => "Prep effort",
    };

    /// <summary>What an aim counts, in a few words.</summary>
    public static string Counts(Aim aim) => aim switch
    {
        Aim.Cost => "what viewers pay for whole packs",
        Aim.Variety => "different families, methods, glasses and tags",
        Aim.Freshness => "featured longest ago or never: few points",
        _ => "minutes of making and of house preps",
    };

    /// <summary>A value with its unit: "62.90 AUD", "13 packs", "24 different", "113 points", "86 minutes".</summary>
    public static string Value(Aim aim, decimal value, LineupQuestion question, bool priced = true) => aim switch
    {
        Aim.Cost when priced => string.Create(CultureInfo.InvariantCulture, $"{value:#,0.00} {question.Bar.House.Currency}"),
        Aim.Cost => string.Create(CultureInfo.InvariantCulture, $"{value:0} packs"),
        Aim.Variety => string.Create(CultureInfo.InvariantCulture, $"{value:0} different"),
        Aim.Freshness => string.Create(CultureInfo.InvariantCulture, $"{value:0} points"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{value:0} minutes"),
    };
}
