using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>Amounts of a mise list in both units, rounded up to a quarter ounce so that the two sides agree.</summary>
internal static class DualAmount
{
    /// <summary>The next quarter ounce that holds the millilitres.</summary>
    public static Measure RoundUp(double millilitres, Convention convention) =>
        Measure.Ounces((long)Math.Ceiling(millilitres / convention.MillilitresPerOunce().ToDouble() * 4 - 1e-6), 4);

    /// <summary>"4¾ oz · 142.5 ml".</summary>
    public static string Say(Measure measure, Convention convention, UnitOrder order) =>
        Callout.Of(measure, convention).Show(order is UnitOrder.OuncesFirst).Replace('\u00A0', ' ');
}
