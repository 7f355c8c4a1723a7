using System.Globalization;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>Dilution by method: two published fits, and practice where nothing is published.</summary>
/// <remarks>Trade habit and the published fits disagree by nearly a factor of two; neither is a physical constant. So a range is given, and each end says what it is.</remarks>
public static class DilutionModel
{
    /// <summary>The weakest start for which the fits hold, alcohol by volume (range of the drinks measured for the book).</summary>
    public const double FitFrom = 0.15;

    /// <summary>The strongest start for which the fits hold.</summary>
    public const double FitTo = 0.45;

    // Trade habit for stirring and shaking, from enthusiast and trade pages: 20 to 25 % and 25 to 30 % of the starting volume.
    private const double StirredHabit = 0.20;
    private const double ShakenHabit = 0.25;

    // Built over ice and stirred briefly: 0.24 and 0.25 (Liquid Intelligence, 2014, p. 123, by way of secondary excerpts).
    private static readonly Interval BuiltOnCubes = new(0.24, 0.25);

    // Common practice, no source: crushed ice melts more than cubes.
    private static readonly Interval BuiltOnCrushed = new(0.25, 0.40);
    private static readonly Interval Swizzled = new(0.30, 0.50);

    // 0.90 in secondary excerpts that credit the same book; the width is common practice, no source.
    private static readonly Interval Blended = new(0.80, 1.00);

    /// <summary>The published fit for a stirred drink: −1.21 a² + 1.246 a + 0.145 (Liquid Intelligence, 2014, p. 123, read in secondary excerpts).</summary>
    /// <param name="startStrength">Alcohol by volume before ice, <see cref="FitFrom"/> to <see cref="FitTo"/>.</param>
    /// <returns>Millilitres of water to one millilitre before ice, about ±0.05.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The fit does not reach there.</exception>
    public static double StirredFit(double startStrength) => Fit(startStrength, -1.21, 1.246, 0.145);

    /// <summary>The published fit for a shaken drink: −1.567 a² + 1.742 a + 0.203 (Liquid Intelligence, 2014, p. 123, read in secondary excerpts).</summary>
    /// <inheritdoc cref="StirredFit"/>
    public static double ShakenFit(double startStrength) => Fit(startStrength, -1.567, 1.742, 0.203);

    /// <summary>The dilution of what is in the tin.</summary>
    /// <param name="method">How the drink is made; null gives no dilution.</param>
    /// <param name="ice">The ice in the glass, on which a built drink stands.</param>
    /// <param name="startStrength">Alcohol by volume before ice, 0 to 1.</param>
    public static Dilution Of(MethodKind? method, IceKind ice, double startStrength) => method switch
    {
        null => None("No method is given, so no dilution is counted."),
        MethodKind.Layered => None("A layered drink meets no ice."),
        MethodKind.Built or MethodKind.MuddledAndBuilt when ice is IceKind.None => None("It is built without ice."),
        MethodKind.Built or MethodKind.MuddledAndBuilt when ice is IceKind.Crushed => AboveHeatBalance(BuiltOnCrushed, startStrength,
            "Common practice for a drink built on crushed ice, barely stirred.", "Common practice for one churned well."),
        MethodKind.Built or MethodKind.MuddledAndBuilt => AboveHeatBalance(BuiltOnCubes, startStrength,
            "Published for a drink built over ice and stirred briefly, lower figure.", "Published for a drink built over ice and stirred briefly, upper figure."),
        MethodKind.Swizzled => AboveHeatBalance(Swizzled, startStrength, "Common practice for a short swizzle.", "Common practice for a swizzle until the glass frosts."),
        MethodKind.Blended => AboveHeatBalance(Blended, startStrength,
            "Common practice for a blended drink; 90 % is the one figure published, and not at first hand.", "Common practice for a blended drink with more ice."),
        MethodKind.Stirred => Fitted("stirred", startStrength, StirredHabit, StirredFit),
        MethodKind.Shaken or MethodKind.MuddledAndShaken => Fitted("shaken", startStrength, ShakenHabit, ShakenFit),
        MethodKind.Thrown => Thrown(startStrength),
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "No such method."),
    };

    private static double Fit(double startStrength, double square, double linear, double constant) =>
        startStrength is >= FitFrom and <= FitTo
            ? (square * startStrength + linear) * startStrength + constant
            : throw new ArgumentOutOfRangeException(nameof(startStrength), startStrength, "The fits hold from 15 to 45 percent alcohol by volume.");

    private static Dilution None(string why) => new(Interval.At(0), why, why);

    private static Dilution Fitted(string made, double strength, double habit, Func<double, double> fit)
    {
        if (strength < FitFrom)
        {
            return AboveHeatBalance(new(habit, fit(FitFrom)), strength,
                $"Heat balance: less melt does not cool the drink to 0 °C.",
                $"The published fit for {made} drinks at 15 %, the weakest it was made for.");
        }

        var share = fit(Math.Min(strength, FitTo));
        var high = strength > FitTo
            ? $"The published fit for {made} drinks at 45 %, the strongest it was made for; above it none is published."
            : $"The published fit for {made} drinks.";
        return new(new(Math.Min(habit, share), share),
            string.Create(CultureInfo.InvariantCulture, $"Trade habit for {made} drinks, {habit * 100:0} % of the starting volume and less than the fit; big dry ice and a short time come near it."),
            high, strength > FitTo ? null : share);
    }

    // Nothing is published for thrown drinks; practice puts them between stirred and shaken.
    private static Dilution Thrown(double strength)
    {
        var within = Math.Clamp(strength, FitFrom, FitTo);
        return AboveHeatBalance(new(StirredFit(within), ShakenFit(within)), strength,
            "As if stirred: common practice puts a thrown drink between stirred and shaken.", "As if shaken: nothing is published for thrown drinks.");
    }

    // Below the fits' range, a colder drink than its melt allows would be a promise against physics.
    private static Dilution AboveHeatBalance(Interval practice, double strength, string low, string high)
    {
        if (strength >= FitFrom)
            return new(practice, low, high);
        var demanded = HeatBalance.MeltPerMillilitre(strength, toCelsius: 0);
        return practice.Low >= demanded.Low
            ? new(practice, low, high)
            : new(new(demanded.Low, Math.Max(practice.High, demanded.High)), "Heat balance: less melt does not cool the drink to 0 °C.",
                practice.High >= demanded.High ? high : "Heat balance, upper estimate.");
    }
}
