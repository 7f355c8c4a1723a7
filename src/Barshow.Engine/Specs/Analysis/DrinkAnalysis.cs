using Barshow.Engine.Findings;
using Barshow.Engine.Ingredients.Alcohol;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>What a drink comes to: how much, how strong, how sweet, how sour, and how full its glass is.</summary>
/// <remarks>Volumes add up: the shrinking of alcohol with water, under 0.5 % at the strengths of drinks, is left out as in bar arithmetic.
/// Single values stand for the middle of the ranges beside them.</remarks>
public sealed record DrinkAnalysis
{
    /// <summary>The drink, by name.</summary>
    public required string Drink { get; init; }

    /// <summary>What each line adds, in the spec's order.</summary>
    public required IReadOnlyList<LineContent> Lines { get; init; }

    /// <summary>Millilitres in the tin before ice: what is mixed or muddled, and nothing that is topped, floated or rinsed.</summary>
    public required double TinMillilitres { get; init; }

    /// <summary>Alcohol by volume in the tin before ice, 0 to 1; 0 when the tin is empty.</summary>
    public required double StartStrength { get; init; }

    /// <summary>How much water the ice adds.</summary>
    public required Dilution Dilution { get; init; }

    /// <summary>Millilitres of water from ice.</summary>
    public required Interval WaterMillilitres { get; init; }

    /// <summary>Millilitres that top the drink up: as stated, or what an open "top" really amounts to.</summary>
    public required Interval ToppedMillilitres { get; init; }

    /// <summary>Millilitres floated or left by a rinse.</summary>
    public required double FloatedMillilitres { get; init; }

    /// <summary>Millilitres in the glass as served, without ice.</summary>
    public required Interval ServedMillilitres { get; init; }

    /// <summary>Alcohol by volume as served, 0 to 1.</summary>
    public required Interval ServedStrength { get; init; }

    /// <summary>Millilitres of ethanol in the whole drink.</summary>
    public required double EthanolMillilitres { get; init; }

    /// <summary>Grams of ethanol in the whole drink.</summary>
    public double EthanolGrams => EthanolMillilitres * Ethanol.GramsPerMillilitre;

    /// <summary>How many standard drinks that is.</summary>
    public StandardDrinks StandardDrinks => new(EthanolMillilitres);

    /// <summary>Grams of sugar in the whole drink.</summary>
    public required double SugarGrams { get; init; }

    /// <summary>Grams of acid, as citric, in the whole drink.</summary>
    public required double AcidGrams { get; init; }

    /// <summary>Grams of sugar in 100 ml as served.</summary>
    public required Interval SugarGramsPer100Millilitres { get; init; }

    /// <summary>Grams of acid in 100 ml as served.</summary>
    public required Interval AcidGramsPer100Millilitres { get; init; }

    /// <summary>Grams of sugar to one gram of acid; null without acid.</summary>
    public double? SugarToAcid => AcidGrams > 0 ? SugarGrams / AcidGrams : null;

    /// <summary>The melt that heat balance demands, as a cross-check of the dilution; null where nothing meets ice.</summary>
    public HeatBalance? HeatBalance { get; init; }

    /// <summary>How full the glass is; null when the bar kit knows no such glass.</summary>
    public WashLine? WashLine { get; init; }

    /// <summary>Ingredients, as the spec names them, whose composition is not known wholly and that are counted as nothing in what is missing.</summary>
    public required IReadOnlyList<string> Unknown { get; init; }

    /// <summary>What the analysis has to say.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}
