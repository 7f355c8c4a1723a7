namespace Barshow.Engine.Measures.Reading;

/// <summary>The parts that a word can play in an ingredient line.</summary>
[Flags]
internal enum Role
{
    None = 0,

    /// <summary>"a", "an".</summary>
    Article = 1 << 0,

    /// <summary>"of".</summary>
    Of = 1 << 1,

    /// <summary>"and", "n".</summary>
    And = 1 << 2,

    /// <summary>"to".</summary>
    To = 1 << 3,

    /// <summary>"or".</summary>
    Or = 1 << 4,

    /// <summary>"point" between the figures of a spoken decimal.</summary>
    Point = 1 << 5,

    /// <summary>"about", "roughly": the amount is meant as it is.</summary>
    About = 1 << 6,

    /// <summary>How full or how big a measure is: "scant", "heaped", "generous".</summary>
    Manner = 1 << 7,

    /// <summary>"times".</summary>
    Times = 1 << 8,

    /// <summary>An invitation that may stand before a line: "add", "then".</summary>
    Invitation = 1 << 9,

    /// <summary>What is taken from a fruit or an egg: "juice of", "zest of", "white of".</summary>
    Yield = 1 << 10,

    /// <summary>"optional".</summary>
    Optional = 1 << 11,

    /// <summary>Begins a note within a name: "freshly", "preferably", "for".</summary>
    NoteStart = 1 << 12,

    /// <summary>A cut or treatment that may close a name: "juiced", "torn".</summary>
    Treatment = 1 << 13,

    /// <summary>After a number it makes that number part of the name: "proof", "year".</summary>
    NumberInName = 1 << 14,

    /// <summary>"with".</summary>
    With = 1 << 15,

    /// <summary>"the", "your", "some".</summary>
    Determiner = 1 << 16,

    /// <summary>A count that is no exact number: "few", "several".</summary>
    Vague = 1 << 17,

    /// <summary>A length: "inch", "cm".</summary>
    Length = 1 << 18,

    /// <summary>"up", "off" after "top".</summary>
    Up = 1 << 19,

    /// <summary>"garnish", "rim": what a line is for.</summary>
    Label = 1 << 20,

    /// <summary>"plus".</summary>
    Plus = 1 << 21,

    /// <summary>"from".</summary>
    From = 1 << 22,

    /// <summary>"in", taken for "and" between a number and "a half".</summary>
    In = 1 << 23,

    /// <summary>"over" between the numbers of a fraction.</summary>
    Over = 1 << 25,

    /// <summary>Between the two sides of one callout: "that's", "which is".</summary>
    Saying = 1 << 26,

    /// <summary>Said while thinking: "um", "you know". It is part of no name.</summary>
    Filler = 1 << 27,

    /// <summary>Said before an amount in speech: "we've got", "let's say".</summary>
    Lead = 1 << 28,

    /// <summary>How a name is, not what it is: "fresh", "large". It may stand in a name and never is one.</summary>
    Quality = 1 << 24,
}

/// <summary>How a unit's word may stand.</summary>
[Flags]
internal enum UnitUse
{
    None = 0,

    /// <summary>A word that is a unit of volume or mass and nothing else: "ml", "ounces". One without a number before it is a line that went wrong.</summary>
    Strong = 1 << 0,

    /// <summary>It can open a line and mean one: "dash bitters".</summary>
    Alone = 1 << 1,

    /// <summary>It can close a counted name: "8 mint leaves".</summary>
    Closing = 1 << 2,

    /// <summary>It can also be part of a name when "of" is missing, so a bare one is not taken: "can", "piece".</summary>
    Container = 1 << 3,

    /// <summary>A misspelling, taken with a finding.</summary>
    Misspelt = 1 << 4,
}

/// <summary>What the lexicon knows of one word.</summary>
internal sealed record Lexeme
{
    /// <summary>The word in lower case.</summary>
    public required string Word { get; init; }

    public Role Role { get; init; }

    /// <summary>The number of "seven", "twenty", "dozen", "couple".</summary>
    public int? Cardinal { get; init; }

    /// <summary>What "hundred", "thousand", "million" multiply by.</summary>
    public int? Scale { get; init; }

    /// <summary>The share of "half", "quarter", "thirds".</summary>
    public Rational? Share { get; init; }

    /// <summary>The number that a word sounds like: "too", "for".</summary>
    public int? SoundsLike { get; init; }

    public Unit? Unit { get; init; }

    /// <summary>The other unit that an abbreviation fits.</summary>
    public Unit? OtherUnit { get; init; }

    public UnitUse UnitUse { get; init; }

    public OpenMeasure? Open { get; init; }

    public bool IsStrongUnit => (UnitUse & UnitUse.Strong) != 0;
}
