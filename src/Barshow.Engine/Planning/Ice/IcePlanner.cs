using Barshow.Engine.Episodes;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Planning.Demand;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Planning.Ice;

/// <summary>Counts the ice of an episode: what a drink is made on, and fresh ice in its glass.</summary>
public static class IcePlanner
{
    /// <summary>Grams of cubes in the tin or the mixing glass. Common practice, no source: 200 to 250 g a shake or stir.</summary>
    public const double MixingGrams = 225;

    /// <summary>Grams of crushed ice that a blended drink is made with. Common practice, no source.</summary>
    public const double BlendedGrams = 150;

    /// <summary>Millilitres to the wash line of a glass the kit does not know. Common practice, no source.</summary>
    public const double UnknownGlassMillilitres = 250;

    /// <summary>The ice and the water of an episode.</summary>
    public static IceList Plan(Episode episode, Bar bar, DemandFor demandFor)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        var kinds = episode.Lineup
            .SelectMany(drink => IceOf(drink, Makings.Of(drink, episode, bar.House, demandFor), bar.Kit))
            .GroupBy(part => part.Kind)
            .OrderBy(group => group.Key)
            .Select(group => new IceDemand(group.Key, group.Sum(part => part.Part.Grams), [.. group.GroupBy(part => (part.Part.Drink, part.Part.Name)).Select(drink => new IcePart(drink.Key.Drink, drink.Key.Name, drink.Sum(part => part.Part.Grams)))]));
        var water = DemandPlanner.Of(episode, bar, demandFor).Ingredients
            .Where(need => need.Ingredient?.Kind is IngredientKind.Water && !IsIce(need.Ingredient))
            .Sum(need => need.Millilitres + need.Grams);
        return new([.. kinds], water);
    }

    private static IEnumerable<(IceKind Kind, IcePart Part)> IceOf(LineupDrink drink, Makings makings, BarKit kit)
    {
        IcePart Part(double grams) => new(drink.Spec.Slug, drink.Name, grams);
        var method = drink.Spec.Method?.Kind;
        if (method is MethodKind.Shaken or MethodKind.Stirred or MethodKind.Thrown or MethodKind.MuddledAndShaken)
            yield return (IceKind.Cubed, Part(MixingGrams * makings.Real));
        if (method is MethodKind.Blended)
            yield return (IceKind.Crushed, Part(BlendedGrams * makings.Real));
        if (drink.Spec.Serve.Ice is IceKind.None)
            yield break;
        var line = kit.TryGetGlass(drink.Spec.Serve.Glass, out var glass) ? glass.BrimfulMillilitres * (drink.Spec.Serve.WashLine ?? glass.UsualWashLine) : UnknownGlassMillilitres;
        yield return (drink.Spec.Serve.Ice, Part(IceFill.UsualGrams(drink.Spec.Serve.Ice, line).High * makings.Dressed));
    }

    private static bool IsIce(Ingredient ingredient) => ingredient.Slug.Text.EndsWith("ice", StringComparison.Ordinal);
}
