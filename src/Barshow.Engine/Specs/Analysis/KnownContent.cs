using Barshow.Engine.Ingredients;
using Barshow.Engine.Ingredients.Preps;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>What is known of an ingredient's composition, with what its kind settles: a spirit holds no sugar, a juice no alcohol.</summary>
internal readonly record struct KnownContent(double Strength, double SugarPerMillilitre, double AcidPerMillilitre, bool StrengthIsMissing, bool SugarIsMissing, bool AcidIsMissing)
{
    public bool RestIsMissing => SugarIsMissing || AcidIsMissing;

    public static KnownContent Of(Ingredient ingredient, AnalysisSetting setting)
    {
        var composition = ingredient.Composition;
        if (ingredient.Prep is not null && (composition.Strength is null || composition.SugarGramsPer100Millilitres is null || composition.AcidGramsPer100Millilitres is null))
            composition = HousePrepYield.Of(ingredient, setting.Ingredients, setting.Convention, setting.Sizes).Composition;
        return new(
            composition.Strength?.Share ?? 0,
            (composition.SugarGramsPer100Millilitres ?? 0) / 100,
            (composition.AcidGramsPer100Millilitres ?? 0) / 100,
            composition.Strength is null && ingredient.Kind.HoldsAlcohol(),
            composition.SugarGramsPer100Millilitres is null && MayHoldSugar(ingredient.Kind),
            composition.AcidGramsPer100Millilitres is null && MayHoldAcid(ingredient.Kind));
    }

    private static bool MayHoldSugar(IngredientKind kind) => kind is
        IngredientKind.Liqueur or IngredientKind.FortifiedWine or IngredientKind.Wine or IngredientKind.Juice or IngredientKind.Syrup or IngredientKind.Mixer or IngredientKind.Other;

    private static bool MayHoldAcid(IngredientKind kind) => kind is IngredientKind.Juice or IngredientKind.Other;
}
