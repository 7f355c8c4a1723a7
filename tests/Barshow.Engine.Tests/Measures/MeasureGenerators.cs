using Barshow.Engine.Measures;
using CsCheck;

namespace Barshow.Engine.Tests.Measures;

/// <summary>Amounts and measures such as a bar writes, for property tests.</summary>
internal static class MeasureGenerators
{
    private static readonly long[] Denominators = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 20, 24, 25, 32, 40, 48, 50, 64, 100];

    /// <summary>From a sixty-fourth to 60, in the fractions that people write.</summary>
    public static Gen<Rational> Amount { get; } =
        from denominator in Gen.OneOf(Denominators)
        from numerator in Gen.Long[1, 60 * denominator]
        select new Rational(numerator, denominator);

    // An egg white is the name and the unit in one; the reader gives it as a bare count of that name.
    public static Gen<Unit?> UnitOrNone { get; } = Gen.OneOf<Unit?>([null, .. Unit.All.Where(unit => unit != Unit.EggWhite)]);

    public static Gen<Measure> Single { get; } =
        from amount in Amount
        from unit in UnitOrNone
        select Measure.Of(amount, unit);

    public static Gen<Measure> Range { get; } =
        from one in Amount
        from other in Amount
        from unit in UnitOrNone
        select one < other ? Measure.Between(one, other, unit) : Measure.Between(other, one, unit);

    public static Gen<Measure> Any { get; } = Gen.Frequency((4, Single), (1, Range));
}
