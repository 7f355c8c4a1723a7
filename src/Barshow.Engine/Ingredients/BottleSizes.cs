namespace Barshow.Engine.Ingredients;

/// <summary>Sizes that bottles are sold in, in millilitres.</summary>
public static class BottleSizes
{
    /// <summary>The 25 sizes that United States law allows for spirits: 27 CFR 5.203, as widened by T.D. TTB-176 (2020-12-29) and T.D. TTB-200 (90 FR 1868, from 2025-01-10).</summary>
    public static IReadOnlyList<int> UnitedStatesSpirits { get; } =
        [3750, 3000, 2000, 1800, 1750, 1500, 1000, 945, 900, 750, 720, 710, 700, 570, 500, 475, 375, 355, 350, 331, 250, 200, 187, 100, 50];

    /// <summary>The sizes that UK law allows for spirits from 100 to 2000 ml (gov.uk, Specified quantities; the EU's list, Directive 2007/45/EC, is the same, from memory). Below and above any size may be sold.</summary>
    public static IReadOnlyList<int> UnitedKingdomSpirits { get; } = [2000, 1750, 1500, 1000, 700, 500, 350, 200, 100];

    /// <summary>The sizes that UK law allows for fortified wine from 100 to 1500 ml (gov.uk, Specified quantities).</summary>
    public static IReadOnlyList<int> UnitedKingdomFortifiedWine { get; } = [1500, 1000, 750, 500, 375, 200, 100];

    /// <summary>The sizes that UK law allows for sparkling wine from 125 to 1500 ml (gov.uk, Specified quantities).</summary>
    public static IReadOnlyList<int> UnitedKingdomSparklingWine { get; } = [1500, 750, 375, 200, 125];

    /// <summary>The sizes that UK law allows for still wine from 100 to 1500 ml (gov.uk, Specified quantities).</summary>
    public static IReadOnlyList<int> UnitedKingdomStillWine { get; } = [1500, 1000, 750, 500, 375, 250, 187, 100];

    /// <summary>How far a bottle sold in the United States may lie off its nominal size, as a share of it (27 CFR 19.356(b)).</summary>
    /// <param name="millilitres">The nominal size, above 0.</param>
    public static double UnitedStatesTolerance(double millilitres) => millilitres switch
    {
        >= 1000 => 0.015,
        > 375 => 0.02,
        > 100 => 0.03,
        _ => 0.045,
    };

    /// <summary>How far a United States label may lie off the true strength, in percent by volume (27 CFR 19.356(c)).</summary>
    public const double UnitedStatesStrengthTolerance = 0.3;

    /// <summary>Whether spirits are sold in bottles of this size somewhere that this table covers.</summary>
    public static bool IsSpiritsSize(double millilitres) =>
        UnitedStatesSpirits.Any(size => size == millilitres) || UnitedKingdomSpirits.Any(size => size == millilitres) || millilitres is > 0 and < 100 or > 2000;

    /// <summary>The spirits sizes nearest to an amount, nearest first, ties to the larger.</summary>
    public static IReadOnlyList<int> NearestSpirits(double millilitres, int count = 2) =>
        [.. UnitedStatesSpirits.Union(UnitedKingdomSpirits).OrderBy(size => Math.Abs(size - millilitres)).ThenByDescending(size => size).Take(count)];
}
