using Barshow.Engine.Measures;
using Barshow.Engine.Names;
using Barshow.Engine.Specs;
using SkiaSharp;

namespace Barshow.Engine.Publishing.Pictures;

/// <summary>Guesses the colour of a drink from its lines, for its picture alone. Common practice, no source.</summary>
internal static class DrinkColour
{
    private static readonly (string Word, SKColor Colour, double Depth)[] Colours =
    [
        ("coffee", new(62, 40, 26), 4), ("chocolate", new(92, 58, 38), 3), ("cola", new(86, 46, 24), 3), ("coconut", new(246, 243, 234), 2), ("cream", new(246, 238, 220), 2),
        ("milk", new(246, 242, 232), 2), ("egg", new(246, 240, 224), 0.8), ("orgeat", new(240, 230, 208), 1.4), ("tomato", new(190, 62, 42), 2.4), ("cranberry", new(196, 50, 66), 2),
        ("grenadine", new(198, 38, 58), 3), ("berry", new(190, 45, 80), 2), ("grapefruit", new(240, 160, 135), 1.2), ("orange", new(238, 170, 72), 1), ("pineapple", new(240, 215, 120), 1.2),
        ("passion", new(240, 180, 60), 1.6), ("apple", new(222, 200, 120), 1), ("lime", new(214, 222, 158), 0.9), ("lemon", new(240, 228, 160), 0.9), ("mint", new(176, 208, 120), 1.6),
        ("basil", new(156, 196, 96), 1.6), ("cucumber", new(186, 216, 146), 1.4), ("sweet vermouth", new(140, 52, 34), 1.8), ("red", new(190, 50, 40), 2), ("vermouth", new(226, 220, 180), 0.6),
        ("sherry", new(196, 140, 70), 1.2), ("port", new(112, 30, 44), 2), ("honey", new(226, 176, 84), 1), ("ginger", new(230, 208, 150), 0.8), ("whisk", new(206, 140, 66), 1.3),
        ("bourbon", new(206, 134, 60), 1.3), ("brandy", new(200, 126, 60), 1.3), ("aged", new(206, 150, 84), 1.2), ("bitters", new(150, 60, 36), 4), ("tea", new(176, 112, 54), 1.6), ("beer", new(224, 172, 74), 1.2),
    ];

    private static readonly SKColor Clear = new(226, 234, 222);

    /// <summary>The colour, mixed by volume and by how deeply each line colours.</summary>
    public static SKColor Of(Spec spec, Convention convention)
    {
        double red = 0, green = 0, blue = 0, weight = 0;
        foreach (var line in spec.Lines)
        {
            var millilitres = line.ToPublish?.InMillilitres(convention)?.ToDouble() ?? (line.Use is LineUse.Topped ? 90 : 5);
            var name = NameFolding.Fold(line.Name);
            var known = Array.Find(Colours, colour => name.Contains(colour.Word, StringComparison.Ordinal));
            var (colour, depth) = known.Word is null ? (Clear, 0.25) : (known.Colour, known.Depth);
            red += colour.Red * millilitres * depth;
            green += colour.Green * millilitres * depth;
            blue += colour.Blue * millilitres * depth;
            weight += millilitres * depth;
        }

        return weight > 0 ? new((byte)(red / weight), (byte)(green / weight), (byte)(blue / weight)) : Clear;
    }
}
