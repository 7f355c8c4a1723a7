using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting;

/// <summary>What of a drink matters to a shoot day's order: how strong, how sweet, how lasting on the palate.</summary>
/// <param name="Millilitres">What is poured, before ice.</param>
/// <param name="EthanolMillilitres">Pure alcohol in it.</param>
/// <param name="SugarGrams">Sugar in it.</param>
/// <param name="Lingers">Whether salt, chilli or smoke in it dulls what is tasted after it.</param>
internal sealed record DrinkTraits(double Millilitres, double EthanolMillilitres, double SugarGrams, bool Lingers)
{
    /// <summary>Strength before ice, in whole percent.</summary>
    public int StrengthPercent => Millilitres > 0 ? (int)Math.Round(100 * EthanolMillilitres / Millilitres) : 0;

    /// <summary>Sugar before ice, in whole grams to 100 ml.</summary>
    public int SugarPer100 => Millilitres > 0 ? (int)Math.Round(100 * SugarGrams / Millilitres) : 0;

    public static DrinkTraits Of(Spec spec, Bar bar, Convention convention, FeaturedBottle? bottle)
    {
        double volume = 0, ethanol = 0, sugar = 0;
        var lingers = spec.Tags.Any(tag => tag is "smoky" or "smoke" or "spicy" or "salty");
        foreach (var line in spec.Lines.Where(line => !line.Optional))
        {
            bar.Ingredients.TryGet(line.Ingredient, out var ingredient);
            lingers |= (ingredient?.Kind is IngredientKind.Salt && line.Use is LineUse.Rimmed) || ingredient?.Hazards.Contains(Hazard.Chilli) == true;
            if (line.Use is LineUse.Rimmed or LineUse.Rinsed || line.Planned?.InMillilitres(convention, bar.House.BarSizes) is not { } poured)
                continue;
            var millilitres = poured.ToDouble();
            var strength = bottle is not null && !bottle.Ingredient.IsEmpty && bottle.Ingredient == line.Ingredient ? bottle.Strength ?? ingredient?.Composition.Strength : ingredient?.Composition.Strength;
            volume += millilitres;
            ethanol += millilitres * (strength?.Share ?? 0);
            sugar += millilitres * (ingredient?.Composition.SugarGramsPer100Millilitres ?? 0) / 100;
        }

        return new(volume, ethanol, sugar, lingers);
    }
}
