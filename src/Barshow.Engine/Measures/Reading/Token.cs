namespace Barshow.Engine.Measures.Reading;

/// <summary>What a stretch of characters is.</summary>
internal enum TokenKind : byte
{
    /// <summary>Nothing more.</summary>
    End,

    /// <summary>Letters, with apostrophes inside.</summary>
    Word,

    /// <summary>Decimal digits of any script.</summary>
    Digits,

    /// <summary>One vulgar fraction: ½.</summary>
    Vulgar,

    /// <summary>Superscript digits.</summary>
    Raised,

    /// <summary>Subscript digits.</summary>
    Lowered,

    /// <summary>One other character.</summary>
    Mark,
}

/// <summary>A stretch of characters that belong together. Offsets count from 0.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">Offset of its first character.</param>
/// <param name="Length">How many characters it holds.</param>
/// <param name="Mark">The character of a mark or a vulgar fraction, slashes and hyphens of every shape turned into the ASCII one; '\0' for the rest.</param>
/// <param name="Lexeme">What the lexicon knows of a word; null when it knows nothing.</param>
internal readonly record struct Token(TokenKind Kind, int Start, int Length, char Mark, Lexeme? Lexeme)
{
    public int End => Start + Length;

    public bool Is(char mark) => Kind == TokenKind.Mark && Mark == mark;

    public bool Has(Role role) => Lexeme is { } lexeme && (lexeme.Role & role) != 0;
}
