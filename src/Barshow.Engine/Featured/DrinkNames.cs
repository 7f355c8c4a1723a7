using Barshow.Engine.Names;
using Barshow.Engine.Specs;

namespace Barshow.Engine.Featured;

/// <summary>Whether two drinks go by one name: case, accents, word order, aliases and a slip of one letter set aside.</summary>
internal static class DrinkNames
{
    private const int ShortestWordWithASlip = 6;

    public static bool Meet(Spec one, Spec other) => Of(one).Any(name => Of(other).Any(candidate => Alike(name, candidate)));

    private static IEnumerable<string[]> Of(Spec spec) => spec.Aliases.Prepend(spec.Name)
        .Select(name => NameFolding.Fold(name).Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Where(word => word is not ("the" or "a")).Order(StringComparer.Ordinal).ToArray())
        .Where(words => words.Length > 0);

    private static bool Alike(string[] words, string[] others) =>
        words.Length == others.Length && words.Zip(others).All(pair => pair.First == pair.Second || OneSlipApart(pair.First, pair.Second));

    // One letter changed, added, dropped, or two neighbours swapped; in short words that makes another word.
    private static bool OneSlipApart(string one, string other)
    {
        if (one.Length < other.Length)
            (one, other) = (other, one);
        if (other.Length < ShortestWordWithASlip || one.Length - other.Length > 1 || one.Any(char.IsDigit) || other.Any(char.IsDigit))
            return false;
        var start = 0;
        while (start < other.Length && one[start] == other[start])
            start++;
        var restOfOne = one.AsSpan(start);
        var restOfOther = other.AsSpan(start);
        return restOfOne.Length > restOfOther.Length
            ? restOfOne[1..].SequenceEqual(restOfOther)
            : restOfOne[1..].SequenceEqual(restOfOther[1..])
                || (restOfOne.Length > 1 && restOfOne[0] == restOfOther[1] && restOfOne[1] == restOfOther[0] && restOfOne[2..].SequenceEqual(restOfOther[2..]));
    }
}
