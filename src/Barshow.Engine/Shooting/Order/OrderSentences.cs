using System.Globalization;
using Barshow.Engine.Findings;

namespace Barshow.Engine.Shooting.Order;

/// <summary>What the running-order planner says, in one place.</summary>
internal static class OrderSentences
{
    public static Finding Relaxed(Requirement requirement, RunningOrder order, string freshFor) => requirement.Rule switch
    {
        OrderRule.FreshWhenFilmed => OfPrep(FindingCatalogue.FreshWindowClosed, requirement.Subject, requirement.Object,
            $"{requirement.Subject} is filmed after {requirement.Object} has lost its looks: it keeps {freshFor}, and no order or further batch avoids it.",
            $"Film {requirement.Subject} nearer the making of {requirement.Object}, allow a further batch, or use a prep that keeps longer."),
        OrderRule.OpenerFirst => OfDrink(FindingCatalogue.PinNotKept, requirement.Subject,
            $"{requirement.Subject} is pinned as the opener but is not filmed first.", "Unpin it, or let go of the rule that stands against it."),
        OrderRule.CloserLast => OfDrink(FindingCatalogue.PinNotKept, requirement.Subject,
            $"{requirement.Subject} is pinned as the closer but is not filmed last.", "Unpin it, or let go of the rule that stands against it."),
        OrderRule.SideBySide => OfDrink(FindingCatalogue.PairParted, requirement.Subject,
            $"{requirement.Subject} and {requirement.Object} are to be compared but are not filmed side by side.", "Free one of them from its pin, or compare them in the edit."),
        OrderRule.CleanGlass => OfDrink(FindingCatalogue.GlassShort, requirement.Subject,
            $"There are too few clean glasses ({requirement.Object}) when {requirement.Subject} is filmed.", "Get more glasses, film fewer takes, or use another glass."),
        OrderRule.ColdGlass => OfDrink(FindingCatalogue.GlassWarm, requirement.Subject,
            $"{requirement.Subject} is filmed before its washed glasses are cold again.", "Have more glasses in the freezer, or wait."),
        OrderRule.BreakInTime or OrderRule.MealInTime => new(FindingCatalogue.BreakLate, requirement.Subject.Length > 0 ? requirement.Subject : "the day",
            requirement.Rule is OrderRule.MealInTime ? "No meal begins in time on a long day." : $"The stretch of work that ends with {requirement.Subject} is too long.", "Cut a take, or spread the shoot over two days."),
        _ => new(FindingCatalogue.WrapLate, "the day",
            $"The day ends at {order.Clock.Say(order.Wrap)}, later than it must.", "Cut takes or close-ups, move drinks to a second day, or allow a later wrap."),
    };

    public static Finding FurtherBatch(FreshStretch stretch, ShootClock clock) => OfPrep(FindingCatalogue.FurtherBatch, null, stretch.Name,
        string.Create(CultureInfo.InvariantCulture, $"{stretch.Name} is made again: batch {stretch.Batch} is ready at {clock.Say(stretch.From)}."),
        "Have its ingredients measured and waiting, or choose a recipe that keeps longer.");

    public static Finding WashWithin(string drink, string glass, int needed, int count) => OfDrink(FindingCatalogue.WashWithinDrink, drink,
        string.Create(CultureInfo.InvariantCulture, $"{drink} needs {needed} of {glass} and there are {count}: its takes are interrupted for a wash-up."),
        "Get more glasses, or plan fewer takes or doubles.");

    public static Finding GlassUnknown(string drink) => OfDrink(FindingCatalogue.GlassCountUnknown, drink,
        $"The glass of {drink} is not named or not counted: whether clean glasses run out was not checked.",
        "Name the glass in the spec and count it in the bar kit.");

    public static Finding PairUnknown(string drink, string other) => OfDrink(FindingCatalogue.PairUnknown, drink,
        $"{drink} is to be filmed beside \"{other}\", which is not in the lineup.", "Add that drink, or take the comparison out.");

    public static Finding PinTwice(string drink, string other, bool opener) => OfDrink(FindingCatalogue.PinTwice, drink,
        $"{drink} and {other} are both pinned as the {(opener ? "opener" : "closer")}; {(opener ? drink : other)} is taken.", "Unpin one of them.");

    public static Finding Incomplete(string left, string added) => new(FindingCatalogue.OrderIncomplete, "shoot order",
        left.Length > 0 ? $"Your shoot order leaves out {left}; filmed last here." : $"Your shoot order names {added}, which the lineup does not hold.",
        "Put every drink of the lineup into the order, or let the planner choose.");

    public static Finding Overridden(OverrideCost cost)
    {
        var minutes = cost.MoreMinutes == 0 ? "takes as long as the planner's"
            : string.Create(CultureInfo.InvariantCulture, $"takes {Math.Abs(cost.MoreMinutes)} min {(cost.MoreMinutes > 0 ? "more" : "less")} than the planner's");
        var palate = cost.MorePalatePoints == 0 ? "is as kind to the palate"
            : string.Create(CultureInfo.InvariantCulture, $"is {Math.Abs(cost.MorePalatePoints)} points {(cost.MorePalatePoints > 0 ? "harder on" : "kinder to")} the palate");
        var broken = cost.Broken.Count == 0 ? "breaks no rule" : "breaks: " + string.Join("; ", cost.Broken);
        return new(FindingCatalogue.OrderOverridden, "shoot order", $"Your own order {minutes}, {palate} and {broken}.", "Keep it, or clear it to let the planner choose.");
    }

    public static Finding Unproven(Level level) => new(FindingCatalogue.PlanUnproven, "shoot order",
        string.Create(CultureInfo.InvariantCulture, $"\"{level.Aim}\" reached {level.Value} {level.Unit}; it is only known that none can do better than {level.Bound}."),
        "Allow more effort, or take the order as it is.");

    public static Finding Nothing() => new(FindingCatalogue.NothingToShoot, "lineup", "The lineup is empty, so there is no shoot day to plan.", "Add a drink to the lineup.");

    public static Finding NotMade() => new(FindingCatalogue.PlanNotMade, "shoot order", "The planner was stopped, or its effort ran out, before it found any order.", "Try again, or allow more effort.");

    public static Finding CallNotFixed() => new(FindingCatalogue.CallNotFixed, "call", "The call time is not fixed, so every hour is counted from the call.", "Give the episode a shoot date and a call time.");

    private static Finding OfDrink(FindingKind kind, string drink, string message, string remedy) => new(kind, drink, message, remedy) { Drink = drink };

    private static Finding OfPrep(FindingKind kind, string? drink, string prep, string message, string remedy) =>
        new(kind, drink ?? prep, message, remedy) { Drink = drink, Ingredient = prep };
}
