using Barshow.Engine.Episodes;
using Barshow.Engine.Episodes.Claims;
using Barshow.Engine.Featured;
using Barshow.Engine.Ingredients;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Planning.Lineup;

/// <summary>Puts the question that an episode asks of its library.</summary>
public static class LineupQuestions
{
    /// <summary>How many drinks are asked for where neither the title nor the lineup says.</summary>
    public const int UsualCount = 8;

    /// <summary>The question of an episode: its bottle, its takes, the house's remake rule and kit, as many drinks as the title promises.</summary>
    /// <param name="episode">The episode; the drinks of its lineup join the catalogue as this episode makes them.</param>
    /// <param name="bar">What it is looked up in.</param>
    /// <param name="library">The drinks of the house.</param>
    /// <param name="log">What was featured; this episode's own features do not count against it.</param>
    /// <param name="day">The day the episode is shown.</param>
    public static LineupQuestion For(Episode episode, Bar bar, IReadOnlyList<Spec> library, FeaturedLog log, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(bar);
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(log);
        Spec[] catalogue = [.. episode.Lineup.Select(drink => drink.Spec), .. library];
        return new()
        {
            Bar = bar,
            Catalogue = catalogue,
            Count = CountOf(episode),
            Bottle = BottleOf(episode, bar),
            BaseSwaps = true,
            Takes = Math.Max(1, episode.Takes),
            Convention = episode.Convention,
            LastFeatured = LastFeatured(catalogue, log, bar.Ingredients, episode.Slug, day),
            Date = day,
            FreshMonths = bar.House.RemakeMonths > 0 ? bar.House.RemakeMonths : null,
            GlassStock = bar.Kit.Glasses.Any(glass => glass.Count > 0),
            ToolStock = bar.Kit.Tools.Any(tool => tool.Count > 0),
        };
    }

    /// <summary>How many drinks: what the title promises, else as many as the lineup has, else <see cref="UsualCount"/>.</summary>
    public static int CountOf(Episode episode)
    {
        ArgumentNullException.ThrowIfNull(episode);
        return ClaimReader.Read(episode.Title).FirstOrDefault(claim => claim.Kind is ClaimKind.Drinks)?.Number
            ?? (episode.Lineup.Count > 0 ? episode.Lineup.Count : UsualCount);
    }

    /// <summary>When each drink was last featured as the same drink, under whatever name.</summary>
    public static IReadOnlyDictionary<Slug, DateOnly> LastFeatured(IReadOnlyList<Spec> catalogue, FeaturedLog log, IngredientShelf shelf, Slug except, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(log);
        var earlier = new FeaturedLog([.. log.Features.Where(feature => feature.Date <= day)]);
        var last = new Dictionary<Slug, DateOnly>();
        foreach (var spec in catalogue.DistinctBy(spec => spec.Slug))
        {
            var same = FeaturedMatcher.Match(spec, earlier, shelf, except).Where(match => match.Kinship is Kinship.SameDrink).Select(match => (DateOnly?)match.Feature.Date).Max();
            if (same is { } date)
                last[spec.Slug] = date;
        }

        return last;
    }

    private static FeaturedBottle? BottleOf(Episode episode, Bar bar) => episode.Bottle is { } bottle
        ? bottle with { Ingredient = bottle.Ingredient.IsEmpty ? bar.Ingredients.Named(bottle.Name)?.Slug ?? Slug.Of(bottle.Name) : bottle.Ingredient }
        : null;
}
