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

    private static readonly string[] OrdinalBelowTwenty =
    [
        "", "", "", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth",
        "eleventh", "twelfth", "thirteenth", "fourteenth", "fifteenth", "sixteenth", "seventeenth", "eighteenth", "nineteenth",
    ];

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

    /// <summary>What follows a whole number when it is said, or stands alone: "half", "three quarters", "seven thirty-seconds", "three over two hundred".</summary>
    /// <param name="fraction">Above 0 and below 1.</param>
    /// <param name="article">Whether a single share is said with its article: "a quarter" rather than "one quarter".</param>
    internal static string Fraction(Rational fraction, bool article)
    {
        var (upper, lower) = (fraction.Numerator, fraction.Denominator);
        var share = lower switch
        {
            2 => "half",
            4 => "quarter",
            < 20 => OrdinalBelowTwenty[lower],
            < 100 when lower % 10 == 0 => Tens[lower / 10][..^1] + "ieth",
            < 100 => $"{Tens[lower / 10]}-{OrdinalBelowHundred(lower % 10)}",
            _ => null,
        };
        if (share is null)
            return $"{Whole(upper)} over {Whole(lower)}";
        if (upper > 1)
            return $"{Whole(upper)} {share}s";
        return article ? $"{(lower is 8 or 11 or 18 or (>= 80 and < 90) ? "an" : "a")} {share}" : share;
    }

    private static string OrdinalBelowHundred(long digit) => digit switch { 1 => "first", 2 => "second", _ => OrdinalBelowTwenty[digit] };

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
