using Barshow.Engine.Episodes;
using Barshow.Engine.Publishing.Rendering;
using Barshow.Engine.Specs;
using SkiaSharp;

namespace Barshow.Engine.Publishing.Pictures;

/// <summary>Draws a drink in its glass to scale, its level where the analysis has it, marked in brass.</summary>
internal static class DrinkPicture
{
    /// <summary>How many millimetres of height a picture must leave for a glass.</summary>
    public static float Standing(EpisodeResults results, LineupDrink drink) => ShapeOf(results, drink).Standing;

    /// <summary>How wide the glass is at its widest, in millimetres.</summary>
    public static float Widest(EpisodeResults results, LineupDrink drink) => 2 * ShapeOf(results, drink).WidestRadius;

    /// <summary>Draws the glass standing on a place.</summary>
    /// <param name="art">The drawing.</param>
    /// <param name="results">The episode, with its analyses.</param>
    /// <param name="drink">The drink.</param>
    /// <param name="middle">The axis of the glass.</param>
    /// <param name="table">Where it stands.</param>
    /// <param name="scale">Drawing units to the millimetre.</param>
    public static void Draw(Artwork art, EpisodeResults results, LineupDrink drink, float middle, float table, float scale)
    {
        var shape = ShapeOf(results, drink);
        var floor = table - (shape.Stem + shape.Base) * scale;
        var level = shape.LevelOf(ShareOf(results, drink));
        var line = Math.Max(1.5f, 0.9f * scale);

        art.Fill(Body(shape, shape.Height, middle, floor, scale), SKColors.White.WithAlpha(120));
        art.Fill(Body(shape, level, middle, floor, scale), DrinkColour.Of(drink.Spec, results.Episode.Convention));
        DrawIce(art, drink.Spec.Serve.Ice, shape, level, middle, floor, scale);
        if (shape.Stem > 0)
            art.Stroke(Outline.Line((middle, floor), (middle, table)), Palette.GlassLine, Math.Max(line, 3.2f * scale));
        if (shape.Foot > 0)
            art.Stroke(Outline.Line((middle - shape.Foot * scale, table), (middle + shape.Foot * scale, table)), Palette.GlassLine, Math.Max(line, 1.8f * scale));
        else if (shape.Base > 0)
            art.Fill(Outline.Box(middle - shape.RadiusAt(0) * scale, floor, 2 * shape.RadiusAt(0) * scale, shape.Base * scale), Palette.GlassLine.WithAlpha(90));
        art.Stroke(Wall(shape, middle, floor, scale), Palette.GlassLine, line);

        var (y, edge) = (floor - level * scale, shape.RadiusAt(level) * scale);
        art.Stroke(Outline.Line((middle - edge - 5 * scale, y), (middle - edge + 4 * scale, y)), Palette.BrassLine, line);
        art.Stroke(Outline.Line((middle + edge - 4 * scale, y), (middle + edge + 5 * scale, y)), Palette.BrassLine, line);
    }

    private static GlassShape ShapeOf(EpisodeResults results, LineupDrink drink) =>
        GlassShape.Of(results.Bar.Kit.TryGetGlass(drink.Spec.Serve.Glass, out var glass) ? glass : null);

    private static double ShareOf(EpisodeResults results, LineupDrink drink) =>
        results.Analyses.GetValueOrDefault(drink.Spec.Slug)?.WashLine is { } wash ? Math.Min(1, wash.Level.Middle)
        : results.Bar.Kit.TryGetGlass(drink.Spec.Serve.Glass, out var glass) ? glass.UsualWashLine
        : 0.8;

    private static SKPath Body(GlassShape shape, float height, float middle, float floor, float scale)
    {
        var wall = shape.WallTo(height);
        return Outline.Polygon([
            .. wall.Select(point => (middle + (float)point.Radius * scale, floor - (float)point.Height * scale)),
            .. wall.Reverse().Select(point => (middle - (float)point.Radius * scale, floor - (float)point.Height * scale)),
        ]);
    }

    private static SKPath Wall(GlassShape shape, float middle, float floor, float scale)
    {
        var wall = shape.WallTo(shape.Height);
        return Outline.Line([
            .. wall.Reverse().Select(point => (middle - (float)point.Radius * scale, floor - (float)point.Height * scale)),
            .. wall.Select(point => (middle + (float)point.Radius * scale, floor - (float)point.Height * scale)),
        ]);
    }

    // Pieces lie in rows below the line, a fifth of the top row above it.
    private static void DrawIce(Artwork art, IceKind ice, GlassShape shape, float level, float middle, float floor, float scale)
    {
        var side = ice switch { IceKind.Large => Math.Min(48, 1.3f * shape.RadiusAt(level)), IceKind.Cubed => 25, IceKind.Crushed => 9, _ => 0 };
        if (side <= 0)
            return;
        for (var (bottom, row) = (level + side * 0.2f - side, 0); bottom > 0; bottom -= side * 1.05f, row++)
        {
            var room = 2 * (shape.RadiusAt(bottom) - 2);
            var count = ice is IceKind.Large ? (row == 0 ? 1 : 0) : (int)(room / (side * 1.05f));
            for (var i = 0; i < count; i++)
            {
                var x = middle + ((i - (count - 1) / 2f) * side * 1.05f + (row % 2 == 0 ? 0.06f : -0.06f) * side) * scale;
                var y = floor - bottom * scale;
                var (half, tilt) = (side / 2 * scale, (row + i) % 2 == 0 ? 0.08f : -0.08f);
                var piece = new[] { (-1f, -1f), (1f, -1f), (1f, 1f), (-1f, 1f) }
                    .Select(corner => (x + half * (corner.Item1 - tilt * corner.Item2), y - half + half * (corner.Item2 + tilt * corner.Item1)))
                    .ToArray();
                art.Fill(Outline.Polygon(piece), Palette.Ice.WithAlpha(150));
                art.Stroke(Outline.Polygon(piece), Palette.IceLine, Math.Max(1, 0.4f * scale));
            }
        }
    }
}
