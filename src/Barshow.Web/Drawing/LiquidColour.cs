using System.Globalization;
using Barshow.Engine.Names;

namespace Barshow.Web.Drawing;

/// <summary>Guesses the colour of a drink from what goes in, for its drawing alone; every number is said beside it.</summary>
/// <remarks>Colours mixed by volume and by how strongly each ingredient colours; the first word that fits wins. Common practice, no source.</remarks>
public static class LiquidColour
{
    private static readonly (string Word, int Red, int Green, int Blue, double Strength)[] Hues =
    [
        ("grapefruit", 240, 160, 135, 1.2), ("cranberry", 196, 50, 66, 2), ("pomegranate", 190, 40, 62, 2.4), ("grenadine", 198, 38, 58, 3), ("raspberry", 190, 45, 80, 2.2), ("strawberry", 214, 70, 80, 2),
        ("tomato", 190, 62, 42, 2.4), ("orange juice", 240, 170, 66, 1.4), ("orange liqueur", 238, 214, 160, .5), ("orange", 238, 168, 72, 1), ("pineapple", 240, 215, 120, 1.2), ("passion", 240, 180, 60, 1.6), ("mango", 240, 176, 64, 1.6),
        ("apple", 222, 200, 120, 1), ("peach", 242, 186, 130, 1.2), ("lime cordial", 200, 216, 130, 1), ("lime", 214, 222, 158, .9), ("lemon", 240, 228, 160, .9), ("mint", 176, 208, 120, 1.6), ("basil", 156, 196, 96, 1.6),
        ("cucumber", 186, 216, 146, 1.4), ("violet", 150, 120, 190, 2.4), ("blue", 60, 140, 200, 3), ("bitter aperitif", 208, 58, 38, 2.2), ("red bitter", 208, 58, 38, 2.2), ("aperitivo", 226, 96, 40, 2),
        ("sweet vermouth", 140, 52, 34, 1.8), ("red vermouth", 140, 52, 34, 1.8), ("red wine", 112, 26, 44, 2.6), ("port", 112, 30, 44, 2.2), ("dry vermouth", 230, 232, 204, .6), ("vermouth", 214, 190, 130, .9), ("sherry", 196, 140, 70, 1.2),
        ("coffee", 62, 40, 26, 4), ("chocolate", 92, 58, 38, 3), ("cocoa", 92, 58, 38, 3), ("cola", 86, 46, 24, 3), ("coconut", 246, 243, 234, 2.2), ("cream", 246, 238, 220, 2.2), ("milk", 246, 242, 232, 2), ("egg yolk", 240, 200, 96, 2), ("egg", 246, 240, 224, .8),
        ("honey", 226, 176, 84, 1), ("agave", 230, 196, 120, .6), ("maple", 186, 116, 54, 1.2), ("ginger", 230, 208, 150, .8), ("dark rum", 150, 88, 38, 1.6), ("aged rum", 206, 150, 84, 1.2), ("gold rum", 214, 164, 92, 1), ("spiced rum", 196, 132, 66, 1.2),
        ("whisk", 206, 140, 66, 1.3), ("bourbon", 206, 134, 60, 1.3), ("rye", 206, 138, 64, 1.3), ("scotch", 214, 156, 78, 1.2), ("brandy", 200, 126, 60, 1.3), ("cognac", 200, 126, 60, 1.3), ("amaro", 110, 52, 28, 2), ("green herbal", 176, 196, 90, 1.4), ("herbal liqueur", 196, 196, 100, 1.2),
        ("absinthe", 196, 210, 140, 1), ("almond", 240, 230, 208, 1.4), ("orgeat", 240, 230, 208, 1.4), ("hibiscus", 176, 32, 72, 2.4), ("beet", 150, 20, 70, 3), ("tea", 176, 112, 54, 1.6), ("bitters", 150, 60, 36, 4), ("sparkling wine", 240, 226, 172, .7), ("beer", 224, 172, 74, 1.2),
        ("worcester", 70, 40, 24, 3), ("soy", 60, 32, 20, 3), ("hot sauce", 196, 56, 30, 2),
    ];

    private const int PlainRed = 232, PlainGreen = 236, PlainBlue = 222;

    /// <summary>The colour of a mix, as CSS writes it.</summary>
    /// <param name="parts">Each ingredient's name with its volume in any unit.</param>
    public static string Of(IEnumerable<(string Name, double Volume)> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double red = 0, green = 0, blue = 0, weight = 0;
        foreach (var (name, volume) in parts)
        {
            if (!(volume > 0))
                continue;
            var folded = NameFolding.Fold(name);
            var hue = Array.Find(Hues, hue => folded.Contains(hue.Word, StringComparison.Ordinal));
            var (r, g, b, strength) = hue.Word is null ? (PlainRed, PlainGreen, PlainBlue, .25) : (hue.Red, hue.Green, hue.Blue, hue.Strength);
            var share = volume * strength;
            red += r * share;
            green += g * share;
            blue += b * share;
            weight += share;
        }

        return weight <= 0
            ? Hex(PlainRed, PlainGreen, PlainBlue)
            : Hex(red / weight, green / weight, blue / weight);
    }

    private static string Hex(double red, double green, double blue) =>
        string.Create(CultureInfo.InvariantCulture, $"#{(int)Math.Round(red):X2}{(int)Math.Round(green):X2}{(int)Math.Round(blue):X2}");
}
