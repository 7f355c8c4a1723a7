using System.Globalization;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>Everything the analysis has to say, in one place.</summary>
internal static class AnalysisSentences
{
    public static Finding IngredientUnknown(Spec spec, SpecLine line) => OnLine(FindingCatalogue.CompositionUnknown, spec, line,
        $"The house does not know \"{line.Name}\", so it counts as nothing in strength, sugar and acid.",
        "Add it to the ingredients, or name it as the house does.");

    public static Finding StrengthUnknown(Spec spec, SpecLine line, double millilitres) => OnLine(FindingCatalogue.StrengthUnknown, spec, line,
        millilitres > 0
            ? $"The strength of {line.Name} is not known, so its {Number(millilitres)} ml count as without alcohol and the drink comes out too weak."
            : $"The strength of {line.Name} is not known, so it counts as without alcohol and the drink comes out too weak.",
        "Type the strength from its label.");

    public static Finding SugarAndAcidUnknown(Spec spec, SpecLine line, KnownContent known) => OnLine(FindingCatalogue.CompositionUnknown, spec, line,
        $"The {(known.SugarIsMissing ? known.AcidIsMissing ? "sugar and acid" : "sugar" : "acid")} of {line.Name} {(known.SugarIsMissing && known.AcidIsMissing ? "are" : "is")} not known and counts as nothing.",
        "Type its figures in the ingredients if the balance of this drink matters.");

    public static Finding AmountNotCounted(Spec spec, SpecLine line, Measure? measure) => OnLine(FindingCatalogue.AmountNotCounted, spec, line,
        measure is null
            ? $"No amount is given for {line.Name}, so it counts as nothing."
            : $"\"{measure}\" of {line.Name} is no volume the house knows, so it counts as nothing.",
        "Give the amount in ounces or millilitres.");

    public static Finding DilutionNotCounted(Spec spec) => OnDrink(FindingCatalogue.DilutionNotCounted, spec,
        $"No method is given for {spec.Name}, so its strength after ice was not worked out.",
        "Say how it is made: built, stirred, shaken, thrown, swizzled, blended or layered.");

    public static Finding WashLineNotChecked(Spec spec) => OnDrink(FindingCatalogue.WashLineNotChecked, spec,
        spec.Serve.Glass.IsEmpty
            ? $"No glass is named for {spec.Name}, so its wash line was not checked."
            : $"The bar kit has no glass \"{spec.Serve.Glass}\", so the wash line of {spec.Name} was not checked.",
        "Name a glass of the bar kit, or add the glass with its brimful volume.");

    public static Finding WashLineOver(Spec spec, WashLine line, double filled, BarKit kit) => OnDrink(FindingCatalogue.WashLineOver, spec,
        $"{spec.Name} comes to {Apart(filled, line.Glass.BrimfulMillilitres)} ml{WithIce(line)}, and the {LowerName(line)} holds {Apart(line.Glass.BrimfulMillilitres, filled)} ml to its brim.",
        OtherGlass(line, kit, glass => glass.BrimfulMillilitres * glass.UsualWashLine >= filled) is { } larger
            ? $"Use the {larger.Name.ToLowerInvariant()}, {Number(larger.BrimfulMillilitres)} ml, or make a smaller drink."
            : "Use a larger glass, or make a smaller drink.");

    public static Finding WashLineBrimming(Spec spec, WashLine line, double filled) => OnDrink(FindingCatalogue.WashLineBrimming, spec,
        $"With the most dilution {spec.Name} comes to {Apart(filled, line.Glass.BrimfulMillilitres)} ml{WithIce(line)}, and the {LowerName(line)} holds {Apart(line.Glass.BrimfulMillilitres, filled)} ml to its brim.",
        line.IceGramsToTheLine is { } grams
            ? $"Use about {Number(grams)} g of ice, or pour into a larger glass."
            : "Try it once before the day, or pour into a larger glass.");

    public static Finding WashLineLow(Spec spec, WashLine line, BarKit kit)
    {
        var filled = line.Level.Middle * line.Glass.BrimfulMillilitres;
        var smaller = OtherGlass(line, kit, glass => glass.BrimfulMillilitres < line.Glass.BrimfulMillilitres && glass.BrimfulMillilitres * glass.UsualWashLine >= filled);
        return OnDrink(FindingCatalogue.WashLineLow, spec,
            $"{spec.Name} fills the {LowerName(line)} to {Percent(line.Level.High)} of its brim at most; its wash line is {Percent(line.Wanted)}.",
            smaller is not null && line.IceGrams.High <= 0 ? $"Use the {smaller.Name.ToLowerInvariant()}, {Number(smaller.BrimfulMillilitres)} ml, or make a larger drink."
            : line.IceGrams.High > 0 ? "Use more ice or a smaller glass."
            : "Use a smaller glass, or make a larger drink.");
    }

    public static Finding TopDoesNotFit(Spec spec, WashLine line)
    {
        var room = Math.Max(0, line.RoomForTopMillilitres.Middle);
        return OnDrink(FindingCatalogue.TopDoesNotFit, spec,
            $"The {Number(line.StatedTopMillilitres!.Value)} ml that top up {spec.Name} do not fit: with the usual ice the {LowerName(line)} has room for about {Number(room)} ml.",
            line.IceGramsForStatedTop is { } grams
                ? $"Use {Number(grams)} g of ice instead of {Number(line.IceGrams.Middle)} g, or top up with {Number(room)} ml."
                : $"Use a larger glass, or top up with {Number(room)} ml.");
    }

    public static Finding TopHasNoRoom(Spec spec, WashLine line) => OnDrink(FindingCatalogue.TopHasNoRoom, spec,
        $"{spec.Name} stands {Number(-line.RoomForTopMillilitres.Middle)} ml above the wash line of the {LowerName(line)} before it is topped up.",
        "Use a larger glass or less ice, or leave out the top-up.");

    // What the bar itself says will do comes first, then the smallest of the same build.
    private static Glass? OtherGlass(WashLine line, BarKit kit, Func<Glass, bool> holds) =>
        kit.Glasses.Where(glass => glass.Slug != line.Glass.Slug && glass.IsStemmed == line.Glass.IsStemmed && holds(glass))
            .OrderBy(glass => line.Glass.Instead.Contains(glass.Slug) ? 0 : 1).ThenBy(glass => glass.BrimfulMillilitres).FirstOrDefault();

    private static string WithIce(WashLine line) => line.IceGrams.High > 0 ? " with its ice" : "";

    private static string LowerName(WashLine line) => line.Glass.Name.ToLowerInvariant();

    private static string Number(double value) => value.ToString(value < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);

    // Two amounts that differ are not written as the same whole number.
    private static string Apart(double value, double other) => Number(value) == Number(other) ? value.ToString("0.0", CultureInfo.InvariantCulture) : Number(value);

    private static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";

    private static Finding OnDrink(FindingKind kind, Spec spec, string message, string remedy) => new(kind, spec.Name, message, remedy) { Drink = spec.Name };

    private static Finding OnLine(FindingKind kind, Spec spec, SpecLine line, string message, string remedy) =>
        new(kind, line.Name, message, remedy) { Drink = spec.Name, Ingredient = line.Name, Line = line.BriefLine };
}
