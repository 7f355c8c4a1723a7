using Barshow.Engine.Ingredients;
using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Featured;

/// <summary>What part an ingredient plays in a drink.</summary>
internal enum DrinkRole
{
    Base,
    Citrus,
    Sweet,
    Liqueur,
    Fortified,
    Wine,
    Beer,
    Juice,
    Lengthener,
    Dairy,
    Egg,
    Other,
}

/// <summary>One ingredient's share of a drink.</summary>
/// <param name="Key">The class by which it is compared: white and aged rum are one class.</param>
/// <param name="Name">Its name, for reasons.</param>
/// <param name="Role">The part it plays.</param>
/// <param name="Share">Its share of the liquid before ice, 0 to 1; a lengthener counts a third, since how much is poured is the hand's choice.</param>
internal sealed record ShapePart(string Key, string Name, DrinkRole Role, double Share);

/// <summary>A drink as a vector of ratios over ingredient classes.</summary>
/// <param name="Parts">What is poured, the largest share first.</param>
/// <param name="Marks">What gives the drink its mark without volume: herbs, vegetables, spices.</param>
/// <param name="Rim">Whether the glass has a rim.</param>
/// <param name="Method">The kind of method.</param>
internal sealed record DrinkShape(IReadOnlyList<ShapePart> Parts, IReadOnlyList<string> Marks, bool Rim, MethodGroup Method)
{
    // An open top counts as this much before it is weighed down; common practice, no source.
    private const double OpenTopMillilitres = 90;
    private const double LengthenerWeight = 1.0 / 3;

    // Below this share an ingredient seasons and does not shape: dashes, drops, a barspoon.
    private const double Seasoning = 0.03;

    private const double SugarCubeMillilitres = 5, EggWhiteMillilitres = 30, SourFromGrams = 2;

    public static DrinkShape Of(Spec spec, IngredientShelf shelf)
    {
        var amounts = spec.Lines
            .Where(line => line.Use is not (LineUse.Rimmed or LineUse.Rinsed))
            .Select(line => (Line: line, Ingredient: shelf[line.Ingredient] ?? shelf.Named(line.Name)))
            .Select(pair => (pair.Line, pair.Ingredient, Role: RoleOf(pair.Ingredient), Millilitres: Millilitres(pair.Line, pair.Ingredient)))
            .Where(part => part.Millilitres > 0)
            .Select(part => part with { Millilitres = part.Role == DrinkRole.Lengthener ? part.Millilitres * LengthenerWeight : part.Millilitres })
            .ToList();
        var total = amounts.Sum(part => part.Millilitres);
        var parts = amounts
            .GroupBy(part => KeyOf(part.Line, part.Ingredient))
            .Select(group => new ShapePart(group.Key, (group.First().Ingredient?.Name ?? group.First().Line.Name).ToLowerInvariant(), group.First().Role, group.Sum(part => part.Millilitres) / total))
            .Where(part => part.Share >= Seasoning)
            .OrderByDescending(part => part.Share).ThenBy(part => part.Key, StringComparer.Ordinal)
            .ToList();
        var marks = spec.Lines
            .Where(line => line.Use != LineUse.Rimmed)
            .Select(line => shelf[line.Ingredient] ?? shelf.Named(line.Name))
            .Where(ingredient => ingredient?.Kind is IngredientKind.Herb or IngredientKind.Vegetable or IngredientKind.Spice)
            .Select(ingredient => ingredient!.Name.ToLowerInvariant())
            .Distinct().Order(StringComparer.Ordinal).ToList();
        return new(parts, marks, spec.Lines.Any(line => line.Use == LineUse.Rimmed), GroupOf(spec.Method?.Kind));
    }

    /// <summary>Half the sum of the differences: the share that would have to be exchanged.</summary>
    public static double Distance(DrinkShape one, DrinkShape other, Func<ShapePart, string> by)
    {
        var left = Sums(one, by);
        var right = Sums(other, by);
        return left.Keys.Union(right.Keys).Sum(key => Math.Abs(left.GetValueOrDefault(key) - right.GetValueOrDefault(key))) / 2;
    }

    private static Dictionary<string, double> Sums(DrinkShape shape, Func<ShapePart, string> by)
    {
        var total = shape.Parts.Sum(part => part.Share);
        return shape.Parts.GroupBy(by).ToDictionary(group => group.Key, group => group.Sum(part => part.Share) / total);
    }

    private static double Millilitres(SpecLine line, Ingredient? ingredient)
    {
        var measure = line.ToPublish;
        if (measure?.InMillilitres(Convention.Bar) is { } exact)
            return exact.ToDouble();
        if (measure?.Open is OpenMeasure.Top or OpenMeasure.Fill)
            return OpenTopMillilitres;
        return (measure?.Middle?.ToDouble(), ingredient?.Kind) switch
        {
            (double count, IngredientKind.Sugar) when measure!.Unit == Unit.Cube => count * SugarCubeMillilitres,
            (double count, IngredientKind.Egg) => count * EggWhiteMillilitres,
            (double count, IngredientKind.Fruit) when ingredient!.Produce is { } produce && (measure!.Unit is null || measure.Unit == Unit.Piece) => count * produce.JuiceMillilitres * produce.MuddledShare,
            _ => 0,
        };
    }

    private static string KeyOf(SpecLine line, Ingredient? ingredient) => ingredient switch
    {
        null => NameFolding.Fold(line.Name),
        { Class.Length: > 0 } => ingredient.Class,
        _ => ingredient.Slug.Text,
    };

    private static DrinkRole RoleOf(Ingredient? ingredient) => ingredient?.Kind switch
    {
        IngredientKind.Spirit => DrinkRole.Base,
        IngredientKind.Liqueur => DrinkRole.Liqueur,
        IngredientKind.FortifiedWine => DrinkRole.Fortified,
        IngredientKind.Wine => DrinkRole.Wine,
        IngredientKind.Beer => DrinkRole.Beer,
        IngredientKind.Juice when ingredient.Composition.AcidGramsPer100Millilitres >= SourFromGrams => DrinkRole.Citrus,
        IngredientKind.Juice => DrinkRole.Juice,
        IngredientKind.Fruit => DrinkRole.Citrus,
        IngredientKind.Syrup or IngredientKind.Sugar => DrinkRole.Sweet,
        IngredientKind.Mixer => DrinkRole.Lengthener,
        IngredientKind.Dairy => DrinkRole.Dairy,
        IngredientKind.Egg => DrinkRole.Egg,
        _ => DrinkRole.Other,
    };

    private static MethodGroup GroupOf(MethodKind? method) => method switch
    {
        null => MethodGroup.Unknown,
        MethodKind.Shaken or MethodKind.MuddledAndShaken or MethodKind.Blended => MethodGroup.Shaken,
        MethodKind.Stirred or MethodKind.Thrown => MethodGroup.Stirred,
        _ => MethodGroup.Built,
    };
}

/// <summary>Methods that give the same kind of drink.</summary>
internal enum MethodGroup
{
    Unknown,
    Shaken,
    Stirred,
    Built,
}
