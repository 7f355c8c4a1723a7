using System.Globalization;
using Barshow.Engine.Episodes;
using Barshow.Engine.Findings;
using Barshow.Engine.Measures.Reading;
using Barshow.Engine.Specs;
using Barshow.Engine.Specs.Analysis;

namespace Barshow.Web.Desk;

/// <summary>One press that mends a finding.</summary>
/// <param name="Label">What happens, as the button says it.</param>
/// <param name="Change">The change to the episode.</param>
public sealed record Mending(string Label, Func<Episode, Episode> Change)
{
    /// <summary>What would mend a finding of one drink; null where only the user can say.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="episode">The episode as it stands.</param>
    /// <param name="place">The drink's place in the lineup.</param>
    /// <param name="analysis">What the drink comes to.</param>
    /// <param name="bar">The glasses there are.</param>
    /// <param name="line">The line it is about, by its place; null when it is about no line.</param>
    public static Mending? Of(Finding finding, Episode episode, int place, DrinkAnalysis analysis, Bar bar, int? line = null)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(episode);
        ArgumentNullException.ThrowIfNull(analysis);
        ArgumentNullException.ThrowIfNull(bar);
        if (finding.Kind == FindingCatalogue.WashLineOver || finding.Kind == FindingCatalogue.TopDoesNotFit)
            return Roomier(episode.Lineup[place].Spec, analysis, bar) is { } glass
                ? new(string.Create(CultureInfo.InvariantCulture, $"Use the {glass.BrimfulMillilitres:0} ml {glass.Name.ToLowerInvariant()}"), now => now.WithSpec(place, spec => spec with { Serve = spec.Serve with { Glass = glass.Slug } }))
                : null;
        if (line is { } at && finding.Expected is { } expected
            && (finding.Kind == FindingCatalogue.PairDisagrees || finding.Kind == FindingCatalogue.NotPourable || finding.Kind == FindingCatalogue.NoAgreeingPair))
            return Said(expected) is { } measure ? new($"Use {expected}", now => now.WithAmount(place, at, measure, finding.Said is { } said ? $"{said} could not be poured as said" : null)) : null;
        return null;
    }

    private static Engine.Measures.Measure? Said(string text) => LineReader.Read(text) is { Measure: { } measure, Name.Length: 0 } ? measure : null;

    // The smallest glass that holds it, one the spec names as a stand-in before any other.
    private static Glass? Roomier(Spec spec, DrinkAnalysis analysis, Bar bar)
    {
        if (analysis.WashLine is not { } wash)
            return null;
        var need = wash.Level.High * wash.Glass.BrimfulMillilitres;
        var alike = spec.Serve.GlassesInstead.Concat(wash.Glass.Instead).Distinct().ToList();
        return bar.Kit.Glasses
            .Where(glass => glass.Slug != wash.Glass.Slug && glass.BrimfulMillilitres > need && glass.BrimfulMillilitres <= need * 1.6)
            .OrderBy(glass => alike.IndexOf(glass.Slug) is var at && at < 0 ? int.MaxValue : at)
            .ThenBy(glass => glass.BrimfulMillilitres)
            .FirstOrDefault();
    }
}
