using System.Diagnostics.CodeAnalysis;

namespace Barshow.Engine.Names;

/// <summary>The name under which a thing is kept: lower-case ASCII letters and digits in groups joined by single hyphens, 1 to 80 characters.</summary>
/// <remarks><c>default</c> is the empty slug, which names nothing.</remarks>
public readonly record struct Slug : IComparable<Slug>
{
    private const int Longest = 80;
    private readonly string? _text;

    private Slug(string text) => _text = text;

    /// <summary>The slug as it stands in files and addresses.</summary>
    public string Text => _text ?? "";

    /// <summary>Whether it names nothing.</summary>
    public bool IsEmpty => _text is null;

    /// <summary>The slug made of a name: accents dropped, everything but letters and digits turned to hyphens, cut to 80 characters.</summary>
    /// <remarks>A name without any letter or digit of the Latin alphabet gives "unnamed".</remarks>
    public static Slug Of(string name)
    {
        var folded = NameFolding.Fold(name);
        var text = folded.Replace(' ', '-');
        if (text.Length > Longest)
            text = text[..Longest].TrimEnd('-');
        return new(text.Length == 0 ? "unnamed" : text);
    }

    /// <summary>Reads a slug as it stands in files.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Slug slug)
    {
        slug = default;
        if (text is null or { Length: 0 or > Longest } || text[0] == '-' || text[^1] == '-')
            return false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (!char.IsAsciiLetterLower(c) && !char.IsAsciiDigit(c) && (c != '-' || text[i - 1] == '-'))
                return false;
        }

        slug = new(text);
        return true;
    }

    /// <summary>Reads a slug as it stands in files.</summary>
    /// <exception cref="FormatException"><paramref name="text"/> is no slug.</exception>
    public static Slug Parse(string text) =>
        TryParse(text, out var slug) ? slug : throw new FormatException($"\"{text}\" is no slug.");

    /// <inheritdoc/>
    public int CompareTo(Slug other) => string.CompareOrdinal(Text, other.Text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}
