using Barshow.Engine.Findings;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Engine.Specs.Checks;

/// <summary>Checks a spec for what the trade would stumble over. What a drink comes to is checked by <see cref="DrinkAnalyser"/>.</summary>
public static class SpecChecker
{
    /// <summary>Everything there is to say of the spec, in a fixed order.</summary>
    public static IReadOnlyList<Finding> Check(Spec spec, AnalysisSetting setting)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(setting);
        var drink = new CheckedSpec(spec, setting);
        return
        [
            .. EmptyDrinkCheck.Of(drink),
            .. MethodCheck.Of(drink),
            .. GlassCheck.Of(drink),
            .. AlcoholAmountCheck.Of(drink),
            .. FizzCheck.Of(drink),
            .. CloudyStirCheck.Of(drink),
            .. FoamCheck.Of(drink),
            .. LongShakeCheck.Of(drink),
            .. LayerOrderCheck.Of(drink),
            .. RimAndStrawCheck.Of(drink),
            .. TwiceCheck.Of(drink),
        ];
    }
}
