using System.Collections.Frozen;

namespace Barshow.Engine.Measures;

/// <summary>The vulgar fractions that have a character of their own (Unicode, Latin-1 Supplement and Number Forms), among them nought thirds.</summary>
internal static class VulgarFraction
{
    private static readonly (char Glyph, int Upper, int Lower)[] Table =
    [
        ('¼', 1, 4), ('½', 1, 2), ('¾', 3, 4), ('⅐', 1, 7), ('⅑', 1, 9), ('⅒', 1, 10), ('⅓', 1, 3), ('⅔', 2, 3), ('⅕', 1, 5), ('⅖', 2, 5),
        ('⅗', 3, 5), ('⅘', 4, 5), ('⅙', 1, 6), ('⅚', 5, 6), ('⅛', 1, 8), ('⅜', 3, 8), ('⅝', 5, 8), ('⅞', 7, 8), ('↉', 0, 3),
    ];

    private static readonly FrozenDictionary<char, Rational> Values = Table.ToFrozenDictionary(row => row.Glyph, row => new Rational(row.Upper, row.Lower));
    private static readonly FrozenDictionary<Rational, char> Glyphs = Table.ToFrozenDictionary(row => new Rational(row.Upper, row.Lower), row => row.Glyph);

    /// <summary>The value of a fraction's character.</summary>
    public static bool TryValue(char glyph, out Rational value)
    {
        value = default;
        return glyph >= '¼' && Values.TryGetValue(glyph, out value);
    }

    /// <summary>The character of a value.</summary>
    public static bool TryGlyph(Rational value, out char glyph) => Glyphs.TryGetValue(value, out glyph);
}
