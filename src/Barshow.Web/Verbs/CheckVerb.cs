using System.CommandLine;
using System.Text;
using Barshow.Engine.Callouts;
using Barshow.Engine.Callouts.Captions;
using Barshow.Engine.Findings;

namespace Barshow.Web.Verbs;

/// <summary><c>check CAPTIONS --recipes FILE</c>: what was said on film against the recipes and the brief. Looks at no database.</summary>
internal static class CheckVerb
{
    private const int MostRecipeBytes = 4 * 1024 * 1024;

    public static void AddTo(RootCommand root)
    {
        var captions = new Argument<string>("CAPTIONS") { Description = "Captions: WebVTT, SubRip or a plain transcript." };
        var recipes = new Option<string>("--recipes") { Description = "JSON with the drinks, the title, the description and what the sponsor asks.", HelpName = "FILE", Required = true };
        var json = new Option<bool>("--json") { Description = "Print JSON instead of a summary." };
        var verb = new Command("check", "Check what was said on film against the recipes, the description and the sponsor brief.") { captions, recipes, json };
        verb.SetAction((parsed, cancel) => RunAsync(parsed.GetRequiredValue(captions), parsed.GetRequiredValue(recipes), parsed.GetValue(json), cancel));
        root.Subcommands.Add(verb);
    }

    private static async Task<int> RunAsync(string captions, string recipes, bool json, CancellationToken cancel)
    {
        try
        {
            if (await FirstBytesAsync(recipes, MostRecipeBytes, cancel) is not { } recipeBytes)
                return CommandLine.Refuse($"There is no file \"{recipes}\".");
            if (await FirstBytesAsync(captions, CaptionReader.MostBytes + 1, cancel) is not { } captionBytes)
                return CommandLine.Refuse($"There is no file \"{captions}\".");
            if (!FilmSheetJson.TryRead(Encoding.UTF8.GetString(recipeBytes).TrimStart('\uFEFF'), out var sheet, out var problem))
                return CommandLine.Refuse($"\"{recipes}\" cannot be used. {problem}");
            var report = CalloutChecker.Check(CaptionReader.Read(captionBytes), sheet);
            Console.Out.Write(json ? CalloutReportJson.Write(report) : CheckSummary.Of(report));
            return report.Findings.Any(finding => finding.Severity == Severity.Stop) ? 2 : 0;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            return CommandLine.Refuse(broken.Message);
        }
    }

    private static async Task<byte[]?> FirstBytesAsync(string path, int most, CancellationToken cancel)
    {
        if (!File.Exists(path))
            return null;
        await using var file = File.OpenRead(path);
        var bytes = new byte[Math.Min(file.Length, most)];
        var read = await file.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false, cancel);
        return bytes[..read];
    }
}
