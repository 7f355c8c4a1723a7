using Barshow.Engine.Episodes;
using Barshow.Engine.Episodes.Claims;
using Barshow.Engine.Findings;
using Barshow.Engine.Planning.Bottles;

namespace Barshow.Engine.Planning;

/// <content>Bottles and claims.</content>
internal static partial class PlanningFindings
{
    public static Finding BottleUnnamed(Episode episode) => new(FindingCatalogue.BottleUnnamed, episode.Title,
        "The episode names no featured bottle, so the bottle budgets are not worked out.",
        "Name the bottle and its size.");

    public static Finding BottleSizeUnknown(BottleBudget budget) => new(FindingCatalogue.BottleSizeUnknown, budget.Name,
        $"The bottle of {budget.Name} has no size above nought, so the stated bottle is not checked; the viewer's {Millilitres(budget.ViewerMillilitres)} is checked against 700 ml and 750 ml.",
        "Write the size printed on its label.")
    { Ingredient = budget.Name };

    public static Finding BottleUnused(BottleBudget budget) => new(FindingCatalogue.BottleUnused, budget.Name,
        $"No drink of the lineup pours the {budget.Name}.",
        "Choose drinks that pour it, or name the bottle that they do pour.")
    { Ingredient = budget.Name };

    public static Finding BottleNotInDrink(BottleBudget budget, LineupDrink drink) => new(FindingCatalogue.BottleNotInDrink, drink.Name,
        $"{drink.Name} does not pour the {budget.Name}.",
        "Keep it if that is meant; else choose another drink or swap its base.")
    { Drink = drink.Name, Ingredient = budget.Name, Line = drink.BriefLine };

    public static Finding BottleTooSmall(BottleBudget budget, double size) => new(FindingCatalogue.BottleTooSmall, budget.Name,
        $"Each drink made once pours {Millilitres(budget.ViewerMillilitres)} of {budget.Name}; one bottle holds {Millilitres(size)}, {Millilitres(budget.ViewerMillilitres - size)} too little.",
        $"Pour less, leave a drink out, or say that it takes {Count((int)Math.Min(1_000_000, Math.Ceiling(budget.ViewerMillilitres / size - 1e-9)), "bottle")}.")
    { Ingredient = budget.Name };

    public static Finding BottleFitsOneSize(BottleBudget budget) => new(FindingCatalogue.BottleFitsOneSize, budget.Name,
        $"Each drink made once pours {Millilitres(budget.ViewerMillilitres)} of {budget.Name}: a bottle of 750 ml carries it, one of 700 ml is {Millilitres(budget.ViewerMillilitres - 700)} short.",
        "Say the size on camera, or bring the lineup under 700 ml.")
    { Ingredient = budget.Name };

    public static Finding BottlesForShoot(BottleBudget budget) => new(FindingCatalogue.BottlesForShoot, budget.Name,
        $"The shoot pours {Millilitres(budget.ShootMillilitres)} of {budget.Name} from {Count(budget.Bottles, "bottle")} of {Millilitres(budget.ShootBottleMillilitres)}; the last has {Millilitres(budget.LastBottleMillilitres)} left, {(budget.RetakesLeft == 0 ? "not enough for another take" : Count(budget.RetakesLeft, "more take"))} of {budget.CostliestDrinkName}.",
        budget.BottlesToOrder == 0
            ? $"The stock on hand is enough{(budget.RetakesLeft == 0 ? "; a spare bottle saves the day if a take fails" : "")}."
            : $"Order {Count(budget.BottlesToOrder, "bottle")}{(budget.RetakesLeft == 0 ? ", and one to spare" : "")}.")
    { Ingredient = budget.Name };

    public static Finding ClaimBroken(Claim claim, string truth, string remedy) => new(FindingCatalogue.ClaimBroken, claim.Words,
        $"The title says \"{claim.Words}\": {truth}.", remedy)
    { Said = claim.Words, Place = claim.Place };

    public static Finding ClaimNotChecked(Claim claim, string why, string remedy) => new(FindingCatalogue.ClaimNotChecked, claim.Words,
        $"The title says \"{claim.Words}\", which was not checked: {why}.", remedy)
    { Said = claim.Words, Place = claim.Place };
}
