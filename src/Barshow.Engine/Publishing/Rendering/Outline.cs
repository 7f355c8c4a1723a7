using SkiaSharp;

namespace Barshow.Engine.Publishing.Rendering;

/// <summary>Outlines from points.</summary>
internal static class Outline
{
    /// <summary>A box from its upper left corner.</summary>
    public static SKPath Box(float left, float top, float width, float height) =>
        Polygon((left, top), (left + width, top), (left + width, top + height), (left, top + height));

    /// <summary>A closed shape.</summary>
    public static SKPath Polygon(params (float X, float Y)[] corners)
    {
        using var outline = new SKPathBuilder();
        outline.AddPoly([.. corners.Select(corner => new SKPoint(corner.X, corner.Y))], true);
        return outline.Detach();
    }

    /// <summary>An open line through points.</summary>
    public static SKPath Line(params (float X, float Y)[] points)
    {
        using var outline = new SKPathBuilder();
        outline.AddPoly([.. points.Select(point => new SKPoint(point.X, point.Y))], false);
        return outline.Detach();
    }
}
