using Barshow.Engine.Specs;

namespace Barshow.Web.Drawing;

/// <summary>The inside of a vessel as a solid of revolution, scaled so that it holds what it is said to hold.</summary>
public sealed class Vessel
{
    private readonly ProfilePoint[] _points;

    private Vessel(ProfilePoint[] points) => _points = points;

    /// <summary>The inside, from the floor up, in millimetres.</summary>
    public IReadOnlyList<ProfilePoint> Points => _points;

    /// <summary>The inside height, in millimetres.</summary>
    public double Height => _points[^1].Height;

    /// <summary>The radius at the rim, in millimetres.</summary>
    public double RimRadius => _points[^1].Radius;

    /// <summary>What it holds to the rim, in millilitres.</summary>
    public double Capacity => VolumeTo(Height);

    /// <summary>A glass: its profile grown or shrunk alike in all directions until it holds its brimful volume.</summary>
    public static Vessel Of(IReadOnlyList<ProfilePoint> profile, double millilitres)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentOutOfRangeException.ThrowIfLessThan(profile.Count, 2);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(millilitres);
        var raw = new Vessel([.. profile]);
        var factor = Math.Cbrt(millilitres / raw.Capacity);
        return new([.. profile.Select(point => new ProfilePoint(point.Height * factor, point.Radius * factor))]);
    }

    /// <summary>A bottle: its profile made wider or narrower until it holds <paramref name="millilitres"/> up to <paramref name="fillHeight"/>.</summary>
    public static Vessel Filled(IReadOnlyList<ProfilePoint> profile, double fillHeight, double millilitres)
    {
        ArgumentNullException.ThrowIfNull(profile);
        var factor = Math.Sqrt(millilitres / new Vessel([.. profile]).VolumeTo(fillHeight));
        return new([.. profile.Select(point => new ProfilePoint(point.Height, point.Radius * factor))]);
    }

    /// <summary>Millilitres between the floor and a height in millimetres: the sum of the frustums.</summary>
    public double VolumeTo(double height)
    {
        var cubicMillimetres = 0.0;
        for (var i = 1; i < _points.Length && height > _points[i - 1].Height; i++)
        {
            var below = _points[i - 1];
            var top = Math.Min(height, _points[i].Height);
            var upper = RadiusBetween(below, _points[i], top);
            cubicMillimetres += Math.PI * (top - below.Height) * (below.Radius * below.Radius + below.Radius * upper + upper * upper) / 3;
        }

        return cubicMillimetres / 1000;
    }

    /// <summary>The height in millimetres at which the liquid stands; the rim's when it holds no more.</summary>
    public double LevelOf(double millilitres)
    {
        double low = 0, high = Height;
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            if (VolumeTo(middle) < millilitres)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>The inside radius at a height, in millimetres.</summary>
    public double RadiusAt(double height)
    {
        for (var i = 1; i < _points.Length; i++)
        {
            if (height <= _points[i].Height)
                return RadiusBetween(_points[i - 1], _points[i], height);
        }

        return RimRadius;
    }

    /// <summary>The wall between two heights, both ends included.</summary>
    public IReadOnlyList<ProfilePoint> Wall(double from, double to)
    {
        var wall = new List<ProfilePoint> { new(from, RadiusAt(from)) };
        wall.AddRange(_points.Where(point => point.Height > from && point.Height < to));
        wall.Add(new(to, RadiusAt(to)));
        return wall;
    }

    private static double RadiusBetween(ProfilePoint below, ProfilePoint above, double height) =>
        above.Height <= below.Height ? above.Radius : below.Radius + (above.Radius - below.Radius) * (height - below.Height) / (above.Height - below.Height);
}
