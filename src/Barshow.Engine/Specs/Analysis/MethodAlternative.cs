using System.Globalization;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>The same lines made another way.</summary>
/// <param name="Kind">The other way.</param>
/// <param name="Analysis">What the drink comes to then.</param>
/// <param name="StrengthPoints">How many percent by volume stronger it is served, by the middle of the ranges; below nought for weaker.</param>
/// <param name="ServedMillilitres">How many millilitres more are served, by the middle of the ranges; below nought for fewer.</param>
/// <param name="Sentence">The difference in words: "Shaken instead of built: 4 points weaker, 20 ml more."</param>
public sealed record MethodAlternative(MethodKind Kind, DrinkAnalysis Analysis, double StrengthPoints, double ServedMillilitres, string Sentence)
{
    private static readonly MethodKind[] Usual = [MethodKind.Built, MethodKind.Stirred, MethodKind.Shaken, MethodKind.Thrown];

    /// <summary>The usual ways of making a drink but its own: built on cubes, stirred, shaken, thrown. Empty when the spec names no method or holds no alcohol.</summary>
    public static IReadOnlyList<MethodAlternative> AllOf(Spec spec, AnalysisSetting setting)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(setting);
        if (spec.Method is not { } own)
            return [];
        var asItIs = DrinkAnalyser.Analyse(spec, setting);
        return asItIs.EthanolMillilitres <= 0 ? [] : [.. Usual.Where(kind => kind != own.Kind && !SameDilution(kind, own.Kind)).Select(kind => Of(spec, asItIs, kind, setting))];
    }

    /// <summary>The drink made one other way.</summary>
    /// <exception cref="ArgumentException">The spec names no method to compare with.</exception>
    public static MethodAlternative Of(Spec spec, MethodKind other, AnalysisSetting setting)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return spec.Method is null
            ? throw new ArgumentException("A drink without a method has nothing to compare with.", nameof(spec))
            : Of(spec, DrinkAnalyser.Analyse(spec, setting), other, setting);
    }

    private static MethodAlternative Of(Spec spec, DrinkAnalysis asItIs, MethodKind other, AnalysisSetting setting)
    {
        // Built means built on ice, also for a drink that is served up.
        var serve = other is MethodKind.Built or MethodKind.MuddledAndBuilt && spec.Serve.Ice is IceKind.None ? spec.Serve with { Ice = IceKind.Cubed } : spec.Serve;
        var analysis = DrinkAnalyser.Analyse(spec with { Method = new(other), Serve = serve }, setting);
        var points = (analysis.ServedStrength.Middle - asItIs.ServedStrength.Middle) * 100;
        var more = analysis.ServedMillilitres.Middle - asItIs.ServedMillilitres.Middle;
        return new(other, analysis, points, more, Said(other, spec.Method!.Kind, points, more));
    }

    private static bool SameDilution(MethodKind one, MethodKind other) => (one, other) is
        (MethodKind.Built, MethodKind.MuddledAndBuilt) or (MethodKind.Shaken, MethodKind.MuddledAndShaken);

    private static string Said(MethodKind other, MethodKind own, double points, double more)
    {
        var name = Method.NameOf(other);
        var strength = Math.Round(points, 1) switch
        {
            0 => "as strong",
            var stronger and > 0 => $"{Points(stronger)} stronger",
            var weaker => $"{Points(-weaker)} weaker",
        };
        var volume = Math.Round(more) switch
        {
            0 => "as much in the glass",
            var larger and > 0 => string.Create(CultureInfo.InvariantCulture, $"{larger:0} ml more"),
            var smaller => string.Create(CultureInfo.InvariantCulture, $"{-smaller:0} ml less"),
        };
        return $"{char.ToUpperInvariant(name[0])}{name[1..]} instead of {Method.NameOf(own)}: {strength}, {volume}.";
    }

    private static string Points(double points) =>
        points.ToString("0.#", CultureInfo.InvariantCulture) + (points == 1 ? " point" : " points");
}
