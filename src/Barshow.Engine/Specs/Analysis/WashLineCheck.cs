using Barshow.Engine.Findings;

namespace Barshow.Engine.Specs.Analysis;

/// <summary>What is to be said of a wash line.</summary>
internal static class WashLineCheck
{
    // A glass below three quarters of its line looks forgotten on camera. Common practice, no source.
    private const double LowShare = 0.75;

    public static IEnumerable<Finding> Of(Spec spec, WashLine line, Poured middle, Mixture statedTop, bool hasOpenTop, AnalysisSetting setting)
    {
        if (line.StatedTopFits == false && middle.Served.Millilitres - statedTop.Millilitres + middle.State.IceLeft <= line.Glass.BrimfulMillilitres)
            yield return AnalysisSentences.TopDoesNotFit(spec, line);
        else if (line.Level.Middle > 1)
            yield return AnalysisSentences.WashLineOver(spec, line, setting.Kit);
        else if (line.Level.High > 1)
            yield return AnalysisSentences.WashLineBrimming(spec, line);
        else if (line.Level.High < LowShare * line.Wanted)
            yield return AnalysisSentences.WashLineLow(spec, line);
        if (hasOpenTop && line.RoomForTopMillilitres.High <= 0)
            yield return AnalysisSentences.TopHasNoRoom(spec, line);
    }
}
