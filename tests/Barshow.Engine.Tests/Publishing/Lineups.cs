using Barshow.Engine.Episodes;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Tests.Publishing;

/// <summary>Episodes with fair defaults for the tests of what goes out.</summary>
internal static class Lineups
{
    public static Episode Timed(double? length, params (string Name, double? Seconds)[] drinks) => new()
    {
        Slug = Slug.Of("salt lane evening"),
        Title = "A salt lane evening",
        FilmLengthSeconds = length,
        Lineup = [.. drinks.Select(drink => Drink(drink.Name) with { FilmSeconds = drink.Seconds })],
    };

    public static LineupDrink Drink(string name) => new() { Spec = new Spec { Slug = Slug.Of(name), Name = name } };
}
