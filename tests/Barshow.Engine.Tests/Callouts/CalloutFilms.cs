using System.Globalization;
using Barshow.Engine.Callouts;
using Barshow.Engine.Callouts.Captions;

namespace Barshow.Engine.Tests.Callouts;

/// <summary>The films of tests/specs/callouts: a caption file, the sheet it is checked against, and what a person hears in it.</summary>
/// <remarks>
/// A line of an .expected file is a callout, "time | drink + drink | ingredient | oz | ml | count | unit | flags", or a finding, "! kind | time | drink | ingredient"; empty
/// where there is none. Flags: m a mention, r retracted, = a repeat. Findings of kind captions-tolerated are not listed.
/// </remarks>
internal sealed record CalloutFilm(string Name, CalloutReport Report, IReadOnlyList<string> Callouts, IReadOnlyList<string> Findings)
{
    private static string Folder => Path.Combine(AppContext.BaseDirectory, "specs", "callouts");

    public static IReadOnlyList<string> All => [.. Directory.EnumerateFiles(Folder, "*.expected").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    public static CalloutFilm Load(string name)
    {
        var captions = Directory.EnumerateFiles(Folder, name + ".*").Single(path => Path.GetExtension(path) is ".vtt" or ".srt" or ".txt");
        Assert.True(FilmSheetJson.TryRead(File.ReadAllText(Path.Combine(Folder, name + ".json")), out var sheet, out var problem), problem);
        var lines = File.ReadAllLines(Path.Combine(Folder, name + ".expected")).Where(line => line.Length > 0).ToList();
        return new(name, CalloutChecker.Check(CaptionReader.Read(File.ReadAllBytes(captions)), sheet), [.. lines.Where(line => line[0] != '!')], [.. lines.Where(line => line[0] == '!')]);
    }

    public IReadOnlyList<string> Heard => [.. Report.Callouts.Select(LineOf)];

    public IReadOnlyList<string> Found => [.. Report.Findings.Where(finding => finding.Kind.Name != "captions-tolerated")
        .Select(finding => $"! {finding.Kind.Name} | {Number(finding.TimeSeconds)} | {finding.Drink} | {finding.Ingredient}".TrimEnd())];

    private static string LineOf(SaidCallout callout) => string.Join(" | ",
        Number(callout.TimeSeconds), string.Join(" + ", callout.Drinks), callout.Ingredient, Number(callout.Ounces?.Low?.ToDouble()),
        Number(callout.Metric is { } metric ? (metric.Low!.Value * metric.Unit!.Millilitres!.Value).ToDouble() : null), Number(callout.Counted?.Low?.ToDouble()),
        callout.Counted is { } counted ? counted.Open is { } open ? Barshow.Engine.Measures.Measure.NameOf(open) : counted.Unit?.Name : "",
        (callout.Mention ? "m" : "") + (callout.Retracted ? "r" : "") + (callout.Repeat ? "=" : "")).TrimEnd();

    private static string Number(double? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";
}
