namespace Barshow.Engine.Specs.Reading;

/// <summary>How a drink is served where nothing is said. Common practice, no source.</summary>
public static class ServeHabits
{
    // A larger stemmed glass, as for a spritz, is built on ice.
    private const double SmallStemmedMillilitres = 250;

    /// <summary>The ice in the glass by habit.</summary>
    /// <param name="method">How the drink is made; null when it was not said.</param>
    /// <param name="stemmed">Whether the glass stands on a stem.</param>
    /// <param name="brimfulMillilitres">Millilitres to its brim; null when that is not known.</param>
    public static IceKind IceFor(MethodKind? method, bool stemmed, double? brimfulMillilitres) => method switch
    {
        null or MethodKind.Blended or MethodKind.Layered => IceKind.None,
        MethodKind.Swizzled => IceKind.Crushed,
        MethodKind.Built or MethodKind.MuddledAndBuilt => stemmed && brimfulMillilitres is null or < SmallStemmedMillilitres ? IceKind.None : IceKind.Cubed,
        _ => stemmed ? IceKind.None : IceKind.Cubed,
    };

    /// <summary>How the drink leaves the tin by habit: stirred and thrown through one strainer, shaken without ice in the glass through a fine sieve too.</summary>
    public static Straining StrainFor(MethodKind? method, IceKind ice) => method switch
    {
        MethodKind.MuddledAndShaken => Straining.Fine,
        MethodKind.Shaken => ice is IceKind.None ? Straining.Fine : Straining.Single,
        MethodKind.Stirred or MethodKind.Thrown => Straining.Single,
        _ => Straining.None,
    };
}
