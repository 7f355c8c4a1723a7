using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>What is to be said of a wash line. Ice is judged by the least that usually goes in, since the hand leaves out what does not fit.</summary>
internal static class WashLineCheck
{
    // A glass below three quarters of its line looks forgotten on camera. Common practice, no source.
    private const double LowShare = 0.75;

    /// <summary>What is to be said.</summary>
    /// <param name="spec">The drink.</param>
    /// <param name="line">Its wash line.</param>
    /// <param name="middle">The drink at the middle of its dilution with the least ice.</param>
    /// <param name="wettest">The drink at the upper end of its dilution with the least ice.</param>
    /// <param name="hasOpenTop">Whether a line tops up to the wash line.</param>
    /// <param name="kit">The glasses to choose from.</param>
    public static IEnumerable<Finding> Of(Spec spec, WashLine line, Poured middle, Poured wettest, bool hasOpenTop, BarKit kit)
    {
        var brim = line.Glass.BrimfulMillilitres;
        if (line.StatedTopFits == false && middle.State.Filled <= brim)
            yield return AnalysisSentences.TopDoesNotFit(spec, line);
        else if (middle.Filled > brim)
            yield return AnalysisSentences.WashLineOver(spec, line, middle.Filled, kit);
        else if (wettest.Filled > brim)
            yield return AnalysisSentences.WashLineBrimming(spec, line, wettest.Filled);
        else if (line.Level.High > 0 && line.Level.High < LowShare * line.Wanted)
            yield return AnalysisSentences.WashLineLow(spec, line, kit);
        if (hasOpenTop && line.RoomForTopMillilitres.High <= 0)
            yield return AnalysisSentences.TopHasNoRoom(spec, line);
    }
}
