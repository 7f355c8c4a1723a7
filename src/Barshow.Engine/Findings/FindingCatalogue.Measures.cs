namespace Barshow.Engine.Findings;

/// <content>Reading and writing amounts.</content>
public static partial class FindingCatalogue
{
    /// <summary>A line could not be read as an amount and an ingredient.</summary>
    public static FindingKind LineUnreadable { get; } = new("line-unreadable", Severity.Fix,
        "The line holds no amount, unit or name that could be understood; it is kept as it was typed.");

    /// <summary>An amount that cannot be poured: nought, below nought, divided by nought or beyond any vessel.</summary>
    public static FindingKind AmountImpossible { get; } = new("amount-impossible", Severity.Stop,
        "The amount is nought, below nought, divided by nought or beyond any vessel at a bar.");

    /// <summary>Ounces and millilitres beside one another that are not the same amount.</summary>
    public static FindingKind PairDisagrees { get; } = new("pair-disagrees", Severity.Stop,
        "The ounces and the millilitres of one callout differ by more than 3 % of the converted ounces.");

    /// <summary>No mark of a jigger shows the amount.</summary>
    public static FindingKind NotPourable { get; } = new("not-pourable", Severity.Fix,
        "The amount lies on no grid that a jigger shows: quarters and thirds of an ounce, steps of 2.5 ml.");

    /// <summary>An amount on its own grid that has no agreeing amount on the other.</summary>
    public static FindingKind NoAgreeingPair { get; } = new("no-agreeing-pair", Severity.Fix,
        "The amount can be poured, but no quarter or third of an ounce, or no mark in millilitres, comes within 3 % of it, so it cannot be said truly in both units.");

    /// <summary>A slip of the pen was read as a person would read it.</summary>
    public static FindingKind ReadingRepaired { get; } = new("reading-repaired", Severity.Note,
        "A misspelled unit or a mistyped number was read as a person would read it.");

    /// <summary>An abbreviation that fits two units.</summary>
    public static FindingKind UnitAmbiguous { get; } = new("unit-ambiguous", Severity.Fix,
        "The abbreviation fits two units; both are named and the commoner one is used.");

    /// <summary>A number that is read as it stands and may have been meant otherwise.</summary>
    public static FindingKind AmountDoubtful { get; } = new("amount-doubtful", Severity.Fix,
        "The number is read as it stands, but another is likely to be meant: 11/2 for 1½, 5-3 for 3-5.");

    /// <summary>A line with a second amount, or a second ingredient, that is no other side of the first.</summary>
    public static FindingKind TwoInOneLine { get; } = new("two-in-one-line", Severity.Fix,
        "The line holds two amounts or two ingredients; the first is read and the rest is kept as a note.");

    /// <summary>No pours with the jiggers at hand make the amount.</summary>
    public static FindingKind OutOfJiggersReach { get; } = new("out-of-jiggers-reach", Severity.Fix,
        "No pours with the jiggers of the kit come within the smaller of 1 ml and 3 % of the amount.");
}
