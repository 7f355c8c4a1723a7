using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>Amounts of a mise list in both units, rounded up to a quarter ounce so that the two sides agree.</summary>
internal static class DualAmount
{
    /// <summary>The next quarter ounce that holds the millilitres.</summary>
    public static Measure RoundUp(double millilitres, Convention convention) =>
        Measure.Ounces((long)Math.Ceiling(millilitres / convention.MillilitresPerOunce().ToDouble() * 4 - 1e-6), 4);

    /// <summary>An amount that holds the millilitres and is there to be had: the next quarter ounce, else the next 2.5 ml, else the last 2.5 ml below.</summary>
    /// <param name="needed">Millilitres needed.</param>
    /// <param name="available">Millilitres there are, not less than needed.</param>
    /// <param name="convention">How ounces and millilitres are matched.</param>
    public static Measure UpTo(double needed, double available, Convention convention)
    {
        const double step = 2.5, hair = 1e-6;
        var ounces = RoundUp(needed, convention);
        if (ounces.MillilitresNear(convention) <= available + hair)
            return ounces;
        var steps = Math.Ceiling(needed / step - hair);
        if (steps * step > available + hair && steps > 1)
            steps--;
        var metric = Measure.Millilitres((long)steps * 5, 2);
        return Callout.Of(metric, convention).Agrees ? metric : ounces;
    }

    /// <summary>"4¾ oz · 142.5 ml".</summary>
    public static string Say(Measure measure, Convention convention, UnitOrder order) =>
        Callout.Of(measure, convention).Show(order is UnitOrder.OuncesFirst).Replace('\u00A0', ' ');
}
