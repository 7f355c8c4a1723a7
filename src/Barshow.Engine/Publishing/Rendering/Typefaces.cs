using SkiaSharp;

namespace Barshow.Engine.Publishing.Rendering;

/// <summary>The product's own typeface, Atkinson Hyperlegible Next (SIL Open Font License 1.1), from the assembly's resources: no machine's fonts are needed.</summary>
internal static class Typefaces
{
    private static readonly Lazy<SKTypeface> LazyRegular = new(() => Load("Regular"));
    private static readonly Lazy<SKTypeface> LazySemiBold = new(() => Load("SemiBold"));
    private static readonly Lazy<SKTypeface> LazyBold = new(() => Load("Bold"));

    public static SKTypeface Regular => LazyRegular.Value;

    public static SKTypeface SemiBold => LazySemiBold.Value;

    public static SKTypeface Bold => LazyBold.Value;

    /// <summary>The bytes of a weight, for a PDF that embeds it.</summary>
    /// <param name="weight">"Regular", "SemiBold" or "Bold".</param>
    public static byte[] Bytes(string weight)
    {
        using var stream = Open(weight);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static SKTypeface Load(string weight)
    {
        using var data = SKData.CreateCopy(Bytes(weight));
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The typeface {weight} cannot be read.");
    }

    private static Stream Open(string weight)
    {
        var number = weight switch { "Regular" => 400, "SemiBold" => 600, "Bold" => 700, _ => throw new ArgumentOutOfRangeException(nameof(weight), weight, "No such weight.") };
        var name = $"AtkinsonHyperlegibleNext_{number}{weight}.ttf";
        return typeof(Typefaces).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"The resource {name} is missing.");
    }
}
