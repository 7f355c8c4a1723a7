namespace Barshow.Engine.Findings;

/// <content>Ingredients and house preps.</content>
public static partial class FindingCatalogue
{
    /// <summary>A house prep that states more than goes in.</summary>
    public static FindingKind PrepYieldTooLarge { get; } = new("prep-yield-too-large", Severity.Fix,
        "The yield that a house prep states is over a tenth more than its liquids with sugar and salt dissolved in them.");
}
