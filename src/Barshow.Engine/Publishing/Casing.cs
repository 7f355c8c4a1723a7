namespace Barshow.Engine.Publishing;

/// <summary>Sets the first letter of a name or phrase for where it stands.</summary>
internal static class Casing
{
    /// <summary>As it begins a line or a sentence: "Lime juice".</summary>
    public static string AtStart(string text) => text.Length > 0 && char.IsLower(text[0]) ? char.ToUpperInvariant(text[0]) + text[1..] : text;

    /// <summary>As it stands inside a sentence: "lime juice"; a name whose second letter is a capital stays as it is.</summary>
    public static string Inside(string text) => text.Length > 1 && char.IsUpper(text[0]) && !char.IsUpper(text[1]) ? char.ToLowerInvariant(text[0]) + text[1..] : text;
}
