using System.Text;

namespace Barshow.Engine.Publishing.Packaging;

/// <summary>One file of a package.</summary>
/// <param name="Path">Its path inside the package, with forward slashes: "recipes/harbour-sour.json".</param>
/// <param name="Bytes">What is in it.</param>
public sealed record PackageFile(string Path, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>A text file in UTF-8 without a byte order mark.</summary>
    public static PackageFile OfText(string path, string text) => new(path, Encoding.UTF8.GetBytes(text));

    /// <summary>The bytes read as UTF-8.</summary>
    public string ReadText() => Encoding.UTF8.GetString(Bytes.Span);
}
