using Barshow.Engine.Episodes;

namespace Barshow.Engine.Planning.Demand;

/// <summary>How many times a drink is made, and what for.</summary>
/// <param name="Takes">On camera.</param>
/// <param name="TastedSwapOuts">Doubles that are the real drink.</param>
/// <param name="Rehearsals">Before the day.</param>
/// <param name="UntastedSwapOuts">Doubles of water or cold tea: they take ice and garnish, nothing that is poured.</param>
/// <remarks>Nothing is made more than a thousand times for one film, whatever is typed.</remarks>
public sealed record Makings(int Takes, int TastedSwapOuts = 0, int Rehearsals = 0, int UntastedSwapOuts = 0)
{
    /// <summary>How often the real drink is made.</summary>
    public int Real => Takes + TastedSwapOuts + Rehearsals;

    /// <summary>How often the drink is dressed: garnished, and iced in its glass.</summary>
    public int Dressed => Real + UntastedSwapOuts;

    /// <summary>How often a drink of an episode is made.</summary>
    /// <remarks>The viewer makes it once. A technique new to the presenter earns one rehearsal more than the house's habit.</remarks>
    public static Makings Of(LineupDrink drink, Episode episode, House house, DemandFor demandFor) => demandFor is DemandFor.Viewer
        ? new(1)
        : new(
            Math.Min(Most, episode.TakesOf(drink)),
            Math.Clamp(drink.TastedSwapOuts, 0, Most),
            Math.Clamp(house.RehearsalsPerDrink, 0, Most) + (drink.NewTechnique ? 1 : 0),
            Math.Clamp(drink.UntastedSwapOuts, 0, Most));

    private const int Most = 1000;
}
