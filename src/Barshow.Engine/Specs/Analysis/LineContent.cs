using Barshow.Engine.Ingredients;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>Where a line ends up.</summary>
public enum LinePlace
{
    /// <summary>In the tin, the mixing glass or the glass it is built in: it meets the ice that dilutes.</summary>
    Tin,

    /// <summary>On top, after dilution.</summary>
    Top,

    /// <summary>Floated on the drink, or left in the glass by a rinse.</summary>
    Float,

    /// <summary>Not drunk: rims, leaves that are strained out.</summary>
    Outside,
}

/// <summary>What one line adds to a drink.</summary>
/// <param name="Line">The line.</param>
/// <param name="Ingredient">The ingredient it is; null when the house does not know it.</param>
/// <param name="Place">Where it ends up.</param>
/// <param name="Millilitres">Its volume; for an open top 0, since the wash line decides it.</param>
/// <param name="StrengthShare">Its alcohol by volume, 0 to 1; 0 when that is not known.</param>
/// <param name="SugarPerMillilitre">Grams of sugar in one of its millilitres; 0 when that is not known.</param>
/// <param name="AcidPerMillilitre">Grams of acid in one of its millilitres; 0 when that is not known.</param>
/// <param name="IsOpenTop">Whether it is topped up to the wash line without a stated amount.</param>
public sealed record LineContent(
    SpecLine Line, Ingredient? Ingredient, LinePlace Place, double Millilitres, double StrengthShare, double SugarPerMillilitre, double AcidPerMillilitre, bool IsOpenTop)
{
    /// <summary>Millilitres of ethanol, without an open top.</summary>
    public double EthanolMillilitres => Millilitres * StrengthShare;

    /// <summary>Grams of sugar, without an open top.</summary>
    public double SugarGrams => Millilitres * SugarPerMillilitre;

    /// <summary>Grams of acid, without an open top.</summary>
    public double AcidGrams => Millilitres * AcidPerMillilitre;
}
