using Barshow.Engine.Episodes;
using Barshow.Engine.Episodes.Claims;
using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Planning.Baskets;
using Barshow.Engine.Planning.Bottles;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Claims;

/// <summary>Checks the promises of a title against the lineup as a viewer makes it: each drink once, at home.</summary>
/// <remarks>What the shoot needs breaks no claim.</remarks>
public static class ClaimChecker
{
    /// <summary>The claims of an episode's title.</summary>
    /// <param name="episode">The episode.</param>
    /// <param name="bar">What it is looked up in.</param>
    /// <param name="viewerBasket">The viewer's basket, where the caller has it already.</param>
    /// <param name="budget">The bottle budgets, where the caller has them already.</param>
    public static ClaimReport Check(Episode episode, Bar bar, Basket? viewerBasket = null, BottleBudget? budget = null)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        var checks = new List<ClaimCheck>();
        var findings = new List<Finding>();
        foreach (var claim in ClaimReader.Read(episode.Title))
        {
            var (kept, truth, remedy) = claim.Kind switch
            {
                ClaimKind.Drinks => Drinks(claim, episode),
                ClaimKind.Bottles => Bottles(claim, budget ?? BottleBudgetPlanner.Plan(episode, bar)),
                ClaimKind.Ingredients => Ingredients(claim, viewerBasket ?? BasketPlanner.Plan(episode, bar, DemandFor.Viewer)),
                ClaimKind.IngredientsEach => IngredientsEach(claim, episode, bar),
                _ => Minutes(claim, episode),
            };
            checks.Add(new(claim, kept, truth));
            if (kept is false)
                findings.Add(PlanningFindings.ClaimBroken(claim, truth, remedy));
            else if (kept is null)
                findings.Add(PlanningFindings.ClaimNotChecked(claim, truth, remedy));
        }

        return new(checks, findings);
    }

    private static (bool? Kept, string Truth, string Remedy) Drinks(Claim claim, Episode episode) => (
        episode.Lineup.Count == claim.Number,
        $"the lineup has {PlanningFindings.Count(episode.Lineup.Count, "drink")}",
        "Change the title or the lineup.");

    private static (bool? Kept, string Truth, string Remedy) Bottles(Claim claim, BottleBudget budget)
    {
        if (budget.Name.Length == 0)
            return (null, "the episode names no featured bottle", "Name the bottle and its size.");
        var size = budget.BottleMillilitres ?? BottleBudgetPlanner.CommonSizes[0];
        var room = claim.Number * size;
        var over = budget.ViewerMillilitres - room;
        var bottles = claim.Number == 1 ? "one bottle holds" : $"{PlanningFindings.Number(claim.Number)} bottles hold";
        var truth = $"each drink made once pours {PlanningFindings.Millilitres(budget.ViewerMillilitres)} of {budget.Name}, and {bottles} {PlanningFindings.Millilitres(room)}";
        return over > Quantity.Least
            ? (false, truth + $", {PlanningFindings.Millilitres(over)} too little", "Pour less, leave a drink out, or change the title.")
            : (true, truth, "");
    }

    private static (bool? Kept, string Truth, string Remedy) Ingredients(Claim claim, Basket basket) => (
        basket.Things <= claim.Number,
        $"a viewer buys {PlanningFindings.Count(basket.Things, "thing")}, staples left out",
        "Leave out what only one drink needs, or change the title.");

    private static (bool? Kept, string Truth, string Remedy) IngredientsEach(Claim claim, Episode episode, Bar bar)
    {
        var over = episode.Lineup.Where(drink => Things(drink.Spec, bar.Ingredients) > claim.Number).ToList();
        return over.Count == 0
            ? (true, $"no drink has more than {PlanningFindings.Number(claim.Number)}, staples and garnish left out", "")
            : (false, $"{PlanningFindings.And(over.Select(drink => $"{drink.Name} has {PlanningFindings.Number(Things(drink.Spec, bar.Ingredients))}"))}, staples and garnish left out",
                "Leave a line out, or change the title.");
    }

    private static int Things(Spec spec, IngredientShelf shelf) => spec.Lines
        .Where(line => !line.Optional)
        .Select(line => (line, Known: line.Ingredient.IsEmpty ? shelf.Named(line.Name) : shelf[line.Ingredient]))
        .Where(entry => entry.Known is not ({ Staple: true } or { Kind: IngredientKind.Water }))
        .Select(entry => entry.Known?.Slug.Text ?? entry.line.Name)
        .Distinct(StringComparer.Ordinal)
        .Count();

    private static (bool? Kept, string Truth, string Remedy) Minutes(Claim claim, Episode episode)
    {
        if (episode.FilmLengthSeconds is not { } seconds)
            return (null, "the film has no length yet", "Write the length of the film once it is cut.");
        var time = TimeSpan.FromSeconds(Math.Clamp(seconds, 0, 359_999));
        var truth = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"the film runs {(int)time.TotalMinutes}:{time.Seconds:00}");
        return (seconds <= claim.Number * 60, truth, "Cut the film or change the title.");
    }
}
