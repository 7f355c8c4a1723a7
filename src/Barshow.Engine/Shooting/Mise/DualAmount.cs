using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Shooting.Mise;

/// <summary>Amounts of a mise list in both units. Made ahead and never poured from a jigger, they are rounded up to 5 ml and to a quarter ounce.</summary>
internal static class DualAmount
{
    public static string Say(double millilitres, Convention convention, UnitOrder order)
    {
        var ml = string.Create(CultureInfo.InvariantCulture, $"{RoundUp(millilitres):0} ml");
        var quarters = (long)Math.Ceiling(RoundUp(millilitres) / convention.MillilitresPerOunce().ToDouble() * 4 - 1e-9);
        var fraction = (quarters % 4) switch { 1 => "¼", 2 => "½", 3 => "¾", _ => "" };
        var whole = quarters / 4;
        var oz = whole == 0 && fraction.Length > 0 ? $"{fraction} oz" : string.Create(CultureInfo.InvariantCulture, $"{whole}{fraction} oz");
        return order is UnitOrder.OuncesFirst ? $"{oz} · {ml}" : $"{ml} · {oz}";
    }

    /// <summary>Up to the next 5 ml.</summary>
    public static double RoundUp(double millilitres) => 5 * Math.Ceiling(millilitres / 5 - 1e-9);
}
