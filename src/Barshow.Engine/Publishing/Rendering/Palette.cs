using SkiaSharp;

namespace Barshow.Engine.Publishing.Rendering;

/// <summary>The product's own colours, as the app has them.</summary>
internal static class Palette
{
    public static readonly SKColor Sheet = SKColor.Parse("#FAFAF4");
    public static readonly SKColor Ink = SKColor.Parse("#16221C");
    public static readonly SKColor SecondInk = SKColor.Parse("#46544B");
    public static readonly SKColor Green = SKColor.Parse("#14513C");

    /// <summary>For what is measured: marks and lines.</summary>
    public static readonly SKColor BrassLine = SKColor.Parse("#A37C22");
    public static readonly SKColor GlassLine = SKColor.Parse("#55685F");
    public static readonly SKColor IceLine = SKColor.Parse("#8FA39B");
    public static readonly SKColor Ice = SKColor.Parse("#FFFFFF").WithAlpha(200);
}
