using Barshow.Engine.Specs;

namespace Barshow.Engine.Shooting;

/// <summary>The places of a small set, as its tools make them.</summary>
internal static class Stations
{
    public const string Glass = "glass";
    public const string MixingGlass = "mixing glass";
    public const string Shaker = "shaker";
    public const string Blender = "blender";

    /// <summary>The station a method implies when the user names none.</summary>
    public static string Of(MethodKind? method) => method switch
    {
        MethodKind.Stirred or MethodKind.Thrown => MixingGlass,
        MethodKind.Shaken or MethodKind.MuddledAndShaken => Shaker,
        MethodKind.Blended => Blender,
        _ => Glass,
    };
}
