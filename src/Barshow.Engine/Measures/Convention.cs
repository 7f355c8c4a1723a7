namespace Barshow.Engine.Measures;

/// <summary>How ounces and millilitres are matched. One for each episode.</summary>
public enum Convention
{
    /// <summary>1 oz = 30 ml: the rounding of nutrition labels (21 CFR 101.9(b)(5)(viii)) and common bar practice.</summary>
    Bar,

    /// <summary>1 oz = 29.5735295625 ml: 231 cubic inches of 16.387064 ml to the gallon, 128 ounces to the gallon (NIST Handbook 44, Appendix C).</summary>
    UsExact,

    /// <summary>1 oz = 28.4130625 ml: 4546.09 ml to the gallon, 160 ounces to the gallon (UK Weights and Measures Act 1985, Schedule 1).</summary>
    ImperialExact,
}

/// <summary>What a convention fixes.</summary>
public static class ConventionExtensions
{
    private static readonly Rational UsOunce = 231 * new Rational(16_387_064, 1_000_000) / 128;
    private static readonly Rational ImperialOunce = new Rational(454_609, 100) / 160;

    /// <summary>Millilitres to the fluid ounce, exactly.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such convention.</exception>
    public static Rational MillilitresPerOunce(this Convention convention) => convention switch
    {
        Convention.Bar => 30,
        Convention.UsExact => UsOunce,
        Convention.ImperialExact => ImperialOunce,
        _ => throw new ArgumentOutOfRangeException(nameof(convention), convention, "No such convention."),
    };
}
