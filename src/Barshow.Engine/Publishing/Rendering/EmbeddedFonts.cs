using PdfSharp.Fonts;

namespace Barshow.Engine.Publishing.Rendering;

/// <summary>Gives PDF files the product's own typeface.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    public const string Family = "Atkinson Hyperlegible Next";
    private static readonly Lock Gate = new();

    /// <summary>Makes the typeface known to the PDF library, once for the process.</summary>
    public static void Provide()
    {
        lock (Gate)
            GlobalFontSettings.FontResolver ??= new EmbeddedFonts();
    }

    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? "Bold" : "Regular");

    public byte[] GetFont(string faceName) => Typefaces.Bytes(faceName);
}
