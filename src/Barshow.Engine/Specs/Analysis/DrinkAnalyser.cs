using Barshow.Engine.Findings;
using Barshow.Engine.Measures;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>Works out what a drink comes to.</summary>
public static class DrinkAnalyser
{
    /// <summary>What the drink comes to. Never throws for what a spec may hold: what is missing is a finding and counts as nothing.</summary>
    public static DrinkAnalysis Analyse(Spec spec, AnalysisSetting setting)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(setting);
        var reckoner = new LineReckoner(spec, setting);
        var lines = spec.Lines.Select(reckoner.Of).ToArray();
        var findings = new List<Finding>(reckoner.Findings);

        var tin = Mixture.Of(lines.Where(line => line.Place is LinePlace.Tin));
        var floated = Mixture.Of(lines.Where(line => line.Place is LinePlace.Float));
        var statedTop = Mixture.Of(lines.Where(line => line.Place is LinePlace.Top));
        var openTop = Mixture.OfOne(lines.Where(line => line.IsOpenTop));

        var dilution = DilutionModel.Of(spec.Method?.Kind, spec.Serve.Ice, tin.Strength);
        if (spec.Method is null && lines.Length > 0)
            findings.Add(AnalysisSentences.DilutionNotCounted(spec));

        setting.Kit.TryGetGlass(spec.Serve.Glass, out var glass);
        var pour = new Pour(spec, glass, tin, floated, statedTop, openTop);
        var corners = pour.Corners(dilution.Share);
        var middle = pour.At(dilution.Share.Middle, pour.UsualIceGrams.Middle);

        if (glass is null)
            findings.Add(AnalysisSentences.WashLineNotChecked(spec));
        var washLine = glass is null ? null : pour.WashLineOf(glass, corners, middle.Water);
        if (washLine is not null)
        {
            var (leastIce, hasOpenTop) = (pour.UsualIceGrams.Low, lines.Any(line => line.IsOpenTop));
            findings.AddRange(WashLineCheck.Of(spec, washLine, pour.At(dilution.Share.Middle, leastIce), pour.At(dilution.Share.High, leastIce), hasOpenTop, setting.Kit));
        }

        return new()
        {
            Drink = spec.Name,
            Lines = lines,
            TinMillilitres = tin.Millilitres,
            StartStrength = tin.Strength,
            Dilution = dilution,
            WaterMillilitres = Over(corners, each => each.Water),
            ToppedMillilitres = Over(corners, each => each.Topped),
            FloatedMillilitres = floated.Millilitres,
            ServedMillilitres = Over(corners, each => each.Served.Millilitres),
            ServedStrength = Over(corners, each => each.Served.Strength),
            EthanolMillilitres = middle.Served.EthanolMillilitres,
            SugarGrams = middle.Served.SugarGrams,
            AcidGrams = middle.Served.AcidGrams,
            SugarGramsPer100Millilitres = Over(corners, each => each.Served.SugarPer100),
            AcidGramsPer100Millilitres = Over(corners, each => each.Served.AcidPer100),
            HeatBalance = dilution.Share.High > 0 && tin.Millilitres > 0 ? HeatBalance.Of(tin.Millilitres, tin.Strength) : null,
            WashLine = washLine,
            Unknown = [.. reckoner.Unknown.Distinct(StringComparer.Ordinal)],
            Findings = findings,
        };
    }

    internal static Interval Over<T>(IReadOnlyList<T> corners, Func<T, double> value) => new(corners.Min(value), corners.Max(value));
}
