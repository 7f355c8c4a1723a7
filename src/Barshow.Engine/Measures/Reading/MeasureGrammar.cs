namespace Barshow.Engine.Measures.Reading;

/// <summary>The grammar of amounts, shared by the line reader and the finder. One rule, one method; each says where it stopped, as the index of the next token.</summary>
/// <remarks>The grammar is written out in tests/specs/reading-measures.md. Every rule looks a bounded number of tokens ahead, so the whole is linear.</remarks>
/// <param name="run">The tokens.</param>
/// <param name="mends">Whether misspelt units and numbers are read as a person would: in a line, not in running speech.</param>
internal sealed partial class MeasureGrammar(TokenRun run, bool mends = true)
{
    // More figures than these fit no amount at a bar; within them no sum or conversion can leave 64 bits.
    private const int MostFigures = 15;
    private const int MostTokens = 16;
    private const long SmallestPlace = 10_000_000_000;
    private const long MostWhole = 9_999_999;
    private const long MostOver = 9_999;
    private const long MostParts = 10_000_000_000;
}

/// <summary>What keeps a number from being an amount.</summary>
internal enum Flaw
{
    None,

    /// <summary>Nought.</summary>
    Nought,

    /// <summary>Below nought.</summary>
    BelowNought,

    /// <summary>Divided by nought.</summary>
    DividedByNought,

    /// <summary>Beyond any vessel at a bar.</summary>
    TooMuch,

    /// <summary>Written as a power of ten, as no bar writes it: "1e3".</summary>
    Power,

    /// <summary>No number that can be understood: "1/2/3".</summary>
    Malformed,
}

/// <summary>A number as it was read.</summary>
internal struct NumberRead
{
    public Rational Value;
    public Flaw Flaw;

    /// <summary>A slip was mended.</summary>
    public bool Repaired;

    /// <summary>Another number is likely to be meant: 11/2.</summary>
    public bool Doubtful;

    /// <summary>Only an article: "a".</summary>
    public bool IsArticle;

    /// <summary>It ends in a share, so that "of an ounce" may follow.</summary>
    public bool IsShare;

    /// <summary>Written with a comma before three figures, so that it is a thousand times more when its unit is small.</summary>
    public bool MayBeThousands;
}

/// <summary>An amount with its unit as it was read.</summary>
internal struct MeasureRead
{
    /// <summary>The measure; null when it is flawed.</summary>
    public Measure? Measure;

    public Flaw Flaw;
    public bool Repaired;
    public bool Doubtful;
    public bool Vague;

    /// <summary>A number was there; false when a unit alone stands for one.</summary>
    public bool HasNumber;

    /// <summary>The number was an article only.</summary>
    public bool IsArticle;

    /// <summary>The unit; null for a bare count.</summary>
    public Unit? Unit;

    /// <summary>The other unit that an abbreviation fits.</summary>
    public Unit? OtherUnit;

    /// <summary>The size of each, of "1 12-oz can".</summary>
    public Measure? Each;

    /// <summary>First and next token of what says how full or how big it is; none when they are equal.</summary>
    public int MannerFrom, MannerTo;

    /// <summary>First and next token of the whole.</summary>
    public int From, To;
}
