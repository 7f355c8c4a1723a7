namespace Barshow.Engine.Specs;

/// <summary>How a drink is made.</summary>
public enum MethodKind
{
    /// <summary>Built in its own glass.</summary>
    Built,

    /// <summary>Stirred with ice and strained.</summary>
    Stirred,

    /// <summary>Shaken with ice and strained.</summary>
    Shaken,

    /// <summary>Poured from tin to tin.</summary>
    Thrown,

    /// <summary>Muddled in the glass and built on it.</summary>
    MuddledAndBuilt,

    /// <summary>Muddled in the tin and shaken.</summary>
    MuddledAndShaken,

    /// <summary>Swizzled on crushed ice.</summary>
    Swizzled,

    /// <summary>Blended with ice.</summary>
    Blended,

    /// <summary>Poured in layers.</summary>
    Layered,
}

/// <summary>A method with its count.</summary>
/// <param name="Kind">How it is made.</param>
/// <param name="Seconds">How long it is shaken, stirred, swizzled or blended; null where nothing is counted.</param>
/// <param name="Pours">How many times it is thrown; null where nothing is counted.</param>
/// <param name="DryShake">Whether it is shaken without ice first, for a foam.</param>
public sealed record Method(MethodKind Kind, int? Seconds = null, int? Pours = null, bool DryShake = false)
{
    /// <summary>As it is printed: "shaken", "muddled and built".</summary>
    public string Name => NameOf(Kind);

    /// <summary>As it is printed: "shaken", "muddled and built".</summary>
    public static string NameOf(MethodKind kind) => kind switch
    {
        MethodKind.MuddledAndBuilt => "muddled and built",
        MethodKind.MuddledAndShaken => "muddled and shaken",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
