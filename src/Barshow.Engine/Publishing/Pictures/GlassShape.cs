using Barshow.Engine.Specs;

namespace Barshow.Engine.Publishing.Pictures;

/// <summary>The inside of a glass in millimetres, scaled to hold what the glass holds, so that a level drawn in it is true.</summary>
internal sealed class GlassShape
{
    private static readonly GlassProfile PlainTumbler = new([new(0, 30), new(95, 36)], BaseMillimetres: 8);
    private readonly ProfilePoint[] _points;

    private GlassShape(ProfilePoint[] points, GlassProfile profile)
    {
        _points = points;
        Stem = (float)profile.StemMillimetres;
        Foot = (float)profile.FootMillimetres;
        Base = (float)profile.BaseMillimetres;
    }

    public float Stem { get; }

    public float Foot { get; }

    public float Base { get; }

    public float Height => (float)_points[^1].Height;

    public float RimRadius => (float)_points[^1].Radius;

    public float WidestRadius => (float)Math.Max(_points.Max(point => point.Radius), Foot);

    /// <summary>How tall the glass stands, from the table to the rim.</summary>
    public float Standing => Height + Stem + Base;

    /// <summary>The shape of a glass; a plain tumbler where there is none or its profile is not known.</summary>
    public static GlassShape Of(Glass? glass)
    {
        var profile = glass?.Profile is { Points.Count: > 1 } known && known.Points[^1].Height > 0 ? known : PlainTumbler;
        var raw = new GlassShape([.. profile.Points], profile);
        var factor = glass is { BrimfulMillilitres: > 0 } && raw.VolumeTo(raw.Height) > 0 ? Math.Cbrt(glass.BrimfulMillilitres / raw.VolumeTo(raw.Height)) : 1;
        return new([.. profile.Points.Select(point => new ProfilePoint(point.Height * factor, point.Radius * factor))], profile);
    }

    /// <summary>The height at which a share of the brimful volume stands.</summary>
    public float LevelOf(double share)
    {
        var wanted = VolumeTo(Height) * Math.Clamp(share, 0, 1);
        double low = 0, high = Height;
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            if (VolumeTo(middle) < wanted)
                low = middle;
            else
                high = middle;
        }

        return (float)high;
    }

    /// <summary>The inside radius at a height.</summary>
    public float RadiusAt(double height)
    {
        for (var i = 1; i < _points.Length; i++)
            if (height <= _points[i].Height)
                return (float)Between(_points[i - 1], _points[i], height);
        return RimRadius;
    }

    /// <summary>The wall from the floor to a height.</summary>
    public IReadOnlyList<ProfilePoint> WallTo(float height) =>
        [.. _points.Where(point => point.Height < height), new ProfilePoint(height, RadiusAt(height))];

    // The sum of the frustums, in millilitres.
    private double VolumeTo(double height)
    {
        var cubicMillimetres = 0.0;
        for (var i = 1; i < _points.Length && height > _points[i - 1].Height; i++)
        {
            var (below, above) = (_points[i - 1], _points[i]);
            var top = Math.Min(height, above.Height);
            var upper = Between(below, above, top);
            cubicMillimetres += Math.PI * (top - below.Height) * (below.Radius * below.Radius + below.Radius * upper + upper * upper) / 3;
        }

        return cubicMillimetres / 1000;
    }

    private static double Between(ProfilePoint below, ProfilePoint above, double height) =>
        above.Height <= below.Height ? above.Radius : below.Radius + (above.Radius - below.Radius) * (height - below.Height) / (above.Height - below.Height);
}
