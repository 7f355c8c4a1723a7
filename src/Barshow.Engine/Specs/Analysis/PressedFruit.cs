using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>Juice that a line sets free from whole fruit: pressed, squeezed or muddled.</summary>
/// <param name="Juice">The juice.</param>
/// <param name="Millilitres">How much of it.</param>
internal readonly record struct PressedJuice(Ingredient Juice, double Millilitres);

/// <summary>Reckons the juice of counted fruit.</summary>
internal static class PressedFruit
{
    /// <summary>The juice of an amount of fruit, or of juice given by the fruit; null when none is set free or the house does not know how much.</summary>
    public static PressedJuice? Of(Ingredient ingredient, Measure? measure, LineUse use, AnalysisSetting setting)
    {
        if (measure?.Middle is not { } amount || (measure.Unit is not null && measure.Unit.Kind is not UnitKind.Count))
            return null;
        if (ingredient.Kind is IngredientKind.Juice)
        {
            var fruit = setting.Ingredients.All.FirstOrDefault(whole => whole.Produce?.Juice == ingredient.Slug);
            return fruit is null ? null : Of(fruit, ingredient, measure.Unit, amount.ToDouble(), share: 1);
        }

        if (ingredient.Produce is not { JuiceMillilitres: > 0 } || !setting.Ingredients.TryGet(ingredient.Produce.Juice, out var juice))
            return null;
        var squeezed = measure.Open is OpenMeasure.Squeeze;
        return use is LineUse.Muddled || squeezed
            ? Of(ingredient, juice, measure.Unit, amount.ToDouble(), ingredient.Produce.MuddledShare)
            : null;
    }

    private static PressedJuice? Of(Ingredient fruit, Ingredient juice, Unit? cut, double count, double share)
    {
        var produce = fruit.Produce!;
        if (cut is null || cut == Unit.Piece)
            return new(juice, count * produce.JuiceMillilitres * share);
        return produce.Cuts.FirstOrDefault(known => known.Cut == cut) is { SparesJuice: false } yield
            ? new(juice, count / yield.PerPiece * produce.JuiceMillilitres * share)
            : null;
    }
}
