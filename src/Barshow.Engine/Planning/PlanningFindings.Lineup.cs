using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Names;
using Barshow.Engine.Planning.Lineup;

namespace Barshow.Engine.Planning;

/// <content>The lineup.</content>
internal static partial class PlanningFindings
{
    public static Finding PlannedByCount(IReadOnlyList<string> unpriced) => new(FindingCatalogue.PlannedByCount, "Basket",
        $"{Count(unpriced.Count, "ingredient has", "ingredients have")} no price ({And(unpriced.Take(5))}{(unpriced.Count > 5 ? " among them" : "")}), so the basket is planned by the number of packs.",
        "Write the missing prices to plan by cost.");

    public static Finding MoneyNotChecked(Requirement requirement) => new(FindingCatalogue.MoneyNotChecked, "Basket",
        $"Prices are missing, so it was not checked that {requirement.Words}.",
        "Write the missing prices.");

    public static Finding MustHaveUnknown(Slug slug) => new(FindingCatalogue.MustHaveUnknown, slug.Text,
        $"{slug} must be in the lineup, but the catalogue has no drink of that name with lines.",
        "Add the drink to the library, or let it go.")
    { Drink = slug.Text };

    public static Finding LineupImpossible(IReadOnlyList<Requirement> relax) => new(FindingCatalogue.LineupImpossible, "Lineup",
        $"No lineup keeps every requirement. {(relax.Count == 1 ? "Only one would have to be relaxed" : $"At least {Number(relax.Count)} would have to be relaxed")}: {And(relax.Select(requirement => requirement.Words))}.",
        string.Join(" ", relax.Select(requirement => requirement.Relaxed).DefaultIfEmpty("Add drinks to the catalogue.")));

    public static Finding LineupStopped() => new(FindingCatalogue.LineupStopped, "Lineup",
        "The run was stopped: this is the best lineup found until then, and the same question may give another next time.",
        "Run it to the end for a lineup that can be repeated.");

    public static Finding LineupNotFound() => new(FindingCatalogue.LineupNotFound, "Lineup",
        "Within the work allowed no lineup was found, and it was not proven that there is none.",
        "Allow more work, or relax a requirement.");

    public static Finding LineupNotProven(LineupLevel level) => new(FindingCatalogue.LineupNotProven, "Lineup",
        string.Create(CultureInfo.InvariantCulture, $"Within the work allowed it was not proven that no lineup has a better {level.Aim.ToString().ToLowerInvariant()} than {level.Value:0.##}; none is better than {level.Bound:0.##}."),
        "Allow more work for a proof, or take the lineup as it is.");

    public static Finding LineupBreaks(Requirement requirement) => new(FindingCatalogue.LineupBreaks, "Lineup",
        $"Counted again, the lineup does not keep a requirement: {requirement.Words}.",
        "Report this plan with its question, and check the lineup by hand.");

    /// <summary>"Shares White rum and Lime; buys nothing of its own." or "Shares White rum; adds Mint, 3.50 USD."</summary>
    public static string ReasonFor(LineupPick pick, LineupQuestion question, bool priced)
    {
        var shares = pick.Shares.Count > 0 ? $"Shares {And(pick.Shares)}" : "Shares nothing";
        var cost = priced ? string.Create(CultureInfo.InvariantCulture, $"{pick.AddsCost:#,0.00} {question.Bar.House.Currency}") : Count((int)pick.AddsCost, "pack");
        var adds = pick.Adds.Count > 0 ? $"adds {And(pick.Adds)}, {cost}"
            : pick.AddsCost > 0 ? $"adds {cost} to what is shared"
            : "adds nothing to the basket";
        var must = question.MustHave.Contains(pick.Spec.Slug) ? "Must be in. " : "";
        return $"{must}{shares}; {adds}.{(pick.BaseSwapped ? " Its base is swapped for the bottle." : "")}";
    }
}
