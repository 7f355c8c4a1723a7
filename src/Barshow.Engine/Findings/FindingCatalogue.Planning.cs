namespace Barshow.Engine.Findings;

/// <content>Planning: demand, baskets, bottles, claims and the lineup.</content>
public static partial class FindingCatalogue
{
    /// <summary>An ingredient that the house does not know.</summary>
    public static FindingKind IngredientUnknown { get; } = new("ingredient-unknown", Severity.Fix,
        "The house does not know the ingredient, so its packs, strength and allergens are unknown; it is listed to buy under the name in the spec.");

    /// <summary>A garnish that cannot be counted.</summary>
    public static FindingKind GarnishNotCounted { get; } = new("garnish-not-counted", Severity.Note,
        "The garnish names no ingredient of the house, so nothing is bought for it.");

    /// <summary>An open amount was given an amount for planning.</summary>
    public static FindingKind OpenAmountAssumed { get; } = new("open-amount-assumed", Severity.Note,
        "The spec leaves an amount to the hand; a usual amount is planned.");

    /// <summary>A spec in parts was given a size.</summary>
    public static FindingKind PartsAssumed { get; } = new("parts-assumed", Severity.Note,
        "The spec is written in parts; a usual size of the drink before ice is planned.");

    /// <summary>A house prep needs itself.</summary>
    public static FindingKind PrepInItself { get; } = new("prep-in-itself", Severity.Stop,
        "The house prep is made, on some way, from itself, so what it takes cannot be counted.");

    /// <summary>A house prep whose yield cannot be told.</summary>
    public static FindingKind PrepYieldUnknown { get; } = new("prep-yield-unknown", Severity.Fix,
        "The house prep states no yield and none follows from its inputs, so what it takes is not counted.");

    /// <summary>Untasted swap-outs in a sponsored film.</summary>
    public static FindingKind UntastedBesideSponsor { get; } = new("untasted-beside-sponsor", Severity.Fix,
        "A double of water or cold tea must not be shown as the sponsor's product or as the recipe's true look.");

    /// <summary>How many pieces a fruit gives was assumed.</summary>
    public static FindingKind CutYieldAssumed { get; } = new("cut-yield-assumed", Severity.Note,
        "The ingredient does not say how many of a cut one piece gives; a usual number is planned.");

    /// <summary>No pack is known.</summary>
    public static FindingKind PackUnknown { get; } = new("pack-unknown", Severity.Note,
        "No pack of the ingredient is known, so the amount is listed without one.");

    /// <summary>No pack counts in the unit of the demand.</summary>
    public static FindingKind PackInOtherUnit { get; } = new("pack-in-other-unit", Severity.Fix,
        "The packs are measured in a unit that the demand cannot be turned into, so the number of packs is not worked out.");

    /// <summary>A price is missing.</summary>
    public static FindingKind PriceMissing { get; } = new("price-missing", Severity.Note,
        "A pack has no price: the ingredient is planned by the fewest packs, and the cost leaves it out.");

    /// <summary>What is on hand cannot be used.</summary>
    public static FindingKind OnHandNotUsed { get; } = new("on-hand-not-used", Severity.Note,
        "What is on hand is measured in another unit than the demand, so it is not taken off.");

    /// <summary>An amount that makes no sense for buying.</summary>
    public static FindingKind PackEmpty { get; } = new("pack-empty", Severity.Fix,
        "A pack that holds nothing cannot cover any demand; it is left out.");

    /// <summary>No featured bottle.</summary>
    public static FindingKind BottleUnnamed { get; } = new("bottle-unnamed", Severity.Note,
        "The episode names no featured bottle, so the bottle budgets are not worked out.");

    /// <summary>The bottle's size is missing or nought.</summary>
    public static FindingKind BottleSizeUnknown { get; } = new("bottle-size-unknown", Severity.Fix,
        "The featured bottle has no size, so the stated bottle is not checked; 700 ml and 750 ml are.");

    /// <summary>The bottle is in no drink.</summary>
    public static FindingKind BottleUnused { get; } = new("bottle-unused", Severity.Fix,
        "No drink of the lineup pours the featured bottle.");

    /// <summary>Drinks that leave the bottle out.</summary>
    public static FindingKind BottleNotInDrink { get; } = new("bottle-not-in-drink", Severity.Note,
        "A drink of the lineup does not pour the featured bottle.");

    /// <summary>One bottle does not carry the lineup.</summary>
    public static FindingKind BottleTooSmall { get; } = new("bottle-too-small", Severity.Fix,
        "At home, each drink made once, the lineup pours more than one bottle of the stated size holds.");

    /// <summary>The lineup fits one common bottle but not the other.</summary>
    public static FindingKind BottleFitsOneSize { get; } = new("bottle-fits-one-size", Severity.Note,
        "The lineup fits a bottle of 750 ml but not one of 700 ml; viewers buy both.");

    /// <summary>What the shoot pours.</summary>
    public static FindingKind BottlesForShoot { get; } = new("bottles-for-shoot", Severity.Note,
        "How many bottles the shoot needs and how many retakes the last one still gives. It breaks no claim.");

    /// <summary>A promise of the title does not hold.</summary>
    public static FindingKind ClaimBroken { get; } = new("claim-broken", Severity.Stop,
        "The title promises something countable that the lineup does not keep, each drink made once at home.");

    /// <summary>A promise of the title that could not be checked.</summary>
    public static FindingKind ClaimNotChecked { get; } = new("claim-not-checked", Severity.Note,
        "The title promises something that cannot be checked yet.");

    /// <summary>A basket planned by packs, not by money.</summary>
    public static FindingKind PlannedByCount { get; } = new("planned-by-count", Severity.Note,
        "Prices are missing, so the lineup is planned by the number of packs instead of their cost.");

    /// <summary>A limit of money without prices.</summary>
    public static FindingKind MoneyNotChecked { get; } = new("money-not-checked", Severity.Fix,
        "The limit of the basket's cost was not checked, because prices are missing.");

    /// <summary>A must-have that is not in the catalogue.</summary>
    public static FindingKind MustHaveUnknown { get; } = new("must-have-unknown", Severity.Fix,
        "A drink that must be in the lineup is not in the catalogue.");

    /// <summary>No lineup keeps every requirement.</summary>
    public static FindingKind LineupImpossible { get; } = new("lineup-impossible", Severity.Fix,
        "No lineup keeps every requirement; the fewest to relax are named.");

    /// <summary>A run that was stopped.</summary>
    public static FindingKind LineupStopped { get; } = new("lineup-stopped", Severity.Note,
        "The planner was stopped: the best lineup found until then is shown, and it cannot be repeated.");

    /// <summary>Nothing found within the work allowed.</summary>
    public static FindingKind LineupNotFound { get; } = new("lineup-not-found", Severity.Fix,
        "Within the work allowed no lineup was found, and it was not proven that there is none.");

    /// <summary>A level without proof.</summary>
    public static FindingKind LineupNotProven { get; } = new("lineup-not-proven", Severity.Note,
        "The lineup keeps every requirement, but it was not proven that none is better.");

    /// <summary>A lineup that does not stand up to plain counting.</summary>
    public static FindingKind LineupBreaks { get; } = new("lineup-breaks", Severity.Stop,
        "Counted again without the solver, the lineup does not keep a requirement.");

    /// <summary>A stand-in whose content is not known.</summary>
    public static FindingKind StandInNotBalanced { get; } = new("stand-in-not-balanced", Severity.Fix,
        "The sugar or the acid of an ingredient is not known, so a swap could not be balanced by it.");
}
