using Barshow.Engine.Episodes;

namespace Barshow.Engine.Planning.Demand;

/// <summary>How many times a drink is made, and what for.</summary>
/// <param name="Takes">On camera.</param>
/// <param name="TastedSwapOuts">Doubles that are the real drink.</param>
/// <param name="Rehearsals">Before the day.</param>
/// <param name="UntastedSwapOuts">Doubles of water or cold tea: they take ice and garnish, nothing that is poured.</param>
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
            episode.TakesOf(drink),
            Math.Max(0, drink.TastedSwapOuts),
            Math.Max(0, house.RehearsalsPerDrink) + (drink.NewTechnique ? 1 : 0),
            Math.Max(0, drink.UntastedSwapOuts));
}
