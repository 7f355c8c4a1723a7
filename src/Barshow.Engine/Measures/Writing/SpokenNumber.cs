using System.Text;

namespace Barshow.Engine.Measures.Writing;

/// <summary>Numbers as they are said in English: "forty-five", "one hundred and five", "one and three quarters".</summary>
public static class SpokenNumber
{
    private static readonly string[] BelowTwenty =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
    ];

    private static readonly string[] Tens = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

    private static readonly (long Size, string Name)[] Scales =
        [(1_000_000_000_000, "trillion"), (1_000_000_000, "billion"), (1_000_000, "million"), (1000, "thousand")];

    private static readonly string[] OrdinalBelowThirteen =
        ["", "", "", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth"];

    /// <summary>A whole number in words.</summary>
    /// <param name="number">From 0 up to, not including, a thousand trillion.</param>
    /// <exception cref="ArgumentOutOfRangeException">It lies outside that range.</exception>
    public static string Whole(long number)
    {
        if (number is < 0 or >= 1_000_000_000_000_000)
            throw new ArgumentOutOfRangeException(nameof(number), number, "A spoken number is from 0 up to a thousand trillion.");
        if (number < 20)
            return BelowTwenty[number];
        var said = new StringBuilder();
        foreach (var (size, name) in Scales)
        {
            if (number < size)
                continue;
            Append(said, $"{Whole(number / size)} {name}", " ");
            number %= size;
        }

        if (number >= 100)
        {
            Append(said, $"{BelowTwenty[number / 100]} hundred", " ");
            number %= 100;
        }

        if (number > 0)
            Append(said, BelowHundred(number), " and ");
        return said.ToString();
    }

    /// <summary>Whether a share of that many parts has a name people use: half, third, quarter ... twelfth, sixteenth, twentieth.</summary>
    internal static bool HasShare(long parts) => ShareOf(parts) is not null;

    /// <summary>What follows a whole number when it is said, or stands alone: "half", "three quarters", "three over forty-eight".</summary>
    /// <param name="fraction">Above 0 and below 1.</param>
    /// <param name="article">Whether a single share is said with its article: "a quarter" rather than "quarter".</param>
    internal static string Fraction(Rational fraction, bool article)
    {
        var (upper, lower) = (fraction.Numerator, fraction.Denominator);
        if (ShareOf(lower) is not { } share)
            return $"{Whole(upper)} over {Whole(lower)}";
        if (upper > 1)
            return $"{Whole(upper)} {share}s";
        return article ? $"{(lower is 8 or 11 ? "an" : "a")} {share}" : share;
    }

    private static string? ShareOf(long parts) => parts switch
    {
        2 => "half",
        4 => "quarter",
        >= 3 and <= 12 => OrdinalBelowThirteen[parts],
        16 => "sixteenth",
        20 => "twentieth",
        _ => null,
    };

    private static string BelowHundred(long number) =>
        number < 20 ? BelowTwenty[number]
        : number % 10 == 0 ? Tens[number / 10]
        : $"{Tens[number / 10]}-{BelowTwenty[number % 10]}";

    private static void Append(StringBuilder said, string words, string join)
    {
        if (said.Length > 0)
            said.Append(join);
        said.Append(words);
    }
}
