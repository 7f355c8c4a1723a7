using Barshow.Engine.Names;

namespace Barshow.Engine.Specs;

/// <summary>A glass of the bar.</summary>
public sealed record Glass
{
    /// <summary>The name it is kept under.</summary>
    public required Slug Slug { get; init; }

    /// <summary>The name that is shown: "Coupe".</summary>
    public required string Name { get; init; }

    /// <summary>Other names that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>Millilitres to the brim, above 0.</summary>
    public required double BrimfulMillilitres { get; init; }

    /// <summary>How many there are.</summary>
    public int Count { get; init; }

    /// <summary>How full it is usually poured, as a share of the brim, 0 to 1.</summary>
    public double UsualWashLine { get; init; } = 0.85;

    /// <summary>Glasses that will do instead, best first.</summary>
    public IReadOnlyList<Slug> Instead { get; init; } = [];

    /// <summary>Its inside, from the floor up, for drawing and for finding the level from a volume.</summary>
    public GlassProfile? Profile { get; init; }

    /// <summary>Whether it stands on a stem: by its drawing, else by its name.</summary>
    public bool IsStemmed => Profile is { } profile ? profile.StemMillimetres > 0 : GlassNames.SayStemmed(Name);
}

/// <summary>The inside of a glass as a solid of revolution.</summary>
/// <param name="Points">Height above the inside floor and radius there, in millimetres, heights rising.</param>
/// <param name="StemMillimetres">Length of the stem; 0 for none.</param>
/// <param name="FootMillimetres">Radius of the foot; 0 for none.</param>
/// <param name="BaseMillimetres">Thickness of the floor.</param>
public sealed record GlassProfile(IReadOnlyList<ProfilePoint> Points, double StemMillimetres = 0, double FootMillimetres = 0, double BaseMillimetres = 0);

/// <summary>A point of a profile.</summary>
/// <param name="Height">Height above the inside floor, in millimetres.</param>
/// <param name="Radius">Inside radius there, in millimetres.</param>
public readonly record struct ProfilePoint(double Height, double Radius);
